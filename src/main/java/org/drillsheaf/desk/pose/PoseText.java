package org.drillsheaf.desk.pose;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.YamlDocument;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.pose.PoseFrame;
import org.drillsheaf.figure.pose.PoseMirror;
import org.drillsheaf.figure.pose.PoseSheet;
import org.drillsheaf.figure.pose.PoseSheetReader;
import org.drillsheaf.figure.pose.Unknown;

/** Reads and writes the pose in the text of a drill: angles as whole degrees, where the author would have written them. */
final class PoseText {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final List<String> KEYFRAMES = List.of("views", "distances", "start", "move", "end");
    private static final List<String> KEYFRAME =
            List.of("from", "root", "heading", "joints", "props", "contacts", "solve", "feel", "marks", "ghost");

    private PoseText() {}

    static Optional<PoseSheet> read(YamlDocument drill, Problems problems) {
        return drill.node().get("pose").flatMap(pose -> PoseSheetReader.read(pose, problems));
    }

    /** A keyframe with everything it builds upon under it. */
    static JsonNode keyframe(YamlDocument drill, PoseFrame frame) {
        return drill.node()
                .get("pose")
                .flatMap(pose -> PoseSheetReader.keyframe(pose, frame))
                .map(YamlNode::json)
                .orElse(JSON.objectNode());
    }

    /** Whether the two sides of a movement are written each for itself. */
    static boolean isSplit(YamlDocument drill, PoseFrame frame, Motion motion) {
        JsonNode joints = keyframe(drill, frame).path("joints");
        return motion.isPaired()
                && (joints.path(motion.joint() + ".R").has(motion.movement())
                        || joints.path(motion.joint() + ".L").has(motion.movement()));
    }

    /** Another angle, for one side or for both and the middle. */
    static YamlDocument turned(YamlDocument drill, PoseFrame frame, Motion motion, Optional<Side> side, long degrees) {
        YamlDocument turned = drill;
        if (side.isPresent()) {
            return angle(turned, frame, motion.joint() + "." + Skeleton.letter(side.get()), motion, degrees);
        }
        if (isSplit(drill, frame, motion)) {
            for (Side one : List.of(Side.RIGHT, Side.LEFT)) {
                turned = turned(turned, frame, motion, Optional.of(one), degrees);
            }
            return turned;
        }
        return angle(turned, frame, motion.joint(), motion, degrees);
    }

    private static YamlDocument angle(YamlDocument drill, PoseFrame frame, String joint, Motion motion, long degrees) {
        String keyframe = "/pose/" + frame.id();
        YamlDocument ready = drill.at(keyframe + "/joints").isObject()
                ? drill
                : drill.with(keyframe + "/joints", JSON.objectNode(), KEYFRAME);
        return ready.with(keyframe + "/joints/" + joint + "/" + motion.movement(), JSON.numberNode((int) degrees));
    }

    /** Writes the two sides of a movement each for itself, as they are. */
    static YamlDocument split(YamlDocument drill, PoseFrame frame, Motion motion, Map<Side, Long> degrees) {
        YamlDocument split = drill;
        for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            split = turned(split, frame, motion, Optional.of(side), degrees.getOrDefault(side, 0L));
        }
        return split;
    }

    /** Takes an angle from what the contacts may change; both sides when the side is empty. */
    static YamlDocument held(YamlDocument drill, PoseFrame frame, Motion motion, Optional<Side> side) {
        JsonNode solve = keyframe(drill, frame).path("solve");
        ArrayNode rest = JSON.arrayNode();
        for (JsonNode word : solve) {
            String both = new Unknown.Angle(motion, Optional.empty()).word();
            String own = new Unknown.Angle(motion, side).word();
            boolean anySide =
                    side.isEmpty() && word.asText().matches(motion.joint() + "\\.[RL]\\." + motion.movement());
            if (side.isPresent() && word.asText().equals(both)) {
                rest.add(new Unknown.Angle(motion, side.map(Side::opposite)).word());
            } else if (!word.asText().equals(own) && !anySide) {
                rest.add(word);
            }
        }
        return rest.equals(solve) || solve.isMissingNode() ? drill : with(drill, frame, "solve", rest);
    }

    /** Another list or word of a keyframe: {@code contacts}, {@code props}, {@code marks}, {@code root} … */
    static YamlDocument with(YamlDocument drill, PoseFrame frame, String key, JsonNode value) {
        return drill.with("/pose/" + frame.id() + "/" + key, value, KEYFRAME);
    }

    /** A new keyframe that begins like the one before it. */
    static YamlDocument withFrame(YamlDocument drill, PoseFrame frame) {
        PoseFrame before =
                frame == PoseFrame.END && drill.node().nearest("/pose").has(PoseFrame.MOVE.id())
                        ? PoseFrame.MOVE
                        : PoseFrame.START;
        ObjectNode written = JSON.objectNode().put("from", before.id());
        return drill.with("/pose/" + frame.id(), written, KEYFRAMES);
    }

    static YamlDocument withoutFrame(YamlDocument drill, PoseFrame frame) {
        return drill.without("/pose/" + frame.id());
    }

    static YamlDocument mirrored(YamlDocument drill) {
        YamlDocument turned = drill;
        JsonNode mirrored = PoseMirror.of(drill.node().nearest("/pose"));
        for (String key : KEYFRAMES) {
            if (mirrored.has(key)) {
                turned = turned.with("/pose/" + key, mirrored.get(key), KEYFRAMES);
            }
        }
        return turned;
    }
}
