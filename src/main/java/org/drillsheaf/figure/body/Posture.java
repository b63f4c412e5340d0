package org.drillsheaf.figure.body;

import java.util.EnumMap;
import java.util.Map;
import org.drillsheaf.Side;

/**
 * Everything that places a skeleton.
 *
 * @param root middle between the hip joints, statures
 * @param turn orientation of the pelvis before its own tilt, list and turn
 * @param flatSoles feet whose sole lies flat on a surface, with the unit normal of that surface towards the body
 */
public record Posture(Vec3 root, Rotation turn, JointAngles angles, Map<Side, Vec3> flatSoles) {

    public Posture {
        flatSoles = flatSoles.isEmpty() ? Map.of() : new EnumMap<>(flatSoles);
    }

    public Posture withRoot(Vec3 moved) {
        return new Posture(moved, turn, angles, flatSoles);
    }

    public Posture withAngles(JointAngles changed) {
        return new Posture(root, turn, changed, flatSoles);
    }

    /** Left and right exchanged. */
    public Posture mirrored() {
        Map<Side, Vec3> soles = new EnumMap<>(Side.class);
        flatSoles.forEach((side, normal) -> soles.put(side.opposite(), normal.mirrored()));
        return new Posture(root.mirrored(), turn.mirrored(), angles.mirrored(), soles);
    }
}
