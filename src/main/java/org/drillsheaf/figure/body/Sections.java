package org.drillsheaf.figure.body;

/**
 * The cross-sections of all limbs, statures. The numbers were fitted by eye to photographs and drawings of adults until
 * the outlines looked right in print; they are our own.
 */
record Sections(
        SectionProfile trunk,
        SectionProfile neck,
        SectionProfile skull,
        SectionProfile face,
        SectionProfile nose,
        SectionProfile trapezius,
        SectionProfile upperArm,
        SectionProfile forearm,
        SectionProfile palm,
        SectionProfile fingers,
        SectionProfile thumb,
        SectionProfile thigh,
        SectionProfile shank,
        SectionProfile foot) {

    private static final Sections AVERAGE = new Sections(
            // share of the axis, front, back, half-width
            SectionProfile.of(
                    .020, .014, .35, 0, .040, .044, .062, .10, .050, .051, .083, .20, .0545, .052, .0905, .31, .0545,
                    .0475, .0865, .42, .054, .0420, .0770, .52, .0545, .0430, .0745, .64, .0580, .0490, .0800, .78,
                    .0610, .0560, .0880, .88, .0580, .0560, .0870, .95, .0480, .0500, .0760, 1, .032, .040, .058),
            SectionProfile.of(.02, .02, 0, 0, .033, .034, .036, .5, .0285, .031, .0305, 1, .030, .031, .030),
            SectionProfile.of(.046, .0485, 0, 0, .0545, .0575, .0435, 1, .053, .057, .0435),
            SectionProfile.of(
                    .035, .0165, .25, 0, .039, .030, .036, .35, .037, .030, .0345, .7, .033, .026, .0275, 1, .024, .020,
                    .019),
            SectionProfile.of(.0045, .006, 0, 0, .0095, .011, .0080, .4, .0075, .010, .0065, 1, .002, .009, .0045),
            SectionProfile.of(.02, .02, 0, 0, .030, .032, .020, .5, .029, .033, .021, 1, .029, .031, .0235),
            SectionProfile.of(
                    .0285, .0205, 0, 0, .0300, .0300, .0285, .2, .0295, .0295, .0285, .45, .0275, .0265, .0255, .75,
                    .0235, .0230, .0225, 1, .0205, .0215, .0220),
            SectionProfile.of(
                    .0205, .014, 0, 0, .0210, .0215, .0215, .2, .0235, .0235, .0225, .5, .0210, .0205, .0190, .8, .0165,
                    .0160, .0140, 1, .0155, .0150, .0125),
            SectionProfile.of(.012, .009, .3, 0, .0150, .0150, .0118, .5, .0195, .0185, .0112, 1, .0200, .0195, .0095),
            SectionProfile.of(
                    .009, .0085, .35, 0, .0198, .0193, .0095, .5, .0180, .0180, .0078, 1, .0125, .0120, .0060),
            SectionProfile.of(.010, .007, 0, 0, .0115, .0115, .0115, .5, .0088, .0088, .0088, 1, .0070, .0070, .0070),
            SectionProfile.of(
                    .042, .029, 0, 0, .0490, .0490, .0455, .22, .0500, .0490, .0465, .5, .0460, .0430, .0425, .8, .0365,
                    .0340, .0350, 1, .0310, .0315, .0315),
            SectionProfile.of(
                    .0285, .018, 0, 0, .0300, .0300, .0310, .10, .0275, .0320, .0310, .28, .0255, .0390, .0330, .5,
                    .0225, .0335, .0285, .78, .0185, .0205, .0195, 1, .0175, .0195, .0180),
            // the foot runs from heel to toe; its front is up and its back is the sole
            SectionProfile.of(
                    .0165, .0125, .55, 0, .0235, .0125, .0185, .22, .0330, .0125, .0195, .45, .0270, .0125, .0205, .72,
                    .0140, .0125, .0265, 1, .0065, .0115, .0205));

    private static final Sections LARGER = AVERAGE.built(1.26, 1.22, 1.14);
    private static final Sections OLDER = AVERAGE.built(1.06, 1.03, .94);

    static Sections of(BodyBuild build) {
        return switch (build) {
            case AVERAGE -> AVERAGE;
            case LARGER -> LARGER;
            case OLDER -> OLDER;
        };
    }

    /** Hands, feet, face and nose keep their size. */
    private Sections built(double trunkDepth, double trunkWidth, double limbs) {
        double neckFactor = (1 + limbs) / 2;
        return new Sections(
                trunk.scaled(trunkDepth, trunkWidth),
                neck.scaled(neckFactor, neckFactor),
                skull,
                face,
                nose,
                trapezius.scaled(neckFactor, neckFactor),
                upperArm.scaled(limbs, limbs),
                forearm.scaled(neckFactor, neckFactor),
                palm,
                fingers,
                thumb,
                thigh.scaled(limbs, limbs),
                shank.scaled(neckFactor, neckFactor),
                foot);
    }
}
