package org.drillsheaf.program.build;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Where a search through one phase begins: with the forced drills, and with those that may be added. Not safe for several threads. */
final class Beginning {
    private final PartialChoice choice;
    private final PhaseModel model;
    private final boolean[] barred;
    private final Map<Long, int[]> within = new HashMap<>();

    /** @param choice holds the forced drills, and no other, after each question */
    Beginning(PartialChoice choice) {
        this.choice = choice;
        this.model = choice.model;
        barred = new boolean[model.size()];
    }

    /**
     * Takes the forced drills.
     *
     * @param positions one bit each; drills in others are left out
     * @return the drills that may be added, in order; empty when the forced ones cannot stand together
     */
    Optional<int[]> with(long positions, Choice forced, Choice forbidden) {
        choice.clear();
        Arrays.fill(barred, false);
        for (int i = 0; i < forbidden.size(); i++) {
            int local = model.local(forbidden.get(i));
            if (local >= 0) {
                barred[local] = true;
            }
        }
        for (int i = 0; i < forced.size(); i++) {
            int local = model.local(forced.get(i));
            if (local < 0
                    || barred[local]
                    || (model.position[local] & positions) == 0
                    || choice.size() == model.task.most()
                    || !choice.fits(local)) {
                return Optional.empty();
            }
            choice.add(local);
            barred[local] = true;
        }
        int[] offered = within.computeIfAbsent(positions, this::drillsIn);
        int[] open = new int[offered.length];
        int count = 0;
        for (int i : offered) {
            if (!barred[i]) {
                open[count++] = i;
            }
        }
        return Optional.of(Arrays.copyOf(open, count));
    }

    private int[] drillsIn(long positions) {
        return IntStream.range(0, model.size())
                .filter(i -> (model.position[i] & positions) != 0)
                .toArray();
    }
}
