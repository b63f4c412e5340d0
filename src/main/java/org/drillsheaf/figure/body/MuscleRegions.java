package org.drillsheaf.figure.body;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Where on the skin a muscle is felt at work: patches on parts of the body. The places follow surface anatomy; their
 * sizes were drawn by eye and are our own.
 */
public final class MuscleRegions {

    /**
     * A patch on one part.
     *
     * @param from share of the part's axis at which the patch begins; {@code to} likewise
     * @param centre middle of the patch around the part in degrees: 0 front, 90 outside, 180 back
     * @param half half its width in degrees
     */
    public record Patch(String part, double from, double to, double centre, double half) {

        /** 1 in the middle, 0 on the outline, negative outside; {@code share} and {@code degrees} from the solid. */
        public double strength(double share, double degrees) {
            double t = (share - (from + to) / 2) / ((to - from) / 2);
            double turned = (degrees - centre + 540) % 360;
            double a = ((turned < 0 ? turned + 360 : turned) - 180) / half;
            return 1 - (t * t * t * t + a * a * a * a);
        }
    }

    /** A region of the right side or of the middle; {@code middle} regions have no side. */
    private record Region(boolean middle, List<Patch> right) {}

    private static final Map<String, Region> REGIONS = new LinkedHashMap<>();

    static {
        sided("hamstrings", new Patch("thigh.R", .18, 1, 180, 62));
        sided("quads", new Patch("thigh.R", .12, .95, 10, 75));
        sided("inner-quad", new Patch("thigh.R", .55, 1, -55, 45));
        sided("hip-flexors", new Patch("thigh.R", -.12, .22, 20, 58), new Patch("trunk", .10, .30, 42, 34));
        sided("adductors", new Patch("thigh.R", .02, .72, -95, 48));
        sided("glute-max", new Patch("glute.R", -.1, 1.1, 180, 200));
        sided(
                "glute-med",
                new Patch("trunk", .10, .36, 105, 42),
                new Patch("thigh.R", -.4, .22, 95, 58),
                new Patch("glute.R", .2, 1.4, 110, 66));
        sided("outer-hip", new Patch("thigh.R", -.4, .3, 95, 58), new Patch("glute.R", .2, 1.4, 105, 60));
        sided("calf", new Patch("shank.R", .06, .62, 180, 75));
        sided("shin", new Patch("shank.R", .08, .7, 25, 50));
        sided("foot-arch", new Patch("foot.R", .28, .66, -105, 70));
        sided("obliques", new Patch("trunk", .30, .70, 62, 40));
        sided("serratus", new Patch("trunk", .58, .84, 85, 32));
        sided("lats", new Patch("trunk", .52, .86, 128, 34));
        sided("side-ribs", new Patch("trunk", .54, .82, 92, 40));
        sided("triceps", new Patch("upper-arm.R", .12, .92, 180, 60));
        sided("biceps", new Patch("upper-arm.R", .2, .92, 0, 60));
        sided("shoulder", new Patch("upper-arm.R", -.25, .34, 60, 90));
        sided("back-of-shoulder", new Patch("upper-arm.R", -.2, .34, 160, 70));
        sided("forearm", new Patch("forearm.R", .05, .7, 0, 90));
        middle("abs", new Patch("trunk", .20, .72, 0, 52));
        middle("low-belly", new Patch("trunk", .14, .42, 0, 58));
        middle("upper-back", new Patch("trunk", .62, .97, 180, 66));
        middle("back-ribs", new Patch("trunk", .46, .84, 180, 76));
        middle("low-back", new Patch("trunk", .22, .54, 180, 58));
        middle("neck", new Patch("neck", .1, .95, 180, 80));
        middle("front-ribs", new Patch("trunk", .44, .72, 0, 62));
        middle("chest", new Patch("trunk", .68, .95, 0, 60));
    }

    private MuscleRegions() {}

    private static void sided(String id, Patch... right) {
        REGIONS.put(id, new Region(false, List.of(right)));
    }

    private static void middle(String id, Patch... patches) {
        REGIONS.put(id, new Region(true, List.of(patches)));
    }

    /** Ids without side. */
    public static Set<String> ids() {
        return java.util.Collections.unmodifiableSet(REGIONS.keySet());
    }

    /** Whether {@code hamstrings} or {@code hamstrings.R} is known. */
    public static boolean isKnown(String id) {
        Optional<Region> region = Optional.ofNullable(REGIONS.get(stem(id)));
        return region.isPresent() && !(region.get().middle() && !stem(id).equals(id));
    }

    private static String stem(String id) {
        return id.endsWith(".R") || id.endsWith(".L") ? id.substring(0, id.length() - 2) : id;
    }

    /** The patches of a region, of both sides unless the id ends in {@code .R} or {@code .L}; none when unknown. */
    public static List<Patch> patches(String id) {
        Region region = REGIONS.get(stem(id));
        if (region == null) {
            return List.of();
        }
        List<Patch> patches = new ArrayList<>();
        if (region.middle() || !id.endsWith(".L")) {
            patches.addAll(region.right());
        }
        if (!region.middle() && !id.endsWith(".R")) {
            region.right().forEach(p -> patches.add(left(p)));
        }
        return patches;
    }

    /** Angles of limbs are counted outwards on both sides; those of the trunk turn around. */
    private static Patch left(Patch right) {
        return right.part().endsWith(".R")
                ? new Patch(
                        right.part().substring(0, right.part().length() - 1) + "L",
                        right.from(),
                        right.to(),
                        right.centre(),
                        right.half())
                : new Patch(right.part(), right.from(), right.to(), -right.centre(), right.half());
    }
}
