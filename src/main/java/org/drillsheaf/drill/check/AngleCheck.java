package org.drillsheaf.drill.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillsheaf.Problem;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.pose.SolvedPose;
import org.drillsheaf.figure.pose.SolvedSheet;

/** Compares degrees typed into a text with the joint that the same sentence names, as it is drawn. */
record AngleCheck(Optional<SolvedSheet> sheet) {
    /** A typed angle may be off by so much, degrees: nobody sees less in a picture. House limit. */
    private static final double TOLERANCE = 10;

    private static final Pattern DEGREES =
            Pattern.compile("(\\d{1,3})\\s*(?:°|degrees?\\b|grados?\\b|درجة)", Pattern.CASE_INSENSITIVE);
    private static final Map<Motion, Pattern> JOINTS = Map.of(
            Motion.HIP_FLEX, word("hips?|caderas?|الورك|ورك"),
            Motion.KNEE_FLEX, word("knees?|rodillas?|الركبة|ركبتك"),
            Motion.ELBOW_FLEX, word("elbows?|codos?|المرفق|مرفقك"));

    private static Pattern word(String names) {
        return Pattern.compile("(?<!\\p{L})(?:" + names + ")(?!\\p{L})", Pattern.CASE_INSENSITIVE);
    }

    List<Problem> check(TextPiece piece) {
        List<Problem> problems = new ArrayList<>();
        for (String text : piece.byLanguage().values()) {
            for (String sentence : Readability.sentences(text)) {
                Matcher degrees = DEGREES.matcher(sentence);
                while (degrees.find()) {
                    sentence(piece, sentence, degrees, problems);
                }
            }
        }
        return problems;
    }

    private void sentence(TextPiece piece, String sentence, Matcher degrees, List<Problem> problems) {
        double typed = Double.parseDouble(degrees.group(1));
        JOINTS.forEach((motion, names) -> {
            Matcher joint = names.matcher(sentence);
            TreeSet<Integer> drawn = drawn(motion);
            boolean agrees = drawn.stream().anyMatch(angle -> Math.abs(angle - typed) <= TOLERANCE);
            if (joint.find() && !drawn.isEmpty() && !agrees) {
                problems.add(Problem.warning(
                        piece.place().file(),
                        piece.place().line(),
                        "The text says “" + degrees.group().strip() + "” of the " + joint.group()
                                + ", but it is drawn at "
                                + String.join(
                                        "° and ",
                                        drawn.stream().map(String::valueOf).toList())
                                + "°",
                        "Correct the text or the pose"));
            }
        });
    }

    private TreeSet<Integer> drawn(Motion motion) {
        TreeSet<Integer> angles = new TreeSet<>();
        for (SolvedPose pose : sheet.map(s -> List.copyOf(s.all())).orElse(List.of())) {
            for (Side side : Side.values()) {
                angles.add((int) Math.round(pose.angle(motion, side)));
            }
        }
        return angles;
    }
}
