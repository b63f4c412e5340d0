package org.drillsheaf.figure.pose;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drillsheaf.figure.body.PropSolid;

/**
 * A thing as it stands in the scene.
 *
 * @param id name by which contacts mean it
 * @param solids what it is made of, the part that one touches first
 * @param planes the surfaces to rest on or lean against, by the name that contacts use ({@code wall}, {@code seat},
 *     {@code chair-back} …)
 */
public record PlacedProp(PropKind kind, String id, List<PropSolid> solids, Map<String, Plane> planes) {

    public PlacedProp {
        solids = List.copyOf(solids);
        planes = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(planes));
    }

    PlacedProp mirrored() {
        Map<String, Plane> turned = new LinkedHashMap<>();
        planes.forEach((name, plane) -> turned.put(name, plane.mirrored()));
        return new PlacedProp(kind, id, solids.stream().map(PropSolid::mirrored).toList(), turned);
    }
}
