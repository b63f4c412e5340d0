package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.drillsheaf.Side;

/**
 * Compares a written description of a picture with the drawn pose: posture, things, sides, and sentences that the tables of
 * words know. What it does not know it lets stand.
 */
public record PictureClaims(PoseWords words) {
    private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.!?؟])\\s+");

    /** What the text says, and what is drawn. */
    public record Contradiction(String said, String drawn) {}

    /** @param text with its placeholders filled for the drawn side */
    public List<Contradiction> contradictions(String text, SolvedPose pose) {
        List<Contradiction> found = new ArrayList<>();
        posture(text, pose, found);
        side(text, pose, found);
        things(text, pose, found);
        statements(text, pose, found);
        return found;
    }

    private void posture(String text, SolvedPose pose, List<Contradiction> found) {
        String drawn =
                switch (pose.pose().root()) {
                    case STANDING, LEANING -> "standing";
                    case SUPINE, PRONE, SIDE_LYING_LEFT, SIDE_LYING_RIGHT -> "lying";
                    case SEATED -> "seated";
                    case KNEELING, HALF_KNEELING -> "kneeling";
                    case HANDS_AND_KNEES -> "hands-and-knees";
                };
        Map<String, String> said = signs("sign.root.", text);
        if (!said.isEmpty() && !said.containsKey(drawn)) {
            found.add(new Contradiction(said.values().iterator().next(), words.describe(pose)));
        }
    }

    /** A posture with a side in it, said of the other side. */
    private void side(String text, SolvedPose pose, List<Contradiction> found) {
        String drawn = words.describe(pose);
        for (String key : List.of("root.side-lying", "root.half-kneeling")) {
            for (Side side : Side.values()) {
                String said = words.sided(key, side);
                boolean otherDrawn = drawn.startsWith(words.sided(key, side.opposite()));
                if (otherDrawn && lower(text).contains(lower(said))) {
                    found.add(new Contradiction(said, drawn));
                }
            }
        }
    }

    private void things(String text, SolvedPose pose, List<Contradiction> found) {
        Set<String> drawn = new TreeSet<>();
        pose.props().forEach(prop -> drawn.add(prop.kind().id()));
        signs("sign.thing.", text).forEach((thing, said) -> {
            if (!drawn.contains(thing)) {
                found.add(new Contradiction(said, drawn.isEmpty() ? "no thing" : String.join(", ", drawn)));
            }
        });
    }

    private void statements(String text, SolvedPose pose, List<Contradiction> found) {
        Map<String, Set<PoseStatements.Statement>> claims = new TreeMap<>();
        words.table().keySet().forEach(key -> claims(key, claims));
        Set<PoseStatements.Statement> holds = holds(pose);
        for (String sentence : SENTENCE_END.split(text.strip())) {
            Set<PoseStatements.Statement> claimed = claims.getOrDefault(lower(sentence), Set.of());
            if (!holds.containsAll(claimed)) {
                found.add(new Contradiction(sentence, words.describe(pose)));
            }
        }
    }

    private void claims(String key, Map<String, Set<PoseStatements.Statement>> to) {
        if (key.startsWith("one.") || key.equals("trunk.turned")) {
            for (Side side : Side.values()) {
                to.put(lower(words.sided(key, side)), Set.of(new PoseStatements.Statement(key, Optional.of(side))));
            }
        } else if (key.startsWith("both.")) {
            String one = key.replaceFirst("both", "one");
            to.put(
                    lower(words.say(key)),
                    Set.of(
                            new PoseStatements.Statement(one, Optional.of(Side.RIGHT)),
                            new PoseStatements.Statement(one, Optional.of(Side.LEFT))));
        } else if (key.startsWith("trunk.")) {
            to.put(lower(words.say(key)), Set.of(PoseStatements.Statement.of(key)));
        }
    }

    private static Set<PoseStatements.Statement> holds(SolvedPose pose) {
        Set<PoseStatements.Statement> holds = new java.util.HashSet<>(PoseStatements.trunk(pose));
        for (String part : List.of("hip", "knee", "arm")) {
            for (Side side : Side.values()) {
                holds.add(PoseStatements.of(pose, part, side));
                if (PoseStatements.nearlyTheSame(pose, part)) {
                    String together = "one." + part + "." + PoseStatements.together(pose, part);
                    holds.add(new PoseStatements.Statement(together, Optional.of(side)));
                }
            }
        }
        return holds;
    }

    /** What the text names of one kind: last part of the key to the word found. */
    private Map<String, String> signs(String stem, String text) {
        Map<String, String> found = new TreeMap<>();
        words.table().forEach((key, signs) -> {
            if (key.startsWith(stem)) {
                for (String sign : signs.split(",\\s*", -1)) {
                    Pattern whole = Pattern.compile("(?<!\\p{L})" + Pattern.quote(lower(sign)) + "(?!\\p{L})");
                    if (whole.matcher(lower(text)).find()) {
                        found.putIfAbsent(key.substring(stem.length()), sign);
                    }
                }
            }
        });
        return found;
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
