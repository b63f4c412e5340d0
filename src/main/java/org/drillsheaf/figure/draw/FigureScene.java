package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.PropSolid;
import org.drillsheaf.figure.pose.PlacedProp;
import org.drillsheaf.figure.pose.Plane;
import org.drillsheaf.figure.pose.PropKind;
import org.drillsheaf.figure.pose.SolvedPose;

/** A solved pose made ready for tracing. */
record FigureScene(SolvedPose pose, List<SceneProp> props) {

    /** One solid of a prop and how it is toned. */
    record SceneProp(PropSolid solid, PropLook look) {}

    static FigureScene of(SolvedPose pose) {
        List<SceneProp> solids = new ArrayList<>();
        for (PlacedProp prop : pose.props()) {
            prop.solids().forEach(solid -> solids.add(new SceneProp(solid, look(prop.kind()))));
        }
        return new FigureScene(pose, List.copyOf(solids));
    }

    FigureScene without(List<SceneProp> left) {
        return left.isEmpty()
                ? this
                : new FigureScene(
                        pose, props.stream().filter(p -> !left.contains(p)).toList());
    }

    private static PropLook look(PropKind kind) {
        return switch (kind) {
            case FLOOR, WALL -> PropLook.SLAB;
            case TABLE, BED, CHAIR, STOOL, STEP, COUNTER, BLOCK -> PropLook.FURNITURE;
            case BALL -> PropLook.BALL;
            case TOWEL, PILLOW, CUSHION, PAD, BAG -> PropLook.SOFT;
            case BAND -> PropLook.BAND;
            case STICK, RAIL, STRAW -> PropLook.STICK;
        };
    }

    Body body() {
        return pose.body();
    }

    Scene scene() {
        List<PropSolid> solids = props.stream().map(SceneProp::solid).toList();
        return new Scene(body().parts(), body().blends(), solids, new BodySurfaces(body(), pose.feel(), solids));
    }

    /** The start pose alone, without props. */
    Optional<Scene> ghostScene() {
        return pose.ghostBody()
                .map(start -> new Scene(
                        start.parts(), start.blends(), List.of(), new BodySurfaces(start, List.of(), List.of())));
    }

    Optional<Plane> plane(String name) {
        return pose.props().stream()
                .flatMap(prop -> prop.planes().entrySet().stream())
                .filter(plane -> plane.getKey().equals(name))
                .map(Map.Entry::getValue)
                .findFirst();
    }
}
