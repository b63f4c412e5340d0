package org.drillsheaf.screen.rule;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillsheaf.Ids;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;

/** Reads one statement such as {@code limited thigh-drop both} or {@code value breath-out >= 5}. */
final class AtomReader {
    private static final List<String> ATOM_WORDS =
            Arrays.stream(Rule.Word.values()).map(AtomReader::id).toList();

    private final Words words;
    private final YamlNode node;
    private final Problems problems;
    private final boolean thisSideIsKnown;

    AtomReader(Words words, YamlNode node, boolean thisSideIsKnown, Problems problems) {
        this.words = words;
        this.node = node;
        this.thisSideIsKnown = thisSideIsKnown;
        this.problems = problems;
    }

    static boolean isAtomWord(String word) {
        return ATOM_WORDS.contains(word);
    }

    private static String id(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    Optional<Rule> read(String text) {
        Deque<String> rest = new ArrayDeque<>(List.of(text.strip().split("\\s+")));
        String first = rest.removeFirst();
        Rule.Word word = Arrays.stream(Rule.Word.values())
                .filter(w -> id(w).equals(first))
                .findFirst()
                .orElseThrow();
        String subject = "";
        Optional<String> part = Optional.empty();
        if (word != Rule.Word.AGE && word != Rule.Word.NEW_PAIN) {
            if (rest.isEmpty()) {
                return wrong("“" + text + "” does not say of what", "Write an id behind “" + first + "”");
            }
            String[] pieces = rest.removeFirst().split("\\.", 2);
            subject = pieces[0];
            part = pieces.length == 2 ? Optional.of(pieces[1]) : Optional.empty();
        }
        Rule.Comparison comparison = Rule.Comparison.NONE;
        if (rest.size() >= 2 && List.of("<=", ">=").contains(rest.peekFirst())) {
            String sign = rest.removeFirst();
            try {
                comparison = new Rule.Comparison(sign, Double.parseDouble(rest.removeFirst()));
            } catch (NumberFormatException e) {
                return wrong("“" + text + "” has no number behind " + sign, "Write a number there");
            }
        }
        Rule.Place place = Rule.Place.NONE;
        if (!rest.isEmpty()) {
            String name = rest.removeFirst();
            Optional<Rule.Place> known = Arrays.stream(Rule.Place.values())
                    .filter(p -> p != Rule.Place.NONE && id(p).equals(name))
                    .findFirst();
            if (known.isEmpty()) {
                return wrong(
                        "“" + name + "” is no side",
                        "Write one of left, right, both, either, this, other, first, last");
            }
            place = known.get();
        }
        if (!rest.isEmpty()) {
            return wrong("“" + text + "” has too many words", "Write one statement a line");
        }
        Rule.Atom atom = new Rule.Atom(word, subject, part, place, comparison, node.line());
        return check(atom, text) ? Optional.of(atom) : Optional.empty();
    }

    private boolean check(Rule.Atom atom, String text) {
        boolean needsNumber =
                atom.word() == Rule.Word.VALUE || atom.word() == Rule.Word.WRITTEN || atom.word() == Rule.Word.AGE;
        if (needsNumber != atom.comparison().isGiven()) {
            return fail(
                    "“" + text + "” " + (needsNumber ? "needs a number" : "takes no number"),
                    needsNumber ? "Write <= or >= and a number" : "Remove the number");
        }
        boolean needsThis = atom.place() == Rule.Place.THIS || atom.place() == Rule.Place.OTHER;
        if (needsThis && !thisSideIsKnown) {
            return fail(
                    "“" + text + "” speaks of this side where there is none",
                    "Write left, right, both or either, or put it under each-side or some-side");
        }
        return switch (atom.word()) {
            case AGE, NEW_PAIN, OBSERVED -> noSide(atom, text);
            case HOLDS, OPEN -> Ids.check(node, atom.subject(), words.presentations(), "presentation", problems);
            default -> checkTest(atom, text);
        };
    }

    private boolean noSide(Rule.Atom atom, String text) {
        return atom.place() == Rule.Place.NONE || fail("“" + text + "” has no sides", "Remove the side");
    }

    private boolean checkTest(Rule.Atom atom, String text) {
        if (!Ids.check(node, atom.subject(), words.tests().keySet(), "test", problems)) {
            return false;
        }
        Words.Subject test =
                Optional.ofNullable(words.tests().get(atom.subject())).orElseThrow();
        boolean comparesSides = atom.word() == Rule.Word.DIFFER;
        if (comparesSides || !test.sided()) {
            if (comparesSides && !test.sided()) {
                return fail(atom.subject() + " has no sides that could differ", "Use a test with sides");
            }
            if (!noSide(atom, text)) {
                return false;
            }
        } else if (atom.place() == Rule.Place.NONE) {
            return fail("“" + text + "” does not say which side", "Add left, right, both, either, this or other");
        }
        return checkKind(atom, test, text);
    }

    private boolean checkKind(Rule.Atom atom, Words.Subject test, String text) {
        return switch (atom.word()) {
            case BEYOND ->
                test.hasUpperMark() || fail(atom.subject() + " has no mark beyond expected", "Use a test that has one");
            case WIDE, NARROW ->
                test.isRange() || fail(atom.subject() + " is not wide or narrow", "Use limited or free");
            case LESS -> test.sided() || fail(atom.subject() + " has no sides to compare", "Use a test with sides");
            case MARKED, NOTED ->
                test.marks().contains(atom.part().orElse(""))
                        || fail(
                                "“" + text + "” names no mark of " + atom.subject(),
                                "Known marks: " + listed(test.marks()));
            case VALUE, WRITTEN, GAINED, LOST ->
                atom.part()
                                .map(p -> test.parts().contains(p))
                                .orElse(test.parts().isEmpty())
                        || fail(
                                "“" + text + "” names no value of " + atom.subject(),
                                test.parts().isEmpty()
                                        ? "Remove what stands behind the point"
                                        : "Write " + atom.subject() + "." + String.join(" or ", test.parts()));
            default ->
                atom.part().isEmpty()
                        || fail("“" + text + "” asks for a part of a test", "Remove what stands behind the point");
        };
    }

    private static String listed(java.util.Set<String> marks) {
        return marks.isEmpty() ? "none" : marks.stream().sorted().collect(Collectors.joining(", "));
    }

    private Optional<Rule> wrong(String what, String remedy) {
        node.error(problems, what, remedy);
        return Optional.empty();
    }

    private boolean fail(String what, String remedy) {
        node.error(problems, what, remedy);
        return false;
    }
}
