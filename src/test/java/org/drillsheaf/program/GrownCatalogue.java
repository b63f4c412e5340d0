package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.drillsheaf.program.build.BuildTask;

/**
 * The house catalogue grown to any size, so that a large catalogue looks like a real one: copy after copy of the whole library with
 * its families, levels and prerequisites, in which some goals, strengths, minutes and things are changed. The needs are
 * those of one sample client. The same size and seed give the same task.
 */
public final class GrownCatalogue {
    private static final String CLIENT = "odile-farrant";

    private final Random random;
    private final List<String> goals;
    private final List<String> things;

    private GrownCatalogue(BuildTask real, long seed) {
        random = new Random(seed);
        Set<String> served = new TreeSet<>();
        Set<String> needed = new TreeSet<>();
        real.candidates().forEach(c -> {
            served.addAll(c.strengths().keySet());
            needed.addAll(c.equipment());
        });
        goals = List.copyOf(served);
        things = List.copyOf(needed);
    }

    /** A task with this many drills; below the size of the library some of the real drills, unchanged. */
    public static BuildTask task(int drills, long seed) {
        House house = House.open();
        Needs needs = house.needs(house.sample(CLIENT));
        BuildTask real = new TaskMaker(needs, house.builder.offers(needs), house.vocabulary.builder()).task();
        return new BuildTask(
                real.phases(),
                new GrownCatalogue(real, seed).candidates(real.candidates(), drills),
                real.carried(),
                real.taught(),
                real.before(),
                real.carriedBefore(),
                real.wants());
    }

    private List<BuildTask.Candidate> candidates(List<BuildTask.Candidate> real, int drills) {
        List<BuildTask.Candidate> grown = new ArrayList<>(real);
        if (drills < real.size()) {
            Collections.shuffle(grown, random);
        }
        for (int copy = 1; grown.size() < drills; copy++) {
            for (BuildTask.Candidate drill : real) {
                grown.add(changed(drill, "-" + copy));
            }
        }
        return grown.subList(0, drills);
    }

    private BuildTask.Candidate changed(BuildTask.Candidate drill, String copy) {
        Map<String, Integer> strengths = new TreeMap<>();
        drill.strengths().forEach((goal, strength) -> {
            String other = random.nextInt(3) == 0 ? goals.get(random.nextInt(goals.size())) : goal;
            int step = random.nextInt(3) == 0 ? random.nextInt(3) - 1 : 0;
            strengths.put(other, Math.max(1, Math.min(3, strength + step)));
        });
        Set<String> equipment = new HashSet<>(drill.equipment());
        if (random.nextInt(4) == 0) {
            equipment.clear();
            equipment.add(things.get(random.nextInt(things.size())));
        }
        Map<Integer, BuildTask.Option> options = new TreeMap<>();
        int longer = random.nextInt(3) - 1;
        drill.options().forEach((phase, option) -> {
            int fewest = Math.max(1, option.fewestMinutes() + longer);
            int most = Math.max(fewest, option.mostMinutes() + longer);
            options.put(phase, new BuildTask.Option(fewest, most, option.strong()));
        });
        Set<String> prerequisites = new HashSet<>();
        drill.prerequisites().forEach(p -> prerequisites.add(p + copy));
        return new BuildTask.Candidate(
                drill.id() + copy,
                drill.family() + copy,
                drill.level(),
                drill.position(),
                equipment,
                strengths,
                prerequisites,
                drill.freeEntry(),
                options);
    }
}
