package org.drillsheaf.figure.body;

import java.util.ArrayList;
import java.util.List;

/** The trunk as one loft along the bent spine, and the neck. */
final class TrunkShape {
    private static final int SLICES = 41;
    /** Rounds of smoothing of the spine's polyline. */
    private static final int SMOOTHING = 6;
    /** Bottom of the pelvis to L5, then the links of the spine; statures. */
    private static final double[] SPANS = {
        .103,
        Skeleton.LUMBAR_LINK,
        Skeleton.LUMBAR_LINK,
        Skeleton.THORACIC_LINK,
        Skeleton.THORACIC_LINK,
        Skeleton.THORACIC_LINK
    };

    private final Body.Flesh flesh;
    private final Skeleton bones;

    TrunkShape(Body.Flesh flesh) {
        this.flesh = flesh;
        this.bones = flesh.skeleton;
    }

    void add() {
        double length = 0;
        for (double span : SPANS) {
            length += span;
        }
        List<Vec3> knots = knots();
        List<Rotation> frames = linkFrames();
        List<Vec3> centres = new ArrayList<>();
        List<Rotation> slices = new ArrayList<>();
        for (int i = 0; i < SLICES; i++) {
            double left = length * i / (SLICES - 1);
            int k = 0;
            while (k < SPANS.length - 1 && left > SPANS[k]) {
                left -= SPANS[k];
                k++;
            }
            double share = left / SPANS[k];
            centres.add(knots.get(k).towards(knots.get(k + 1), share));
            slices.add(slice(frames, k, share));
        }
        flesh.add("trunk", BodyGroup.TRUNK, new CurvedLoft(smoothed(centres), slices, length, flesh.sections.trunk()));
        addNeck();
    }

    private List<Vec3> knots() {
        List<Vec3> knots = new ArrayList<>();
        knots.add(bones.point("pelvis").plus(bones.frame("pelvis").apply(-.006, -.038, 0)));
        Skeleton.LINKS.forEach(link -> knots.add(bones.point(link)));
        knots.add(bones.point("C7"));
        return knots;
    }

    private List<Rotation> linkFrames() {
        List<Rotation> frames = new ArrayList<>();
        frames.add(bones.frame("pelvis"));
        Skeleton.LINKS.forEach(link -> frames.add(bones.frame(link)));
        return frames;
    }

    /** The frame of a link, mixed with its neighbour's towards the joint between them. */
    private static Rotation slice(List<Rotation> frames, int k, double share) {
        Rotation here = frames.get(k);
        Rotation other = here;
        double weight = 0;
        if (share > .5 && k < SPANS.length - 1) {
            other = frames.get(k + 1);
            weight = (share - .5) * SPANS[k] / (.5 * SPANS[k] + .5 * SPANS[k + 1]);
        } else if (share < .5 && k > 0) {
            other = frames.get(k - 1);
            weight = (.5 - share) * SPANS[k] / (.5 * SPANS[k] + .5 * SPANS[k - 1]);
        }
        Vec3 front = here.axisX().towards(other.axisX(), weight).unit();
        Vec3 right = front.cross(here.axisY().towards(other.axisY(), weight)).unit();
        return new Rotation(front, right.cross(front), right);
    }

    private static List<Vec3> smoothed(List<Vec3> centres) {
        List<Vec3> line = centres;
        for (int round = 0; round < SMOOTHING; round++) {
            List<Vec3> next = new ArrayList<>(line);
            for (int i = 1; i < line.size() - 1; i++) {
                Vec3 neighbours = line.get(i - 1).plus(line.get(i + 1));
                next.set(i, line.get(i).times(.5).plus(neighbours.times(.25)));
            }
            line = next;
        }
        return line;
    }

    private void addNeck() {
        Vec3 c7 = bones.point("C7");
        Vec3 base = c7.plus(bones.frame("thorax").apply(-.004, -.018, 0));
        Rotation frame = bones.frame("neck").then(Rotation.aboutZ(-11));
        flesh.add(
                "neck",
                BodyGroup.TRUNK,
                new Loft(base, frame.axisX(), frame.axisY(), frame.axisZ(), .096, flesh.sections.neck()));
        flesh.blend("trunk", "neck", c7, .13, .042);
    }
}
