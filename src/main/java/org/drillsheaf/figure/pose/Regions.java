package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.figure.body.PartNames;

/** The regions of the body that touch things, each a set of parts or pieces of parts. */
final class Regions {

    /** Part of a solid between two shares of its axis. */
    record Piece(String part, double from, double to) {}

    private static final Map<String, List<Piece>> NAMED = new HashMap<>();
    /** Regions that stand for a right and a left one, each of which has to touch. */
    private static final Map<String, String> PAIRS = Map.ofEntries(
            Map.entry("feet", "foot"),
            Map.entry("heels", "heel"),
            Map.entry("toes", "toe"),
            Map.entry("hands", "hand"),
            Map.entry("palms", "palm"),
            Map.entry("forearms", "forearm"),
            Map.entry("upper-arms", "upper-arm"),
            Map.entry("elbows", "elbow"),
            Map.entry("knees", "knee"),
            Map.entry("shins", "shin"),
            Map.entry("calves", "calf"),
            Map.entry("thighs", "thigh"),
            Map.entry("shoulders", "shoulder"),
            Map.entry("fingertips", "fingers"));

    static {
        named("low-back", piece("trunk", .24, .56));
        named("upper-back", piece("trunk", .6, .97));
        named("sacrum", piece("trunk", .05, .3), whole("glute.R"), whole("glute.L"));
        named("trunk", whole("trunk"), whole("glute.R"), whole("glute.L"));
        named("back", whole("trunk"), whole("glute.R"), whole("glute.L"));
        named("belly", piece("trunk", .22, .62));
        named("chest", piece("trunk", .6, .95));
        named("ribs", piece("trunk", .5, .85));
        named("pelvis", piece("trunk", 0, .3));
        named("seat", whole("glute.R"), whole("glute.L"));
        named("head", whole("skull"));
        named("forehead", whole("skull"), whole("face"));
        named("face", whole("face"));
        for (String side : List.of(".R", ".L")) {
            named("foot" + side, whole("foot" + side));
            named("heel" + side, piece("foot" + side, 0, .3));
            named("toe" + side, piece("foot" + side, .7, 1));
            named("knee" + side, piece("shank" + side, 0, .5), whole("kneecap" + side));
            named("shin" + side, whole("shank" + side));
            named("calf" + side, piece("shank" + side, 0, .7));
            named("hand" + side, whole("palm" + side), whole("fingers" + side));
            named("elbow" + side, piece("forearm" + side, 0, .2), piece("upper-arm" + side, .85, 1));
            named("shoulder" + side, piece("upper-arm" + side, 0, .3));
            named("hip" + side, whole("glute" + side), piece("thigh" + side, 0, .3));
            named("seat" + side, whole("glute" + side));
        }
        for (String part : PartNames.all()) {
            NAMED.putIfAbsent(part, List.of(whole(part)));
        }
    }

    private Regions() {}

    private static void named(String name, Piece... pieces) {
        NAMED.put(name, List.of(pieces));
    }

    private static Piece piece(String part, double from, double to) {
        return new Piece(part, from, to);
    }

    private static Piece whole(String part) {
        return piece(part, 0, 1);
    }

    /** The single regions behind a written word: {@code feet} are two. Empty when there is no such region. */
    static List<String> singles(String written) {
        String pair = PAIRS.get(written);
        if (pair != null) {
            return List.of(pair + ".R", pair + ".L");
        }
        if (NAMED.containsKey(written)) {
            return List.of(written);
        }
        String canonical = PartNames.canonical(written);
        return NAMED.containsKey(canonical) ? List.of(canonical) : List.of();
    }

    static Optional<List<Piece>> pieces(String single) {
        return Optional.ofNullable(NAMED.get(single));
    }

    /** Every word for a region, for messages. */
    static List<String> words() {
        List<String> words = new ArrayList<>(PAIRS.keySet());
        words.addAll(NAMED.keySet());
        words.sort(null);
        return words;
    }
}
