package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Side;

/**
 * Says in a few plain sentences what a picture shows, for those who cannot see it. The words come from a table by key, so
 * that another language only needs another table {@code words-<language>.properties}.
 */
public final class PoseWords {

    private static final Set<PropKind> UNDER_LIMBS =
            EnumSet.of(PropKind.WALL, PropKind.TABLE, PropKind.COUNTER, PropKind.CHAIR, PropKind.STEP, PropKind.STOOL);

    private final Map<String, String> table;

    PoseWords(Map<String, String> table) {
        this.table = Map.copyOf(table);
    }

    public static PoseWords english() {
        return in("en").orElseThrow();
    }

    /** The words of a language; empty when there is no table for it. */
    public static Optional<PoseWords> in(String language) {
        return PoseWordsReader.table(language).map(PoseWords::new);
    }

    /** The keys and words of this language; {@code {side}} stands for the words of {@code side.…}. */
    public Map<String, String> table() {
        return table;
    }

    public String describe(SolvedPose pose) {
        List<String> sentences = new ArrayList<>();
        Touches touches = Touches.of(pose);
        sentences.add(root(pose, touches));
        trunk(pose, sentences);
        limbs(pose, "hip", sentences);
        limbs(pose, "knee", sentences);
        limbs(pose, "arm", sentences);
        return String.join(" ", sentences);
    }

    String say(String key) {
        return table.getOrDefault(key, key);
    }

    String sided(String key, Side side) {
        return say(key).replace("{side}", say("side." + side.id()));
    }

    private String root(SolvedPose pose, Touches touches) {
        RootPosture root = pose.pose().root();
        Side named = root == RootPosture.SIDE_LYING_LEFT ? Side.LEFT : Side.RIGHT;
        Side side = pose.isMirrored() ? named.opposite() : named;
        String posture =
                switch (root) {
                    case SIDE_LYING_LEFT, SIDE_LYING_RIGHT -> sided("root.side-lying", side);
                    case HALF_KNEELING -> sided("root.half-kneeling", side);
                    default -> say("root." + root.id());
                };
        List<String> with = new ArrayList<>();
        place("seat", EnumSet.of(PropKind.CHAIR, PropKind.STOOL, PropKind.TABLE, PropKind.BED), touches, with);
        boolean sits = root == RootPosture.SEATED && !with.isEmpty();
        String place = sits ? " " + with.get(0) : "";
        with.clear();
        with.add(posture + place);
        place("trunk", EnumSet.of(PropKind.TABLE, PropKind.BED, PropKind.WALL), touches, with);
        limbs("hand", "forearm", touches, with);
        limbs("forearm", "", touches, with);
        limbs("foot", "", touches, with);
        return String.join(say("comma"), with) + ".";
    }

    private void place(String region, Set<PropKind> kinds, Touches touches, List<String> to) {
        touches.of(region).stream()
                .filter(kinds::contains)
                .findFirst()
                .ifPresent(kind -> to.add(say("on." + region).replace("{thing}", say("thing." + kind.id()))));
    }

    /** @param unless nothing is said where this part of the same limb is on the thing too */
    private void limbs(String limb, String unless, Touches touches, List<String> to) {
        for (PropKind kind : UNDER_LIMBS) {
            boolean right = touches.of(limb + ".R").contains(kind)
                    && !touches.of(unless + ".R").contains(kind);
            boolean left = touches.of(limb + ".L").contains(kind)
                    && !touches.of(unless + ".L").contains(kind);
            if (right || left) {
                String key = right && left ? "on.both." + limb : "on.one." + limb;
                to.add(sided(key, right ? Side.RIGHT : Side.LEFT).replace("{thing}", say("thing." + kind.id())));
                return;
            }
        }
    }

    private void trunk(SolvedPose pose, List<String> to) {
        for (PoseStatements.Statement statement : PoseStatements.trunk(pose)) {
            to.add(say(statement));
        }
    }

    private void limbs(SolvedPose pose, String part, List<String> to) {
        PoseStatements.Statement right = PoseStatements.of(pose, part, Side.RIGHT);
        PoseStatements.Statement left = PoseStatements.of(pose, part, Side.LEFT);
        if (right.amount().equals(left.amount()) || PoseStatements.nearlyTheSame(pose, part)) {
            to.add(say("both." + part + "." + PoseStatements.together(pose, part)));
            return;
        }
        to.add(say(right));
        to.add(say(left));
    }

    /** The words of one statement, a full sentence. */
    String say(PoseStatements.Statement statement) {
        String words = say(statement.key());
        return statement.side().map(side -> sided(statement.key(), side)).orElse(words);
    }
}
