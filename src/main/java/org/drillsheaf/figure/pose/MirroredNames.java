package org.drillsheaf.figure.pose;

import org.drillsheaf.figure.body.PartNames;

/** Names of points, parts and muscle regions with left and right exchanged. */
final class MirroredNames {
    private MirroredNames() {}

    static String of(String name) {
        int at = name.indexOf('@');
        if (at < 0) {
            return swapped(name);
        }
        String part = PartNames.canonical(name.substring(0, at));
        String[] numbers = name.substring(at + 1).split(",", -1);
        // the angles of limbs count outwards on both sides; those of the middle count to the right
        boolean sided = !swapped(part).equals(part);
        double degrees = Double.parseDouble(numbers[1].strip()) * (sided ? 1 : -1);
        return swapped(part) + "@" + numbers[0] + "," + degrees;
    }

    private static String swapped(String name) {
        if (name.endsWith(".R")) {
            return name.substring(0, name.length() - 1) + "L";
        }
        return name.endsWith(".L") ? name.substring(0, name.length() - 1) + "R" : name;
    }
}
