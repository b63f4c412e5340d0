package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.pose.Mark;
import org.drillsheaf.figure.pose.SolvedPose;

/**
 * Chooses a view when the author gives none: the one that shows most of what matters (marked points, the joints they move,
 * where it is felt, arrows at full length) with a preference for plain views. Our own rule, weighted by eye.
 */
public final class ViewChooser {
    /** Coarse on purpose: only what hides what matters. */
    private static final double PIXELS_PER_STATURE = 90;
    /** A joint lies this deep under the skin at most. Statures. */
    private static final double UNDER_SKIN = 0.06;
    /** So many pixels of muscle are plainly seen. */
    private static final double PLAIN_MUSCLE = 60;

    private static final List<String> JOINTS =
            List.of("knee.R", "knee.L", "shoulder.R", "shoulder.L", "tip.R", "tip.L", "toe.R", "toe.L", "head");

    /** A view and what it is worth before anything is looked at. */
    private record Candidate(View view, double bonus) {}

    private static final List<Candidate> CANDIDATES = List.of(
            new Candidate(View.SIDE, 0.30),
            new Candidate(new View(40, 16), 0.12),
            new Candidate(new View(-40, 16), 0.08),
            new Candidate(View.FRONT, 0.05),
            new Candidate(View.FAR_SIDE, 0.02),
            new Candidate(new View(140, 16), 0),
            new Candidate(new View(30, 30), 0),
            new Candidate(View.TOP, -0.30));

    private ViewChooser() {}

    /** The best view; the same for the same pose. */
    public static View choose(SolvedPose pose) {
        Scene scene = FigureScene.of(pose).scene();
        View best = View.SIDE;
        double most = Double.NEGATIVE_INFINITY;
        for (Candidate candidate : CANDIDATES) {
            double worth = candidate.bonus + worth(pose, scene, candidate.view);
            if (worth > most + 1e-9) {
                most = worth;
                best = candidate.view;
            }
        }
        return best;
    }

    private static double worth(SolvedPose pose, Scene scene, View view) {
        Camera camera = Camera.of(view);
        Tracer.Traced traced = Tracer.trace(scene, camera, PIXELS_PER_STATURE);
        Page page = new Page(traced, 1);
        double marks = share(wanted(pose), page);
        double joints = share(points(pose, JOINTS), page);
        return 1.4 * marks + 0.5 * joints + 0.8 * arrows(pose, camera) + 0.8 * muscles(pose, traced.buffers());
    }

    private static double share(List<Vec3> points, Page page) {
        return points.isEmpty()
                ? 1
                : points.stream().filter(p -> page.isWithin(p, UNDER_SKIN)).count() / (double) points.size();
    }

    private static List<Vec3> points(SolvedPose pose, Iterable<String> names) {
        List<Vec3> points = new ArrayList<>();
        names.forEach(name -> pose.findPoint(name).ifPresent(points::add));
        return points;
    }

    private static List<Vec3> wanted(SolvedPose pose) {
        Set<String> names = new LinkedHashSet<>();
        for (Mark mark : pose.marks()) {
            if (mark instanceof Mark.Arrow arrow) {
                names.add(arrow.at());
            } else if (mark instanceof Mark.Swing swing) {
                names.add(swing.at());
                names.add(swing.about());
            } else if (mark instanceof Mark.Pad pad) {
                names.add(pad.at());
            } else if (mark instanceof Mark.AngleArc arc) {
                names.add(arc.at());
            } else {
                names.add("mouth");
            }
        }
        return points(pose, names);
    }

    /** How long arrows and swings look, as a share of their real length. */
    private static double arrows(SolvedPose pose, Camera camera) {
        double sum = 0;
        int count = 0;
        for (Mark mark : pose.marks()) {
            Optional<Vec3> way = way(pose, mark);
            if (way.isPresent()) {
                Vec3 along = way.get().unit();
                double toward = camera.toward(along.x(), along.y(), along.z());
                sum += Math.sqrt(Math.max(0, 1 - toward * toward));
                count++;
            }
        }
        return count == 0 ? 1 : sum / count;
    }

    private static Optional<Vec3> way(SolvedPose pose, Mark mark) {
        if (mark instanceof Mark.Arrow arrow) {
            return Optional.of(arrow.direction());
        }
        return mark instanceof Mark.Swing swing
                ? pose.ghost().flatMap(start -> start.findPoint(swing.at())).map(from -> pose.point(swing.at())
                        .minus(from))
                : Optional.empty();
    }

    private static double muscles(SolvedPose pose, Buffers buffers) {
        if (pose.feel().isEmpty()) {
            return 1;
        }
        int seen = 0;
        for (float value : buffers.muscle) {
            seen += value > 0 ? 1 : 0;
        }
        return Math.min(1, seen / PLAIN_MUSCLE);
    }
}
