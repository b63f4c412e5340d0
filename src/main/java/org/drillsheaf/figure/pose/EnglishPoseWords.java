package org.drillsheaf.figure.pose;

import java.util.Map;
import java.util.TreeMap;

/** The English words for poses. */
final class EnglishPoseWords {
    static final Map<String, String> TABLE;

    static {
        Map<String, String> t = new TreeMap<>();
        t.put("side.right", "right");
        t.put("side.left", "left");
        t.put("root.standing", "Standing");
        t.put("root.leaning", "Standing");
        t.put("root.supine", "Lying on the back");
        t.put("root.prone", "Lying face down");
        t.put("root.seated", "Sitting");
        t.put("root.half-kneeling", "Half kneeling with the {side} foot ahead");
        t.put("root.kneeling", "Kneeling tall");
        t.put("root.hands-and-knees", "On hands and knees");
        t.put("root.side-lying", "Lying on the {side} side");
        t.put("on.trunk", "the back on {thing}");
        t.put("on.seat", "on {thing}");
        for (String limb : new String[] {"hand", "forearm"}) {
            t.put("on.both." + limb, "both " + limb + "s on {thing}");
            t.put("on.one." + limb, "the {side} " + limb + " on {thing}");
        }
        t.put("on.both.foot", "both feet on {thing}");
        t.put("on.one.foot", "the {side} foot on {thing}");
        t.put("thing.wall", "a wall");
        t.put("thing.table", "a table");
        t.put("thing.bed", "a bed");
        t.put("thing.counter", "a counter");
        t.put("thing.chair", "a chair");
        t.put("thing.stool", "a stool");
        t.put("thing.step", "a step");
        t.put("trunk.forward", "The trunk leans forward.");
        t.put("trunk.far", "The trunk leans far forward.");
        t.put("trunk.round", "The back is rounded.");
        t.put("trunk.arched", "The back is arched a little.");
        t.put("trunk.turned", "The chest turns to the {side}.");
        bends(t, "hip", "hips");
        bends(t, "knee", "knees");
        arm(t, "down", "hang down", "hangs down");
        arm(t, "bent", "are close to the sides with the elbows bent", "is close to the side with the elbow bent");
        arm(t, "low", "reach forward and down", "reaches forward and down");
        arm(t, "ahead", "reach forward", "reaches forward");
        arm(t, "side", "are out to the side", "is out to the side");
        arm(t, "up", "reach up past the head", "reaches up past the head");
        arm(t, "back", "are drawn back", "is drawn back");
        TABLE = java.util.Collections.unmodifiableMap(t);
    }

    private EnglishPoseWords() {}

    private static void bends(Map<String, String> t, String one, String many) {
        String[][] amounts = {
            {"straight", "straight"},
            {"behind", "stretched back"},
            {"little", "bent a little"},
            {"half", "half bent"},
            {"square", "bent to a square corner"},
            {"far", "bent far"}
        };
        for (String[] amount : amounts) {
            t.put("both." + one + "." + amount[0], "Both " + many + " are " + amount[1] + ".");
            t.put("one." + one + "." + amount[0], "The {side} " + one + " is " + amount[1] + ".");
        }
    }

    private static void arm(Map<String, String> t, String key, String many, String one) {
        t.put("both.arm." + key, "Both arms " + many + ".");
        t.put("one.arm." + key, "The {side} arm " + one + ".");
    }
}
