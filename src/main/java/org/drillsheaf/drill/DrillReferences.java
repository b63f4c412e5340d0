package org.drillsheaf.drill;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Ids;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;

/** Looks whether everything that a drill names exists. */
record DrillReferences(DrillWords words, Set<String> drills, Problems problems) {

    void check(Drill drill) {
        YamlNode file = drill.written();
        for (String goal : drill.goals().keySet()) {
            expect(file.nearest("/goals/" + goal), goal, words.goals().keySet(), "goal");
        }
        each(file, "positions", words.positions().keySet(), "position");
        each(file, "equipment", words.equipment().keySet(), "piece of equipment");
        each(file, "prerequisites", drills, "drill");
        expect(file.nearest("/easier"), drill.easier(), drills, "drill");
        expect(file.nearest("/harder"), drill.harder(), drills, "drill");
        conditions(drill);
        each(file.nearest("/tags"), "kinds", words.kinds(), "kind of movement");
        for (YamlNode variant : file.get("variants").map(YamlNode::items).orElse(List.of())) {
            each(variant, "equipment", words.equipment().keySet(), "piece of equipment");
        }
        marks(drill);
    }

    private void conditions(Drill drill) {
        for (YamlNode node :
                drill.written().get("conditions").map(YamlNode::items).orElse(List.of())) {
            expect(node.nearest("/id"), node.text("id"), words.conditions(), "condition");
            Optional<String> variant = node.text("variant");
            if (variant.isPresent() && drill.variant(variant.get()).isEmpty()) {
                node.nearest("/variant")
                        .error(
                                problems,
                                "This drill has no variant “" + variant.get() + "”",
                                "Write it under “variants”, or name one that stands there");
            }
        }
    }

    /** A mark named by a step must be drawn in the picture of that step, and one mark has one name in a picture. */
    private void marks(Drill drill) {
        for (String key : List.of("set-up", "action")) {
            Keyframe usual = key.equals("set-up") ? Keyframe.START : Keyframe.MOVE;
            for (YamlNode step : drill.written().nearest("/" + key).items()) {
                Optional<String> mark = step.text("mark");
                Keyframe keyframe = step.text("picture").flatMap(Keyframe::of).orElse(usual);
                if (drill.pose().get(keyframe.id()).isEmpty()) {
                    step.error(
                            problems,
                            "This step belongs to the picture “" + keyframe.id() + "”, which is not there",
                            "Write that keyframe under “pose”, or name another picture");
                } else if (mark.isPresent() && !marksOf(drill.pose(), keyframe).contains(mark.get())) {
                    step.nearest("/mark")
                            .error(
                                    problems,
                                    "The picture “" + keyframe.id() + "” has no mark “" + mark.get() + "”",
                                    "Add it to the marks of that keyframe, or correct the name");
                }
            }
        }
    }

    /** Ids of the marks drawn in a keyframe; a keyframe without marks of its own shows those it was made from. */
    static Set<String> marksOf(YamlNode pose, Keyframe keyframe) {
        Set<String> marks = new HashSet<>();
        Optional<YamlNode> node = pose.get(keyframe.id());
        for (int steps = 0; node.isPresent() && steps < 4; steps++) {
            if (node.get().has("marks")) {
                node.get().nearest("/marks").items().forEach(m -> m.text("id").ifPresent(marks::add));
                return marks;
            }
            node = node.get().text("from").flatMap(pose::get);
        }
        return marks;
    }

    private void each(YamlNode node, String key, Set<String> known, String what) {
        for (YamlNode item : node.get(key).map(YamlNode::items).orElse(List.of())) {
            expect(item, item.text(), known, what);
        }
    }

    private void expect(YamlNode place, Optional<String> id, Set<String> known, String what) {
        id.ifPresent(i -> expect(place, i, known, what));
    }

    private void expect(YamlNode place, String id, Set<String> known, String what) {
        Ids.check(place, id, known, what, problems);
    }
}
