package org.drillsheaf.drill.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Problem;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Keyframe;
import org.drillsheaf.figure.pose.PictureClaims;
import org.drillsheaf.figure.pose.PoseFrame;
import org.drillsheaf.figure.pose.PoseWords;
import org.drillsheaf.figure.pose.SolvedPose;
import org.drillsheaf.figure.pose.SolvedSheet;

/** Looks whether every picture is described for those who cannot see it, briefly, and as it is drawn. */
record PictureCheck(Drill drill, Optional<SolvedSheet> sheet) {
    /** A longer description tires the listener. House limit, characters; the descriptions made from poses stay below. */
    static final int LONGEST = 320;

    /** @param languages those that the drill is written in */
    List<Problem> check(Set<String> languages) {
        List<Problem> problems = new ArrayList<>();
        sheet.ifPresent(solved -> {
            for (PoseFrame frame : PoseFrame.values()) {
                solved.pose(frame).ifPresent(pose -> picture(frame.id(), pose, languages, problems));
            }
        });
        for (Keyframe keyframe : drill.altText().keySet()) {
            if (drill.pose().get(keyframe.id()).isEmpty()) {
                problems.add(warning(
                        place(keyframe.id()),
                        "Alt text is written for the picture “" + keyframe.id() + "”, which is not there",
                        "Take it away, or write that keyframe under “pose”"));
            }
        }
        return problems;
    }

    private void picture(String frame, SolvedPose pose, Set<String> languages, List<Problem> problems) {
        for (String language : languages) {
            Optional<String> written =
                    Keyframe.of(frame).map(drill.altText()::get).flatMap(text -> text.in(language));
            Optional<PoseWords> words = PoseWords.in(language);
            if (written.isEmpty() && words.isEmpty()) {
                problems.add(warning(
                        place(frame),
                        "The picture “" + frame + "” has no alt text in " + language,
                        "Write it under “alt-text”; for this language none can be made from the pose"));
            }
            written.ifPresent(text -> {
                length(frame, text, problems);
                words.ifPresent(w -> claims(frame, text, w, pose, problems));
            });
        }
    }

    private void length(String frame, String text, List<Problem> problems) {
        if (text.length() > LONGEST) {
            problems.add(warning(
                    place(frame),
                    "The alt text of “" + frame + "” has " + text.length() + " characters",
                    "Say the posture and what matters in at most " + LONGEST + " characters"));
        }
    }

    private void claims(String frame, String text, PoseWords words, SolvedPose pose, List<Problem> problems) {
        String filled = text.replace("{side}", words.table().getOrDefault("side.right", ""))
                .replace("{other-side}", words.table().getOrDefault("side.left", ""));
        for (PictureClaims.Contradiction wrong : new PictureClaims(words).contradictions(filled, pose)) {
            problems.add(warning(
                    place(frame),
                    "The alt text of “" + frame + "” says “" + wrong.said() + "”, drawn is: " + wrong.drawn(),
                    "Correct the text or the pose; without a text it is made from the pose"));
        }
    }

    private YamlNode place(String frame) {
        YamlNode written = drill.written().nearest("/alt-text/" + frame);
        return written.path().isEmpty() ? drill.written().nearest("/pose") : written;
    }

    private static Problem warning(YamlNode place, String what, String remedy) {
        return Problem.warning(place.file(), place.line(), what, remedy);
    }
}
