package org.drillsheaf.drill.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.drillsheaf.Problem;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Drill;

/** Finds drills that say the same: the share of word triples that two drills have in common. */
record DuplicateCheck(Catalogue catalogue) {
    /** From this share on two drills say nearly the same. House limit. */
    static final double NEARLY_THE_SAME = 0.6;

    List<Problem> check() {
        List<Drill> drills = catalogue.drills();
        List<Set<String>> triples = drills.stream().map(DuplicateCheck::triples).toList();
        List<Problem> problems = new ArrayList<>();
        for (int a = 0; a < drills.size(); a++) {
            for (int b = a + 1; b < drills.size(); b++) {
                compare(drills.get(a), drills.get(b), share(triples.get(a), triples.get(b)), problems);
            }
        }
        return problems;
    }

    private static void compare(Drill first, Drill second, double share, List<Problem> problems) {
        boolean sameName = first.name().english().equalsIgnoreCase(second.name().english());
        if (sameName) {
            problems.add(Problem.error(
                    second.written().file(),
                    second.written().nearest("/name").line(),
                    "“" + first.id() + "” has the same name",
                    "Give each drill a name of its own"));
        } else if (share >= NEARLY_THE_SAME) {
            problems.add(Problem.warning(
                    second.written().file(),
                    second.written().line(),
                    String.format(Locale.ROOT, "%.0f %% of its wording stands in “%s” too", 100 * share, first.id()),
                    "Say what is different, or keep one of the two"));
        }
    }

    static double share(Set<String> a, Set<String> b) {
        Set<String> both = new HashSet<>(a);
        both.retainAll(b);
        int all = a.size() + b.size() - both.size();
        return all == 0 ? 0 : (double) both.size() / all;
    }

    private static Set<String> triples(Drill drill) {
        StringBuilder text = new StringBuilder();
        drill.setUpSteps().forEach(s -> text.append(s.text().english()).append(' '));
        drill.actionSteps().forEach(s -> text.append(s.text().english()).append(' '));
        List<String> words = Readability.words(text.toString().toLowerCase(Locale.ROOT));
        Set<String> triples = new HashSet<>();
        for (int i = 0; i + 2 < words.size(); i++) {
            triples.add(words.get(i) + " " + words.get(i + 1) + " " + words.get(i + 2));
        }
        return triples;
    }
}
