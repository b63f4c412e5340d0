package org.drillsheaf.drill.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillsheaf.Problem;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.Dose;
import org.drillsheaf.drill.Drill;

/** Looks at the words: first word of a step, length of sentences and of the drill, reading grade, gaps in a language. */
record TextCheck(Map<String, VerbList> verbs) {
    /** House limits of the client's language. */
    static final int MOST_WORDS = 12;

    static final int MOST_STEPS = 7;
    /** Aim and limit of the reading grade: sources ask for 6 to 8, we take 6 as the aim and warn above 8. */
    static final double AIMED_GRADE = 6;

    static final double HIGHEST_GRADE = 8;
    /** How a step may begin in a language. */
    private static final Map<String, String> EXAMPLE = Map.of("en", "Put", "es", "Ponga", "ar", "ضعوا");

    private static final Pattern MEASURED = Pattern.compile(
            "\\d\\s*°|degrees?\\b|right angle|\\bgrados?\\b|ángulo recto|درجة|زاوية قائمة", Pattern.CASE_INSENSITIVE);
    /** A side typed by hand; “straight” is derecho too and “just” is right, but in a sided drill both are better left out. */
    private static final Pattern SIDE = Pattern.compile(
            "(?<!\\p{L})(?:left|right|izquierd[oa]s?|derech[oa]s?|اليمنى|اليسرى|الأيمن|الأيسر)(?!\\p{L})",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern NO_FEELING = Pattern.compile("\\b(burn|stretch|engage)", Pattern.CASE_INSENSITIVE);

    List<Problem> check(Drill drill) {
        List<Problem> problems = new ArrayList<>();
        List<TextPiece> pieces = TextPiece.of(drill);
        Set<String> languages = new TreeSet<>();
        pieces.forEach(p -> languages.addAll(p.byLanguage().keySet()));
        for (TextPiece piece : pieces) {
            gaps(piece, languages, problems);
            piece.byLanguage().forEach((language, text) -> words(piece, language, text, problems));
        }
        steps(drill, problems);
        noun(drill, languages, problems);
        if (drill.dose().sides() == Dose.Sides.EACH_SIDE) {
            pieces.forEach(piece -> side(piece, problems));
        }
        grade(drill, pieces, problems);
        drill.translations().stream()
                .filter(t -> t.isUnreviewed())
                .forEach(t -> problems.add(Problem.advice(
                        drill.written().nearest("/translations/" + t.language()).file(),
                        drill.written().nearest("/translations/" + t.language()).line(),
                        "The text in “" + t.language() + "” was made by a machine and nobody has gone through it",
                        "Let a speaker read it, then write reviewed-on")));
        return problems;
    }

    /** Counts those of the drill and of each variant that writes its own. */
    private static void steps(Drill drill, List<Problem> problems) {
        List<YamlNode> files = new ArrayList<>(List.of(drill.written()));
        drill.written().get("variants").ifPresent(variants -> files.addAll(variants.items()));
        for (YamlNode file : files) {
            int steps = 0;
            boolean own = false;
            for (String part : List.of("set-up", "action")) {
                own |= file.has(part);
                steps += file.get(part)
                        .or(() -> drill.written().get(part))
                        .map(list -> list.items().size())
                        .orElse(0);
            }
            if (own && steps > MOST_STEPS) {
                problems.add(warning(
                        file.nearest("/action"),
                        "The " + (file.has("family") ? "drill" : "variant") + " has " + steps + " steps",
                        "Leave at most " + MOST_STEPS + " of set-up and action together"));
            }
        }
    }

    private static void noun(Drill drill, Set<String> languages, List<Problem> problems) {
        Set<String> missing = new TreeSet<>(languages);
        missing.removeAll(drill.dose().noun().keySet());
        if (!missing.isEmpty()) {
            problems.add(warning(
                    drill.written().nearest("/dose/noun"),
                    "The word for what is counted is missing in " + String.join(", ", missing),
                    "Write it in every language that the drill has"));
        }
    }

    private static void side(TextPiece piece, List<Problem> problems) {
        for (String text : piece.byLanguage().values()) {
            Matcher side = SIDE.matcher(text);
            if (side.find()) {
                problems.add(warning(
                        piece.place(),
                        "The text says “" + side.group() + "”, but the drill is done on each side",
                        "Write {side} or {other-side}"));
            }
        }
    }

    private static void gaps(TextPiece piece, Set<String> languages, List<Problem> problems) {
        Set<String> missing = new TreeSet<>(languages);
        missing.removeAll(piece.byLanguage().keySet());
        if (!missing.isEmpty()) {
            problems.add(warning(
                    piece.place(),
                    "This text is missing in " + String.join(", ", missing),
                    "Write it in every language that the drill has"));
        }
    }

    private void words(TextPiece piece, String language, String text, List<Problem> problems) {
        VerbList list = verbs.get(language);
        if (piece.kind() == TextPiece.Kind.STEP && list != null && !list.begins(text)) {
            problems.add(warning(
                    piece.place(),
                    "The step “" + shorten(text) + "” does not start with a verb",
                    "Begin with what to do, such as “" + EXAMPLE.getOrDefault(language, "Put") + " …”"));
        }
        for (String sentence : Readability.sentences(text)) {
            int count = Readability.words(sentence).size();
            if (piece.kind() != TextPiece.Kind.NAME && count > MOST_WORDS) {
                problems.add(warning(
                        piece.place(),
                        "The sentence “" + shorten(sentence) + "” has " + count + " words",
                        "Make two sentences of at most " + MOST_WORDS + " words"));
            }
        }
        if (MEASURED.matcher(text).find()) {
            problems.add(warning(
                    piece.place(),
                    "A client text names degrees or a right angle",
                    "Say “square corner”, or show it in the picture"));
        }
        if (piece.kind() == TextPiece.Kind.FEELING && NO_FEELING.matcher(text).find()) {
            problems.add(warning(
                    piece.place(),
                    "“" + shorten(text) + "” asks for burning, stretching or engaging",
                    "Name the place and “at work”"));
        }
    }

    private static void grade(Drill drill, List<TextPiece> pieces, List<Problem> problems) {
        StringBuilder text = new StringBuilder();
        for (TextPiece piece : pieces) {
            boolean sentence = piece.kind() == TextPiece.Kind.STEP || piece.kind() == TextPiece.Kind.SENTENCE;
            if (sentence && piece.byLanguage().get("en") != null) {
                text.append(piece.byLanguage().get("en")).append('\n');
            }
        }
        double grade = Readability.of(text.toString()).grade();
        String what = String.format(Locale.ROOT, "The English text reads at grade %.1f", grade);
        if (grade > HIGHEST_GRADE) {
            problems.add(warning(drill.written(), what, "Use shorter words and sentences; aim at grade 6"));
        } else if (grade > AIMED_GRADE) {
            problems.add(Problem.advice(
                    drill.written().file(), drill.written().line(), what, "Shorter words bring it under 6"));
        }
    }

    private static Problem warning(YamlNode place, String what, String remedy) {
        return Problem.warning(place.file(), place.line(), what, remedy);
    }

    private static String shorten(String text) {
        return text.length() > 50 ? text.substring(0, 50) + "…" : text;
    }
}
