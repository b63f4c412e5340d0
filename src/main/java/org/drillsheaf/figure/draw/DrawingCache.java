package org.drillsheaf.figure.draw;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.BodyBuild;
import org.drillsheaf.figure.body.Posture;
import org.drillsheaf.figure.pose.Mark;
import org.drillsheaf.figure.pose.PlacedProp;
import org.drillsheaf.figure.pose.SolvedPose;

/** Keeps the drawings asked for last, so that a repeated picture costs nothing. Safe for several threads. */
public final class DrawingCache {
    private final FigureDrawer drawer;
    private final Map<Key, Drawing> drawings;

    /** @param most number of drawings kept; a drawing takes about 30 kB */
    public DrawingCache(FigureDrawer drawer, int most) {
        this.drawer = drawer;
        drawings = new LinkedHashMap<>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<Key, Drawing> eldest) {
                return size() > most;
            }
        };
    }

    /** Everything a drawing depends on. */
    private record Key(
            Posture posture,
            BodyBuild build,
            Optional<Posture> ghost,
            List<PlacedProp> props,
            List<String> feel,
            List<Mark> marks,
            View view,
            DrawingStyle style,
            Annotations annotations) {}

    public Drawing draw(SolvedPose pose, View view, DrawingStyle style, Annotations annotations) {
        Key key = new Key(
                posture(pose.body()),
                pose.body().build(),
                pose.ghostBody().map(DrawingCache::posture),
                pose.props(),
                pose.feel(),
                pose.marks(),
                view,
                style,
                annotations);
        Drawing kept;
        synchronized (drawings) {
            kept = drawings.get(key);
        }
        if (kept != null) {
            return kept;
        }
        Drawing drawn = drawer.draw(pose, view, style, annotations);
        synchronized (drawings) {
            drawings.put(key, drawn);
        }
        return drawn;
    }

    private static Posture posture(Body body) {
        return body.skeleton().posture();
    }
}
