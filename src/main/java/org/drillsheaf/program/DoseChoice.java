package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.drill.Dose;
import org.drillsheaf.drill.DoseRange;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Phase;

/**
 * The doses of one drill that one client may have in one phase. The effort comes first, because rest depends on it; then every
 * number of sets and counts inside all bounds that is not too small a part of the usual dose, so that no session is crowded. Minutes run without a gap around the usual dose.
 *
 * @param strong above the phase's usual effort
 * @param fewestMinutes smallest whole minutes
 * @param mostMinutes largest; every whole number between can be had
 */
record DoseChoice(
        Drill drill, int effort, boolean strong, List<Dose.Chosen> doses, int fewestMinutes, int mostMinutes) {

    /** From this age on the longer hold of older adults is the bound. Years. */
    private static final int OLDER = 65;

    /** @return empty when no dose stays within the phase's effort */
    static Optional<DoseChoice> of(
            Drill drill, Phase phase, Needs needs, BuilderSettings settings, Optional<CoachWishes.DoseWish> wish) {
        EffortLimit limit = needs.phase(phase).effort();
        DoseRange range = drill.dose().effort();
        int effort = effort(drill, phase, limit, settings);
        boolean strong = false;
        if (wish.isPresent() && wish.get().effort().isPresent()) {
            effort = range.nearest(Math.min(wish.get().effort().getAsInt(), needs.effortCap()));
            if (effort > needs.effortCap()) {
                return Optional.empty();
            }
        } else if (effort > limit.limit()) {
            if (range.least() <= limit.limit()) {
                effort = limit.limit();
            } else if (limit.exceptions() > 0 && range.least() <= limit.exceptionLimit()) {
                effort = range.least();
                strong = true;
            } else {
                return Optional.empty();
            }
        }
        int percent = wish.isPresent() ? 0 : settings.leastDosePercent();
        return Optional.of(around(drill, effort, strong, doses(drill.dose(), effort, settings, wish), percent));
    }

    private static int effort(Drill drill, Phase phase, EffortLimit limit, BuilderSettings settings) {
        DoseRange range = drill.dose().effort();
        BuilderSettings.Moderate moderate = settings.moderate();
        int wanted = Math.max(range.usual(), limit.wish());
        if (moderate.phases().contains(phase) && drill.strength(moderate.goal()) >= moderate.strength()) {
            wanted = Math.max(moderate.least(), Math.min(moderate.most(), range.usual()));
        }
        return range.nearest(wanted);
    }

    private static List<Dose.Chosen> doses(
            Dose dose, int effort, BuilderSettings settings, Optional<CoachWishes.DoseWish> wish) {
        int mostSets = Math.max(dose.sets().least(), Math.min(dose.sets().most(), settings.atMost("sets")));
        int mostEach = dose.each().most();
        if (dose.count() == Dose.Count.REPETITIONS) {
            mostEach = Math.max(dose.each().least(), Math.min(mostEach, settings.atMost("repetitions")));
        }
        List<Dose.Chosen> doses = new ArrayList<>();
        for (int sets = dose.sets().least(); sets <= mostSets; sets++) {
            for (int each = dose.each().least(); each <= mostEach; each++) {
                doses.add(new Dose.Chosen(sets, each, effort, dose.sides().number()));
            }
        }
        if (wish.isPresent()) {
            int sets = wish.get().sets().isPresent()
                    ? nearest(wish.get().sets().getAsInt(), dose.sets().least(), mostSets)
                    : 0;
            int each = wish.get().each().isPresent()
                    ? nearest(wish.get().each().getAsInt(), dose.each().least(), mostEach)
                    : 0;
            doses.removeIf(d -> sets > 0 && d.sets() != sets || each > 0 && d.each() != each);
        }
        return doses;
    }

    private static int nearest(int wanted, int least, int most) {
        return Math.max(least, Math.min(most, wanted));
    }

    private static DoseChoice around(Drill drill, int effort, boolean strong, List<Dose.Chosen> doses, int percent) {
        boolean[] had =
                new boolean[doses.stream().mapToInt(drill::minutes).max().orElseThrow() + 2];
        doses.forEach(d -> had[drill.minutes(d)] = true);
        int usual = drill.minutes(doses.stream().min(unusual(drill)).orElseThrow());
        int fewest = usual;
        while (fewest > 1 && had[fewest - 1] && 100 * (fewest - 1) >= percent * usual) {
            fewest--;
        }
        int most = usual;
        while (had[most + 1]) {
            most++;
        }
        return new DoseChoice(drill, effort, strong, List.copyOf(doses), fewest, most);
    }

    /** How far a dose is from the drill's own default: sets weigh more than counts, and of two alike the fuller set wins. */
    private static Comparator<Dose.Chosen> unusual(Drill drill) {
        Dose dose = drill.dose();
        return Comparator.<Dose.Chosen>comparingInt(
                        d -> 3 * Math.abs(d.sets() - dose.sets().usual())
                                + Math.abs(d.each() - dose.each().usual()))
                .thenComparingInt(d -> -d.each())
                .thenComparingInt(Dose.Chosen::sets);
    }

    /** Minutes of the dose nearest to the drill's default. */
    int usualMinutes() {
        return drill.minutes(doses.stream().min(unusual(drill)).orElseThrow());
    }

    /** The dose of these minutes that is nearest to the drill's default. */
    AssignedDose of(int minutes, int age, BuilderSettings settings) {
        Dose.Chosen chosen = doses.stream()
                .filter(d -> drill.minutes(d) == minutes)
                .min(unusual(drill))
                .orElseThrow();
        Dose dose = drill.dose();
        int bound = settings.atMost(age >= OLDER ? "hold-seconds-from-65" : "hold-seconds");
        return AssignedDose.of(
                dose,
                chosen,
                Math.min(
                        dose.holdSeconds().usual(),
                        Math.max(bound, dose.holdSeconds().least())));
    }
}
