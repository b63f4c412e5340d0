package org.drillsheaf.drill.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.drill.Action;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.library.Library;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.pose.SolvedPose;
import org.drillsheaf.figure.pose.SolvedSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The drills of the library, solved and judged. */
class LibrarySafetyTest {
    private static final LocalDate VISIT = LocalDate.of(2026, 11, 25);
    private static final Problems PROBLEMS = new Problems();
    private static final Library LIBRARY =
            LibraryFiles.read(Path.of("."), PROBLEMS).orElseThrow();
    private static final PoseMeasuring MEASURING = new PoseMeasuring();
    private static final Safety SAFETY = new Safety(
            LIBRARY.safetyRules(),
            LibraryFiles.drillReader(Path.of("."), PROBLEMS).orElseThrow(),
            MEASURING);

    /** Actions that follow from the published and house limits, drill by drill. */
    @ParameterizedTest
    @CsvSource({
        "hip-posterior, sit-far-reach, EXCLUDE",
        "hip-posterior, hip-to-side-wall, EXCLUDE",
        "hip-posterior, split-hand-across, EXCLUDE",
        "hip-posterior, sit-hum, ALLOWED",
        "hip-posterior, wall-lean-breath, ALLOWED",
        "hip-posterior, slow-walk, MODIFY",
        "hip-anterior, split-back-heel, EXCLUDE",
        "hip-anterior, slow-walk, MODIFY",
        "osteoporosis, sit-ribs-turn, EXCLUDE",
        "osteoporosis, wall-lean-breath, MODIFY",
        "glaucoma, wall-lean-breath, MODIFY",
        "acute-leg-pain, counter-hips-back, EXCLUDE",
        "pelvic-pain, split-back-heel, EXCLUDE",
        "pelvic-pain, sit-hum, ALLOWED",
        "falls, slow-walk, MODIFY",
        "falls, split-hand-across, EXCLUDE",
        "no-kneel, sit-hum, ALLOWED",
        "latex, stand-band-ahead, MODIFY",
        "panic, sit-hum, MODIFY",
        "shoulder-unstable, counter-hips-back, EXCLUDE"
    })
    void conditionsActOnDrillsAsTheRulesSay(String condition, String drill, Action expected) {
        Judgement judgement = SAFETY.judge(drill(drill), client(condition, Side.LEFT));

        assertThat(judgement.action()).as(judgement.reasons().toString()).isEqualTo(expected);
    }

    /** Published precautions: no bending past 90 degrees (80 with our margin), no turning in, no crossing. */
    @ParameterizedTest
    @EnumSource(Side.class)
    void nothingOfferedToANewHipBendsPastTheLimitTurnsInOrCrosses(Side side) {
        ClientSafety client = client("hip-posterior", side);
        List<String> offered = new ArrayList<>();
        for (Drill drill : LIBRARY.catalogue().inUse()) {
            Judgement judgement = SAFETY.judge(drill, client);
            if (judgement.isOffered()) {
                offered.add(drill.id());
                SolvedSheet sheet = MEASURING.solved(judgement.drill()).orElseThrow();
                Stream.concat(sheet.all().stream(), sheet.mirrored().all().stream())
                        .forEach(keyframe -> assertHipIsSafe(drill.id(), keyframe));
            }
        }
        assertThat(offered).hasSizeGreaterThanOrEqualTo(8);
    }

    /** Read back from the joint points, without the code that the judge uses. */
    private static void assertHipIsSafe(String drill, SolvedPose pose) {
        Skeleton body = pose.skeleton();
        for (Side side : Side.values()) {
            assertThat(pose.measuredAngle(Motion.HIP_FLEX, side))
                    .as("%s bends the hip", drill)
                    .isLessThanOrEqualTo(80.5);
            assertThat(pose.angle(Motion.HIP_INT, side))
                    .as("%s turns the thigh in", drill)
                    .isLessThanOrEqualTo(0.5);
            double outward = side == Side.RIGHT ? 1 : -1;
            for (String joint : List.of("knee", "ankle")) {
                Vec3 fromMiddle = body.point(joint, side).minus(body.point("pelvis"));
                assertThat(outward * body.frame("pelvis").axisZ().dot(fromMiddle))
                        .as("%s crosses the midline with the %s", drill, joint)
                        .isGreaterThanOrEqualTo(-0.001);
            }
        }
    }

    static Stream<String> conditions() {
        return LIBRARY.safetyRules().conditions().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("conditions")
    void everyChangeThatIsOfferedPassesTheRulesWhenMeasuredAgain(String condition) {
        ClientSafety client = client(condition, Side.RIGHT);
        for (Drill drill : LIBRARY.catalogue().inUse()) {
            Judgement judgement = SAFETY.judge(drill, client);
            if (judgement.action() == Action.MODIFY) {
                assertThat(judgement.texts())
                        .as("%s for %s tells its change", drill.id(), condition)
                        .isNotEmpty()
                        .hasSizeLessThanOrEqualTo(Safety.MOST_TEXTS);
                Facts facts = MEASURING.facts(judgement.drill());
                for (ActiveCondition active : client.active()) {
                    active.condition().rules().stream()
                            .filter(r -> r.action() == Action.EXCLUDE
                                    && r.expression().labels().findAny().isEmpty())
                            .forEach(r -> assertThat(r.expression().evaluate(facts, active.settings()))
                                    .as("%s: %s", drill.id(), r.written())
                                    .isEqualTo(Truth.NO));
                }
            }
        }
    }

    @Test
    void goalsAreBarredByTheConditionsThatSaySo() {
        assertThat(client("hip-posterior", Side.LEFT).barredGoals())
                .containsOnlyKeys("internal-rotation-reference", "shift-to-one-side");
        assertThat(client("pelvic-pain", Side.LEFT).barredGoals()).containsOnlyKeys("shift-to-one-side");
    }

    @Test
    void theWallLeanIsMeasuredAsItStands() {
        Facts facts = MEASURING.facts(drill("wall-lean-breath"));

        assertThat(facts.number(Measure.SPINE_FORWARD).orElseThrow()).isBetween(46.0, 50.0);
        assertThat(facts.number(Measure.STAND).orElseThrow()).isEqualTo(1);
        assertThat(facts.number(Measure.FREE_STAND).orElseThrow()).isZero();
        assertThat(facts.number(Measure.PAUSE).orElseThrow()).isEqualTo(2);
        assertThat(facts.truth(Measure.ON_FLOOR)).isEqualTo(Truth.NO);
        assertThat(facts.truth(Measure.STILL)).isEqualTo(Truth.YES);
    }

    private static Drill drill(String id) {
        return LIBRARY.catalogue().drill(id).orElseThrow();
    }

    /** A client with one condition, past all waiting times and with the coach's own eyes on floor and balance. */
    private static ClientSafety client(String condition, Side side) {
        Map<String, String> settings = Map.of(
                "approach-known", "yes",
                "floor-allowed", "yes",
                "back-rules-too", "no",
                "side-approach", "no",
                "legs-give-way", "no");
        ClientCondition told = new ClientCondition(
                condition, Set.of(side), Optional.of(VISIT.minusWeeks(20)), settings, Optional.empty(), Set.of(), 0);
        return ClientSafety.of(
                LIBRARY.safetyRules(), List.of(told), VISIT, 50, Set.of("down-to-floor", "balance", "another-adult"));
    }
}
