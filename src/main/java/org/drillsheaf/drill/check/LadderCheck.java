package org.drillsheaf.drill.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.drillsheaf.Problem;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Drill;

/** Looks at families: levels without gaps, neighbours that agree, no circles. */
record LadderCheck(Catalogue catalogue) {

    List<Problem> check() {
        List<Problem> problems = new ArrayList<>();
        Set<String> families = new TreeSet<>();
        catalogue.drills().forEach(d -> families.add(d.family()));
        for (String family : families) {
            family(catalogue.family(family), problems);
            unnamed(catalogue.family(family), problems);
        }
        for (Drill drill : catalogue.drills()) {
            neighbour(drill, drill.harder(), "harder", problems);
            neighbour(drill, drill.easier(), "easier", problems);
            circle(drill, Drill::prerequisites, "is in the end a prerequisite of itself", "/prerequisites", problems);
            circle(drill, d -> d.harder().stream().toList(), "is in the end harder than itself", "/harder", problems);
        }
        return problems;
    }

    private static void family(List<Drill> drills, List<Problem> problems) {
        Drill first = drills.get(0);
        if (drills.size() == 1) {
            problems.add(Problem.advice(
                    first.written().file(),
                    first.written().nearest("/family").line(),
                    "“" + first.id() + "” is alone in the family “" + first.family() + "”",
                    "Add an easier or harder drill, or put it into another family"));
        }
        Set<Integer> levels = new HashSet<>();
        for (Drill drill : drills) {
            if (!levels.add(drill.level())) {
                problems.add(at(
                        drill,
                        "/level",
                        "Two drills of “" + drill.family() + "” stand on level " + drill.level(),
                        "Give each level one drill"));
            } else if (drill.level() > 1 && !levels.contains(drill.level() - 1)) {
                problems.add(at(
                        drill,
                        "/level",
                        "“" + drill.family() + "” has no drill on level " + (drill.level() - 1),
                        "Add the missing level, or renumber the family"));
            }
        }
    }

    /** A drill that stands on the next level of the family and is not named. */
    private static void unnamed(List<Drill> drills, List<Problem> problems) {
        for (Drill drill : drills) {
            drills.stream()
                    .filter(next -> next.level() == drill.level() + 1)
                    .filter(next -> drill.harder().isEmpty() || next.easier().isEmpty())
                    .forEach(next -> problems.add(at(
                            drill.harder().isEmpty() ? drill : next,
                            drill.harder().isEmpty() ? "/harder" : "/easier",
                            "“" + drill.id() + "” and “" + next.id() + "” follow each other in “" + drill.family()
                                    + "” and do not name each other",
                            "Write harder and easier, so that the next step is found")));
        }
    }

    private void neighbour(Drill drill, Optional<String> id, String way, List<Problem> problems) {
        Optional<Drill> other = id.flatMap(catalogue::drill);
        if (other.isEmpty()) {
            return;
        }
        boolean harder = way.equals("harder");
        Optional<String> back = harder ? other.get().easier() : other.get().harder();
        if (back.isEmpty() || !back.get().equals(drill.id())) {
            problems.add(at(
                    drill,
                    "/" + way,
                    "“" + other.get().id() + "” does not name “" + drill.id() + "” as its "
                            + (harder ? "easier" : "harder") + " neighbour",
                    "Name each other, or neither"));
        }
        boolean sameFamily = other.get().family().equals(drill.family());
        boolean wrongWay =
                harder ? other.get().level() <= drill.level() : other.get().level() >= drill.level();
        if (sameFamily && wrongWay) {
            problems.add(at(
                    drill,
                    "/" + way,
                    "The " + way + " neighbour “" + other.get().id() + "” stands on level "
                            + other.get().level(),
                    "Name one on a " + (harder ? "higher" : "lower") + " level than " + drill.level()));
        }
    }

    /** Told once for each circle, at its first drill by name. */
    private void circle(
            Drill start, Function<Drill, List<String>> leadsTo, String what, String key, List<Problem> problems) {
        Set<String> seen = new LinkedHashSet<>();
        if (reaches(start.id(), start.id(), leadsTo, seen)
                && seen.stream()
                        .filter(id -> reaches(id, start.id(), leadsTo, new HashSet<>()))
                        .noneMatch(id -> id.compareTo(start.id()) < 0)) {
            YamlNode place = start.written().nearest(key);
            problems.add(Problem.error(
                    place.file(), place.line(), "“" + start.id() + "” " + what, "Take one link of the circle away"));
        }
    }

    /** Whether the links of a drill lead to another one. */
    private boolean reaches(String from, String to, Function<Drill, List<String>> leadsTo, Set<String> seen) {
        for (String next : catalogue.drill(from).map(leadsTo).orElse(List.of())) {
            if (next.equals(to) || (seen.add(next) && reaches(next, to, leadsTo, seen))) {
                seen.add(next);
                return true;
            }
        }
        return false;
    }

    private static Problem at(Drill drill, String pointer, String what, String remedy) {
        YamlNode place = drill.written().nearest(pointer);
        return Problem.warning(place.file(), place.line(), what, remedy);
    }
}
