package org.drillsheaf.figure.pose;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Motion;

/**
 * What the safety rules read from solved poses, the worst case over both sides (and, after {@link #worst}, over
 * keyframes). Angles in clinical degrees; where two readings of a word are possible the stricter one counts.
 *
 * @param hipFlexion the larger of the hip's flexion and the angle by which the thigh leaves the extended line from
 *     shoulder to hip
 * @param hipExtension how far the thigh passes behind that line; 0 if never
 * @param hipInternal thigh turned in; {@code hipExternal} out
 * @param hipExternalStraight turned out while the hip bends less than 20
 * @param hipAcross a leg is adducted by more than 1°, knee or ankle pass the body's midline, or the pelvis is shifted
 *     sideways over a loaded foot or knee
 * @param kneeLoad largest knee flexion of a leg that carries weight in standing or kneeling
 * @param spineForward low back and chest bent forward together, or one of them alone if that is more;
 *     {@code spineBack} backwards
 * @param headLow centre of the head lower than the middle of the chest by more than .02 H
 * @param feetHigh lying, both ankles above the middle of the chest by more than .05 H
 * @param hipsHigh lying, the hip centres above it by more than .02 H
 * @param legTension hip flexion of a leg whose knee bends less than 30
 * @param armUp largest angle of upper arm to trunk line
 * @param armOutTurned an arm lifted sideways by 60 or more and turned out by 20 or more
 * @param wristLoad 0 none, 1 hands on a wall, table or chair, 2 hands carry the trunk
 * @param shoulderLoad 2 = forearm or hand carries the side of the body
 * @param kneeContact a knee carries weight on the floor or a pad
 * @param onFloor lying, kneeling or on hands and knees on the floor; a bed or table does not count
 * @param flatBack lying with the trunk within 20° of level, face up; {@code faceDown} and {@code onSide} likewise
 * @param stand 0 sitting, lying or kneeling; 1 both feet (or foot and knee) and a hand, forearm or back on something
 *     firm; 2 both without that; 3 one foot
 * @param legBehind standing or half kneeling with a thigh behind the trunk line by more than 2°
 * @param nothingEndsTheDepth standing with nothing behind or ahead that would end a descent
 */
public record PoseMeasures(
        double hipFlexion,
        double hipExtension,
        double hipInternal,
        double hipExternal,
        double hipExternalStraight,
        boolean hipAcross,
        double kneeLoad,
        double spineForward,
        double spineBack,
        double spineTurn,
        double neckForward,
        double neckTurn,
        boolean headLow,
        boolean feetHigh,
        boolean hipsHigh,
        double legTension,
        double armUp,
        boolean armOutTurned,
        int wristLoad,
        int shoulderLoad,
        boolean kneeContact,
        boolean onFloor,
        boolean flatBack,
        boolean faceDown,
        boolean onSide,
        int stand,
        boolean legBehind,
        boolean nothingEndsTheDepth) {

    public static PoseMeasures of(SolvedPose pose) {
        return new Measuring(pose).measures();
    }

    /** The worst case over all keyframes. Who rises from a seat carries weight on the knees from the seat on. */
    public static PoseMeasures of(SolvedSheet sheet) {
        PoseMeasures worst = worst(sheet.all().stream().map(PoseMeasures::of).toList());
        boolean rises = sheet.all().stream().anyMatch(p -> p.pose().root() == RootPosture.STANDING)
                && sheet.all().stream().anyMatch(p -> p.pose().root() == RootPosture.SEATED);
        if (!rises) {
            return worst;
        }
        double knee = sheet.all().stream()
                .flatMapToDouble(p -> Arrays.stream(Side.values()).mapToDouble(s -> p.angle(Motion.KNEE_FLEX, s)))
                .max()
                .orElse(0);
        return worst.withKneeLoad(Math.max(worst.kneeLoad(), knee));
    }

    private PoseMeasures withKneeLoad(double degrees) {
        return new PoseMeasures(
                hipFlexion,
                hipExtension,
                hipInternal,
                hipExternal,
                hipExternalStraight,
                hipAcross,
                degrees,
                spineForward,
                spineBack,
                spineTurn,
                neckForward,
                neckTurn,
                headLow,
                feetHigh,
                hipsHigh,
                legTension,
                armUp,
                armOutTurned,
                wristLoad,
                shoulderLoad,
                kneeContact,
                onFloor,
                flatBack,
                faceDown,
                onSide,
                stand,
                legBehind,
                nothingEndsTheDepth);
    }

    /** The worst case of several; at least one. */
    public static PoseMeasures worst(Collection<PoseMeasures> all) {
        if (all.isEmpty()) {
            throw new IllegalArgumentException("no pose to measure");
        }
        List<PoseMeasures> m = List.copyOf(all);
        return new PoseMeasures(
                most(m, PoseMeasures::hipFlexion),
                most(m, PoseMeasures::hipExtension),
                most(m, PoseMeasures::hipInternal),
                most(m, PoseMeasures::hipExternal),
                most(m, PoseMeasures::hipExternalStraight),
                any(m, PoseMeasures::hipAcross),
                most(m, PoseMeasures::kneeLoad),
                most(m, PoseMeasures::spineForward),
                most(m, PoseMeasures::spineBack),
                most(m, PoseMeasures::spineTurn),
                most(m, PoseMeasures::neckForward),
                most(m, PoseMeasures::neckTurn),
                any(m, PoseMeasures::headLow),
                any(m, PoseMeasures::feetHigh),
                any(m, PoseMeasures::hipsHigh),
                most(m, PoseMeasures::legTension),
                most(m, PoseMeasures::armUp),
                any(m, PoseMeasures::armOutTurned),
                (int) most(m, PoseMeasures::wristLoad),
                (int) most(m, PoseMeasures::shoulderLoad),
                any(m, PoseMeasures::kneeContact),
                any(m, PoseMeasures::onFloor),
                any(m, PoseMeasures::flatBack),
                any(m, PoseMeasures::faceDown),
                any(m, PoseMeasures::onSide),
                (int) most(m, PoseMeasures::stand),
                any(m, PoseMeasures::legBehind),
                any(m, PoseMeasures::nothingEndsTheDepth));
    }

    private static double most(List<PoseMeasures> all, ToDoubleFunction<PoseMeasures> measure) {
        return all.stream().mapToDouble(measure).max().orElse(0);
    }

    private static boolean any(List<PoseMeasures> all, Predicate<PoseMeasures> measure) {
        return all.stream().anyMatch(measure);
    }
}
