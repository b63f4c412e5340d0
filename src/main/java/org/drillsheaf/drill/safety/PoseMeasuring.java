package org.drillsheaf.drill.safety;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.drill.Dose;
import org.drillsheaf.drill.DoseTime;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Tags;
import org.drillsheaf.figure.pose.PoseSheetReader;
import org.drillsheaf.figure.pose.RootPosture;
import org.drillsheaf.figure.pose.SolvedPose;
import org.drillsheaf.figure.pose.SolvedSheet;

/**
 * Measures a drill from its solved pose, its largest dose and its author's tags. A tag can only make a measure stricter. A
 * pose that cannot be solved has no measures. Safe for several threads; solved poses are remembered.
 */
public final class PoseMeasuring implements Measuring {
    /** Standing on one spot for so long is standing still. House limit, seconds. */
    private static final double STILL_SECONDS = 120;
    /** Weight of a full bag when nobody wrote it. House value, kilograms. */
    private static final double BAG_KILOGRAMS = 5;

    private final Map<String, Optional<SolvedSheet>> solved = new ConcurrentHashMap<>();

    /** The solved pose; empty when it has errors. */
    public Optional<SolvedSheet> solved(Drill drill) {
        return solved.computeIfAbsent(
                drill.pose().json().toString(), key -> PoseSheetReader.read(drill.pose(), new Problems())
                        .map(sheet -> sheet.solve())
                        .filter(sheet -> sheet.problems().stream()
                                .noneMatch(p -> p.severity() == org.drillsheaf.Problem.Severity.ERROR)));
    }

    @Override
    public Facts facts(Drill drill) {
        Collected found = new Collected();
        solved(drill).ifPresent(sheet -> pose(drill, List.copyOf(sheet.all()), found));
        dose(drill, found);
        tags(drill, found);
        return new Facts(found.numbers, found.truths, Set.of());
    }

    private static void pose(Drill drill, Collection<SolvedPose> keyframes, Collected found) {
        angles(keyframes, found);
        Frames frames = new Frames(
                keyframes.stream().map(KeyframeSupport::new).toList(),
                drill.positions().contains("walking"));
        found.put(Measure.KNEE_LOAD, frames.kneeLoad());
        found.put(Measure.KNEE_CONTACT, frames.any(KeyframeSupport::kneels));
        found.put(Measure.HEAD_LOW, frames.any(KeyframeSupport::isHeadLow));
        found.put(Measure.FEET_HIGH, frames.any(KeyframeSupport::areFeetHigh));
        found.put(Measure.HIPS_HIGH, frames.any(KeyframeSupport::areHipsHigh));
        found.put(Measure.ON_FLOOR, frames.any(KeyframeSupport::isOnFloor));
        found.put(Measure.FLAT_BACK, frames.any(KeyframeSupport::isFlatOnBack));
        found.put(Measure.FACE_DOWN, frames.any(KeyframeSupport::isFaceDown));
        found.put(Measure.ON_SIDE, frames.any(KeyframeSupport::isOnSide));
        boolean hands = frames.any(KeyframeSupport::handsCarryTheTrunk);
        found.put(Measure.WRIST_LOAD, hands ? 2 : frames.any(KeyframeSupport::handsHold) ? 1 : 0);
        found.put(Measure.SHOULDER_LOAD, frames.any(KeyframeSupport::armCarriesTheSide) ? 2 : 0);
        found.put(Measure.STAND, frames.stand());
        found.put(Measure.FREE_STAND, frames.freeStand());
        found.put(Measure.NOTHING_STOPS, frames.nothingStops());
        found.put(
                Measure.HIP_ACROSS,
                frames.any(KeyframeSupport::slidesSideways)
                        || keyframes.stream().anyMatch(k -> new KeyframeAngles(k).crossesMidline()));
        found.put(
                Measure.LEG_BEHIND,
                keyframes.stream()
                        .anyMatch(k ->
                                new KeyframeSupport(k).standsOnFeet() && new KeyframeAngles(k).hipExtension() > .5));
        found.put(Measure.STILL, frames.standsStill(drill));
    }

    private static void angles(Collection<SolvedPose> keyframes, Collected found) {
        Map<Measure, ToDoubleFunction<KeyframeAngles>> angles = new EnumMap<>(Measure.class);
        angles.put(Measure.HIP_FLEXION, KeyframeAngles::hipFlexion);
        angles.put(Measure.HIP_EXTENSION, KeyframeAngles::hipExtension);
        angles.put(Measure.HIP_IN, KeyframeAngles::hipIn);
        angles.put(Measure.HIP_OUT, KeyframeAngles::hipOut);
        angles.put(Measure.HIP_OUT_STRAIGHT, KeyframeAngles::hipOutWhileStraight);
        angles.put(Measure.LEG_TENSION, KeyframeAngles::legTension);
        angles.put(Measure.SPINE_FORWARD, KeyframeAngles::spineForward);
        angles.put(Measure.SPINE_BACK, KeyframeAngles::spineBack);
        angles.put(Measure.SPINE_TURN, KeyframeAngles::spineTurn);
        angles.put(Measure.NECK_FORWARD, KeyframeAngles::neckForward);
        angles.put(Measure.NECK_TURN, KeyframeAngles::neckTurn);
        angles.put(Measure.ARM_UP, KeyframeAngles::armUp);
        angles.forEach((measure, angle) -> found.put(
                measure,
                keyframes.stream()
                        .map(KeyframeAngles::new)
                        .mapToDouble(angle)
                        .max()
                        .orElse(0)));
        found.put(Measure.ARM_OUT_TURNED, keyframes.stream().anyMatch(k -> new KeyframeAngles(k).armOutAndTurnedOut()));
    }

    private static void dose(Drill drill, Collected found) {
        boolean breathTask = drill.breathing().focus() >= 1 || drill.breathing().fullExhale();
        found.put(Measure.EFFORT, drill.dose().effort().most());
        found.put(Measure.HOLD, drill.dose().holdSeconds().most());
        found.put(Measure.PAUSE, drill.breathing().pause().most());
        found.put(Measure.BREATH_OUT, breathTask ? drill.breathing().out().most() : 0);
        found.put(Measure.FOCUS, drill.breathing().focus());
        found.put(Measure.RESIST, drill.breathing().resist());
        found.put(Measure.MINUTES, drill.minutes(drill.dose().largest()));
        found.put(Measure.LEVEL, drill.level());
        found.put(Measure.HELD_WEIGHT, drill.equipment().contains("bag") ? BAG_KILOGRAMS : 0);
    }

    private static void tags(Drill drill, Collected found) {
        Tags tags = drill.tags();
        tags.number("belly").ifPresent(v -> found.put(Measure.BELLY, v));
        for (Measure measure : List.of(Measure.STAND, Measure.KNEE_LOAD, Measure.WRIST_LOAD, Measure.SHOULDER_LOAD)) {
            tags.number(measure.id()).ifPresent(v -> found.raise(measure, v));
        }
        // Only the weight itself is known better by the author than by the picture.
        tags.number("held-weight-kg").ifPresent(v -> found.put(Measure.HELD_WEIGHT, v));
        for (Measure measure : List.of(Measure.END_RANGE, Measure.BREATH_HOLD, Measure.HEAD_DOWN)) {
            tags.truth(measure.id()).ifPresent(v -> found.put(measure, v));
        }
        found.put(Measure.QUICK, tags.truth("quick").orElse(false));
        tags.truth("still").filter(v -> v).ifPresent(v -> found.put(Measure.STILL, true));
        tags.truth("neck-turn").filter(v -> v).ifPresent(v -> found.raise(Measure.NECK_TURN, 90));
        tags.truth("can-hold").ifPresent(v -> found.put(Measure.NO_FREE_HAND, !v));
        tags.stop().ifPresent(s -> found.put(Measure.NOTHING_STOPS, s.equals("nothing")));
    }

    /** The keyframes of a drill together: what one alone does not show. */
    private record Frames(List<KeyframeSupport> all, boolean walking) {

        boolean any(Predicate<KeyframeSupport> test) {
            return all.stream().anyMatch(test);
        }

        /** Rising from a seat loads the bent knees of the seated keyframes too. */
        private boolean risesFromSeat() {
            return any(k -> k.root() == RootPosture.SEATED) && any(KeyframeSupport::standsOnFeet);
        }

        double kneeLoad() {
            double most = 0;
            for (KeyframeSupport keyframe : all) {
                for (Side side : Side.values()) {
                    if (risesFromSeat() || keyframe.isLoaded(side)) {
                        most = Math.max(most, new KeyframeAngles(keyframe.pose()).kneeFlexion(side));
                    }
                }
            }
            return most;
        }

        int stand() {
            return all.stream().mapToInt(this::stand).max().orElse(0);
        }

        /** The same, but 0 while a hand, forearm or the back rests on something firm all the time. */
        int freeStand() {
            boolean held = all.stream()
                    .filter(k -> k.standsOnFeet() || k.root() == RootPosture.HALF_KNEELING || risesFromSeat())
                    .allMatch(KeyframeSupport::isHeld);
            return held ? 0 : stand();
        }

        private int stand(KeyframeSupport keyframe) {
            if (keyframe.root() == RootPosture.HALF_KNEELING) {
                return keyframe.isHeld() ? 1 : 2;
            }
            if (!keyframe.standsOnFeet()) {
                return 0;
            }
            boolean bothFeet = keyframe.isFootDown(Side.LEFT) && keyframe.isFootDown(Side.RIGHT);
            if (walking || !bothFeet) {
                return 3;
            }
            return keyframe.isHeld() ? 1 : 2;
        }

        boolean nothingStops() {
            return any(k -> k.root() == RootPosture.STANDING) && !risesFromSeat();
        }

        boolean standsStill(Drill drill) {
            boolean onOneSpot = any(KeyframeSupport::standsOnFeet)
                    && !walking
                    && drill.dose().count() == Dose.Count.BREATHS;
            Dose.Chosen largest = drill.dose().largest();
            double work = largest.sets()
                    * largest.sides()
                    * DoseTime.workSeconds(drill.dose(), drill.breathing(), largest.each());
            return onOneSpot && work >= STILL_SECONDS;
        }
    }

    /** What was found so far. */
    private static final class Collected {
        private final Map<Measure, Double> numbers = new EnumMap<>(Measure.class);
        private final Map<Measure, Truth> truths = new EnumMap<>(Measure.class);

        void put(Measure measure, double value) {
            numbers.put(measure, value);
        }

        void put(Measure measure, boolean value) {
            truths.put(measure, Truth.of(value));
        }

        /** A tag may raise what the pose shows, and does not stand in for a pose that cannot be solved. */
        void raise(Measure measure, double value) {
            numbers.computeIfPresent(measure, (m, computed) -> Math.max(computed, value));
        }
    }
}
