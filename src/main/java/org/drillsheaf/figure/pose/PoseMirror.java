package org.drillsheaf.figure.pose;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.body.Motion;

/** Writes the pose of a drill for the other side: what stands in the file with left and right exchanged. */
public final class PoseMirror {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private PoseMirror() {}

    /** @param pose the {@code pose} of a drill, as {@link PoseSheetReader} reads it */
    public static JsonNode of(YamlNode pose) {
        ObjectNode mirrored = pose.json().deepCopy();
        replace(mirrored, "views", list -> each(list, view -> text(view, PoseMirror::view)));
        replace(mirrored, "distances", PoseMirror::distances);
        for (PoseFrame frame : PoseFrame.values()) {
            if (mirrored.path(frame.id()).isObject()) {
                mirrored.set(frame.id(), keyframe(mirrored.path(frame.id()), pose, frame));
            }
        }
        return mirrored;
    }

    private static String view(String words) {
        return switch (words) {
            case "side" -> "far-side";
            case "far-side" -> "side";
            case "top" -> "q:180,90";
            default -> words.startsWith("q:") ? quarter(words) : words;
        };
    }

    /** The azimuth counts from the right side, so a half turn less it is the same from the left. */
    private static String quarter(String words) {
        int comma = words.indexOf(',');
        double azimuth = 180 - Double.parseDouble(words.substring(2, comma));
        String turned = number(azimuth > 180 ? azimuth - 360 : azimuth) + words.substring(comma);
        return turned.equals("0,90") ? "top" : "q:" + turned;
    }

    private static JsonNode distances(JsonNode distances) {
        ObjectNode turned = distances.deepCopy();
        turned.forEach(distance -> {
            replace((ObjectNode) distance, "of", PoseMirror::name);
            replace((ObjectNode) distance, "from", PoseMirror::name);
        });
        return turned;
    }

    private static JsonNode keyframe(JsonNode written, YamlNode pose, PoseFrame frame) {
        ObjectNode turned = written.deepCopy();
        replace(turned, "root", root -> text(root, PoseMirror::root));
        replace(turned, "pose", root -> text(root, PoseMirror::root));
        replace(turned, "heading", PoseMirror::minus);
        if (turned.path("root").asText().startsWith("side-lying")) {
            // Both of these postures face the viewer, so the mirrored one is turned about.
            turned.set("heading", number(180 + turned.path("heading").asDouble(0)));
        }
        replace(turned, "joints", PoseMirror::joints);
        replace(turned, "hold", PoseMirror::hold);
        replace(turned, "props", list -> each(list, PoseMirror::prop));
        replace(turned, "contacts", list -> each(list, PoseMirror::contact));
        replace(turned, "solve", list -> each(list, word -> text(word, PoseMirror::unknown)));
        replace(turned, "feel", list -> list.isArray() ? each(list, PoseMirror::name) : name(list));
        replace(turned, "marks", list -> each(list, PoseMirror::mark));
        replace(turned, "annotations", list -> each(list, PoseMirror::mark));
        replace(turned, "ghost", PoseMirror::ghost);
        halfKneeling(turned, pose, frame);
        return turned;
    }

    private static String root(String root) {
        return switch (root) {
            case "side-lying-left" -> "side-lying-right";
            case "side-lying-right" -> "side-lying-left";
            default -> root;
        };
    }

    private static JsonNode joints(JsonNode joints) {
        ObjectNode turned = JSON.objectNode();
        joints.properties().forEach(joint -> {
            ObjectNode movements = joint.getValue().deepCopy();
            String key = MirroredNames.of(joint.getKey());
            String plain = key.replaceFirst("\\.[RL]$", "");
            movements.fieldNames().forEachRemaining(movement -> Motion.of(plain, movement)
                    .filter(Motion::turnsAroundInMirror)
                    .ifPresent(m -> movements.set(movement, minus(movements.get(movement)))));
            turned.set(key, movements);
        });
        return turned;
    }

    private static JsonNode hold(JsonNode hands) {
        ObjectNode turned = JSON.objectNode();
        hands.properties().forEach(hand -> turned.set(MirroredNames.of(hand.getKey()), hand.getValue()));
        return turned;
    }

    /** The kneeling posture presets a bent right hip and a stretched left foot; on the other side both are written out. */
    private static void halfKneeling(ObjectNode turned, YamlNode pose, PoseFrame frame) {
        Optional<Pose> read = PoseSheetReader.keyframe(pose, frame).flatMap(n -> PoseReader.read(n, new Problems()));
        if (read.filter(p -> p.root() == RootPosture.HALF_KNEELING).isEmpty()) {
            return;
        }
        ObjectNode joints = turned.withObject("/joints");
        for (Motion motion : new Motion[] {Motion.HIP_FLEX, Motion.ANKLE_DORSI}) {
            for (Side side : Side.values()) {
                String key = motion.joint() + (side == Side.RIGHT ? ".L" : ".R");
                ObjectNode movements =
                        joints.path(key).isObject() ? (ObjectNode) joints.get(key) : joints.putObject(key);
                double degrees = read.get().angles().get(motion, side);
                movements.set(motion.movement(), number(degrees));
            }
        }
    }

    private static JsonNode prop(JsonNode prop) {
        if (!prop.isObject()) {
            return prop;
        }
        ObjectNode turned = JSON.objectNode();
        prop.properties().forEach(kind -> {
            ObjectNode sizes = kind.getValue().deepCopy();
            boolean block =
                    PropKind.of(kind.getKey()).filter(k -> !k.isFurniture()).isPresent();
            if (!block) {
                replace(sizes, "z", PoseMirror::minus);
            }
            for (String place : new String[] {"at", "a", "b", "between"}) {
                replace(sizes, place, PoseMirror::pointOrName);
            }
            replace(sizes, "offset", PoseMirror::vector);
            replace(sizes, "axis", PoseMirror::vector);
            replace(sizes, "faces", faces -> text(faces, PoseMirror::facing));
            if (kind.getKey().equals("bag") && !sizes.has("at")) {
                sizes.put("at", "tip.L")
                        .set("offset", JSON.arrayNode().add(0).add(-.07).add(0));
            }
            turned.set(kind.getKey(), sizes);
        });
        return turned;
    }

    private static String facing(String word) {
        return switch (word) {
            case "z", "+z" -> "-z";
            case "-z" -> "+z";
            default -> word;
        };
    }

    private static JsonNode contact(JsonNode contact) {
        ObjectNode turned = contact.deepCopy();
        for (String name : new String[] {"touch", "flat", "place", "plane", "on", "to"}) {
            replace(turned, name, PoseMirror::name);
        }
        replace(turned, "z", PoseMirror::minus);
        replace(turned, "xyz", PoseMirror::vector);
        replace(turned, "offset", PoseMirror::vector);
        return turned;
    }

    private static JsonNode mark(JsonNode mark) {
        ObjectNode turned = mark.deepCopy();
        turned.properties().forEach(part -> {
            if (part.getValue() instanceof ObjectNode kind) {
                for (String name : new String[] {"at", "about", "to"}) {
                    replace(kind, name, PoseMirror::name);
                }
                replace(kind, "dir", PoseMirror::vector);
                replace(kind, "zero", PoseMirror::vector);
            }
        });
        return turned;
    }

    private static JsonNode ghost(JsonNode ghost) {
        ObjectNode turned = JSON.objectNode();
        ghost.properties().forEach(angle -> {
            boolean minus = JointReader.angle(angle.getKey())
                    .filter(a -> a.motion().turnsAroundInMirror())
                    .isPresent();
            turned.set(unknown(angle.getKey()), minus ? minus(angle.getValue()) : angle.getValue());
        });
        return turned;
    }

    private static String unknown(String word) {
        return JointReader.angle(word)
                .map(a -> new Unknown.Angle(a.motion(), a.side().map(Side::opposite)).word())
                .orElse(word);
    }

    private static JsonNode pointOrName(JsonNode place) {
        boolean names = place.isArray() && !place.isEmpty() && place.get(0).isTextual();
        return names ? each(place, PoseMirror::name) : place.isArray() ? vector(place) : name(place);
    }

    private static JsonNode name(JsonNode name) {
        return text(name, MirroredNames::of);
    }

    private static JsonNode vector(JsonNode vector) {
        if (!vector.isArray() || vector.size() != 3) {
            return vector;
        }
        return JSON.arrayNode().add(vector.get(0)).add(vector.get(1)).add(minus(vector.get(2)));
    }

    private static JsonNode minus(JsonNode number) {
        return number.isNumber() && number.doubleValue() != 0 ? number(-number.doubleValue()) : number;
    }

    private static JsonNode number(double value) {
        return value == Math.rint(value) ? JSON.numberNode((int) value) : JSON.numberNode(value);
    }

    private static JsonNode text(JsonNode node, UnaryOperator<String> change) {
        return node.isTextual() ? TextNode.valueOf(change.apply(node.textValue())) : node;
    }

    private static JsonNode each(JsonNode list, UnaryOperator<JsonNode> change) {
        if (!list.isArray()) {
            return list;
        }
        ArrayNode turned = JSON.arrayNode();
        list.forEach(item -> turned.add(change.apply(item)));
        return turned;
    }

    private static void replace(ObjectNode map, String key, UnaryOperator<JsonNode> change) {
        if (map.has(key)) {
            map.set(key, change.apply(map.get(key)));
        }
    }
}
