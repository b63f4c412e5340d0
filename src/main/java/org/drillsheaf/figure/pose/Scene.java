package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.PropSolid;
import org.drillsheaf.figure.body.Vec3;

/** The room of a pose: what stands still, and the surfaces it offers. The floor at height 0 is always there. */
final class Scene {
    private final List<Prop> props;
    private final Map<String, Plane> planes = new HashMap<>();
    private final Map<String, PlacedProp> still = new HashMap<>();

    Scene(List<Prop> props) {
        this.props = props;
        planes.put("floor", PropShapes.top(0));
        for (Prop prop : props) {
            if (!prop.isAttached()) {
                PlacedProp placed = PropShapes.place(prop, BodyWords.MODEL);
                still.put(prop.id(), placed);
                planes.putAll(placed.planes());
            }
        }
    }

    Map<String, Plane> planes() {
        return planes;
    }

    Optional<Plane> plane(String name) {
        return Optional.ofNullable(planes.get(name));
    }

    /** All props around a body, in the order the author wrote them. */
    List<PlacedProp> place(Body body) {
        List<PlacedProp> placed = new ArrayList<>();
        for (Prop prop : props) {
            PlacedProp known = still.get(prop.id());
            placed.add(known != null ? known : PropShapes.place(prop, body));
        }
        return placed;
    }

    /** How deep (negative) or far (positive) the nearest surface point of a region lies from what it should touch. */
    double gap(Body body, String region, String on) {
        Optional<Plane> plane = plane(on);
        if (plane.isPresent()) {
            return lowest(body, region, plane.get());
        }
        Optional<Prop> prop = props.stream().filter(p -> p.id().equals(on)).findFirst();
        double[] least = {Double.POSITIVE_INFINITY};
        if (prop.isPresent()) {
            List<PropSolid> solids = PropShapes.place(prop.get(), body).solids();
            eachSample(body, region, p -> {
                for (PropSolid solid : solids) {
                    least[0] = Math.min(least[0], solid.distance(p));
                }
            });
            return least[0];
        }
        for (String other : Regions.singles(on)) {
            for (Regions.Piece piece : Regions.pieces(other).orElseThrow()) {
                var solid = body.part(piece.part()).orElseThrow().solid();
                eachSample(body, region, p -> least[0] = Math.min(least[0], solid.distance(p)));
            }
        }
        return least[0];
    }

    private static double lowest(Body body, String region, Plane plane) {
        double lowest = Double.POSITIVE_INFINITY;
        for (Regions.Piece piece : Regions.pieces(region).orElseThrow()) {
            double reach =
                    body.part(piece.part()).orElseThrow().solid().lowest(plane.normal(), piece.from(), piece.to());
            lowest = Math.min(lowest, reach);
        }
        return lowest - plane.point().dot(plane.normal());
    }

    static void eachSample(Body body, String region, java.util.function.Consumer<Vec3> to) {
        for (Regions.Piece piece : Regions.pieces(region).orElseThrow()) {
            body.part(piece.part()).orElseThrow().solid().samples(piece.from(), piece.to(), to);
        }
    }
}
