package org.drillsheaf.figure.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The names of the body's parts and of the regions that touch things. */
public final class PartNames {
    private static final List<String> MIDDLE = List.of("trunk", "neck", "skull", "face", "nose");
    private static final List<String> PAIRED = List.of(
            "ear",
            "trapezius",
            "upper-arm",
            "forearm",
            "palm",
            "fingers",
            "thumb",
            "glute",
            "thigh",
            "kneecap",
            "shank",
            "foot");
    /** Short spellings that poses may use besides. */
    private static final Map<String, String> SHORT = Map.of(
            "uarm", "upper-arm", "farm", "forearm", "fing", "fingers", "patella", "kneecap", "trap", "trapezius");

    private PartNames() {}

    /** Every part of a body, in no particular order. */
    public static List<String> all() {
        List<String> names = new ArrayList<>(MIDDLE);
        for (String part : PAIRED) {
            names.add(part + ".R");
            names.add(part + ".L");
        }
        return List.copyOf(names);
    }

    /** The full name for what a pose may write: {@code uarmR} and {@code upper-arm.R} are the same part. */
    public static String canonical(String written) {
        if (written.equals("cranium")) {
            return "skull";
        }
        String stem = written;
        String end = "";
        if (written.endsWith("R") || written.endsWith("L")) {
            end = "." + written.substring(written.length() - 1);
            stem = written.substring(0, written.length() - 1);
            if (stem.endsWith(".")) {
                stem = stem.substring(0, stem.length() - 1);
            }
        }
        return SHORT.getOrDefault(stem, stem) + end;
    }
}
