package org.drillsheaf.figure.body;

/**
 * Two neighbouring parts that melt into each other near a joint.
 *
 * @param first index of a part in its body; {@code second} likewise
 * @param x place of the joint; {@code y} and {@code z} likewise
 * @param reach distance from the joint, statures, at which the blend has faded out
 * @param strength greatest width of the smooth union, statures
 */
public record Blend(int first, int second, double x, double y, double z, double reach, double strength) {

    /** Width of the smooth union at a point: 0 from {@code reach} on. */
    public double strengthAt(double px, double py, double pz) {
        double dx = px - x;
        double dy = py - y;
        double dz = pz - z;
        double near = 1 - Math.sqrt(dx * dx + dy * dy + dz * dz) / reach;
        return near <= 0 ? 0 : strength * Math.min(1, 1.6 * near);
    }
}
