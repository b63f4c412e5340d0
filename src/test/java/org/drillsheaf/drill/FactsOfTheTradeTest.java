package org.drillsheaf.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.drill.library.Library;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.drill.safety.Measure;
import org.drillsheaf.drill.safety.PoseMeasuring;
import org.drillsheaf.figure.pose.SolvedPose;
import org.drillsheaf.figure.statics.CentreOfMass;
import org.drillsheaf.figure.statics.WallLean;
import org.drillsheaf.program.BuilderSettings;
import org.drillsheaf.program.VocabularyReader;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What coaches expect of the drills in the library. Every number here is common practice, no source. */
class FactsOfTheTradeTest {
    private static final Problems PROBLEMS = new Problems();
    private static final Library LIBRARY =
            LibraryFiles.read(Path.of("."), PROBLEMS).orElseThrow();
    private static final PoseMeasuring MEASURING = new PoseMeasuring();
    /** Share of the weight on the heels that “heavy heels” means. Common practice, no source. */
    private static final double HEAVY = .60;
    /** Sideways hold of a dry floor or a firm hand, fraction of body weight; our own, on the careful side. */
    private static final double FRICTION = .4;
    /** The middle of the heel pad lies this far ahead of the heel point, statures (our own, as in the statics). */
    private static final double PAD = .019;
    /** A heel that is lifted so far above the lower one carries nothing, statures. */
    private static final double LIFTED = .02;

    static Stream<Named<Drill>> fullExhales() {
        return drills(d -> d.breathing().fullExhale());
    }

    static Stream<Named<Drill>> strongHamstringsFromRestoreOn() {
        return drills(d -> d.strength("hamstring-and-pelvis") == 3
                && d.phases().stream().anyMatch(p -> p.compareTo(Phase.RESTORE) >= 0));
    }

    static Stream<Named<Drill>> strongInternalRotation() {
        return drills(d -> d.strength("internal-rotation-reference") == 3);
    }

    /** On the feet or at a wall, with a step, a feeling or a mark of heavy heels. */
    static Stream<Named<Drill>> heavyHeels() {
        return drills(
                d -> d.positions().stream().anyMatch(Set.of("standing", "leaning")::contains) && asksForHeavyHeels(d));
    }

    @Test
    void theLibraryIsThereInFull() {
        assertThat(PROBLEMS.all()).isEmpty();
        assertThat(fullExhales()).hasSizeGreaterThan(10);
        assertThat(strongHamstringsFromRestoreOn()).hasSizeGreaterThan(3);
        assertThat(strongInternalRotation()).hasSizeGreaterThan(2);
        assertThat(heavyHeels()).hasSizeGreaterThan(5);
    }

    /** Common practice, no source: a full breath out lasts 5 to 10 seconds. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("fullExhales")
    void aFullBreathOutLastsFiveToTenSeconds(Drill drill) {
        assertThat(drill.breathing().out().least()).isBetween(5., 10.);
        assertThat(drill.breathing().out().most()).isBetween(5., 10.);
    }

    /** Common practice, no source: moderate hamstring work, effort 4 to 5 of 10, once the back has settled. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("strongHamstringsFromRestoreOn")
    void strongHamstringDrillsReachEffortFourToFive(Drill drill) {
        assertThat(drill.dose().effort().most()).isBetween(4, 5);
    }

    @Test
    void theBuilderIsToldToDoseThemAtFourToFive() {
        BuilderSettings.Moderate moderate = VocabularyReader.read(Path.of("."), new Problems())
                .orElseThrow()
                .builder()
                .moderate();

        assertThat(moderate.goal()).isEqualTo("hamstring-and-pelvis");
        assertThat(moderate.strength()).isEqualTo(3);
        assertThat(moderate.phases()).contains(Phase.RESTORE);
        assertThat(List.of(moderate.least(), moderate.most())).containsExactly(4, 5);
    }

    /** Common practice, no source: a small turn of 10 to 15 degrees, never the end of the range. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("strongInternalRotation")
    void theReferenceOfInternalRotationIsASmallTurn(Drill drill) {
        double most = MEASURING.solved(drill).orElseThrow().all().stream()
                .flatMap(pose -> Stream.of(Side.values()).map(side -> pose.angle("hip", side, "int")))
                .mapToDouble(turn -> turn)
                .max()
                .orElseThrow();

        assertThat(most).as("hip turned in, degrees").isBetween(10 - 1e-6, 15.);
        assertThat(drill.tags().truth("end-range")).contains(false);
    }

    /** Common practice, no source: at least 60 % of the weight on the heels; the balance of forces is our own. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("heavyHeels")
    void heavyHeelsCanBeHeavy(Drill drill, TestReporter reporter) {
        Heels heels = heels(drill);

        reporter.publishEntry(drill.id(), heels.words());
        assertThat(heels.mostShare()).as(heels.words()).isGreaterThanOrEqualTo(HEAVY);
        assertThat(heels.push()).as(heels.words()).isLessThanOrEqualTo(FRICTION);
    }

    @Test
    void theWallCarriesAboutASixthOfTheWeightInTheFirstLean() {
        Heels heels = heels(LIBRARY.catalogue().drill("wall-lean-breath").orElseThrow());

        assertThat(heels.push()).as(heels.words()).isCloseTo(.17, within(.02));
    }

    /**
     * How the heels can be loaded in the movement of a drill.
     *
     * @param mostShare upper end of the share of the weight on the heels, over how hard the person leans
     * @param push of the wall or the hands that goes with 60 %, fraction of body weight; 0 when none is needed
     */
    private record Heels(double mostShare, double push, String by) {
        String words() {
            return String.format(
                    Locale.ROOT,
                    "heels carry up to %.0f %%; for 60 %% %s %.1f %% of the weight",
                    100 * mostShare,
                    by,
                    100 * push);
        }
    }

    private static Heels heels(Drill drill) {
        SolvedPose pose = MEASURING.solved(drill).orElseThrow().all().stream()
                .reduce((first, last) -> shows(first) ? first : last)
                .orElseThrow();
        return WallLean.of(pose)
                .map(lean -> new Heels(
                        Math.min(1, lean.heelShare(0, 0)), Math.max(0, lean.push(HEAVY, 0)), "the wall pushes with"))
                .orElseGet(() -> withoutAWallBehind(drill, pose));
    }

    /** Free on the feet the drawn pose itself decides; hands on something firm may push or pull level. */
    private static Heels withoutAWallBehind(Drill drill, SolvedPose pose) {
        double lower = Math.min(pose.point("heel.L").y(), pose.point("heel.R").y());
        List<Side> standing = Stream.of(Side.values())
                .filter(side -> pose.skeleton().point("heel", side).y() < lower + LIFTED)
                .toList();
        double heel = mean(pose, "heel", standing) + PAD;
        double ball = mean(pose, "ball", standing);
        double centre = CentreOfMass.of(pose.skeleton()).x();
        double share = (ball - centre) / (ball - heel);
        if (share >= HEAVY && share <= 1
                || MEASURING.facts(drill).number(Measure.WRIST_LOAD).orElse(0) < 1) {
            return new Heels(share > 1 ? 0 : share, 0, "nothing has to push with");
        }
        double hands = pose.point("hands").y();
        double push = StrictMath.abs(ball - HEAVY * (ball - heel) - centre) / hands;
        return new Heels(1, push, "the hands hold with");
    }

    private static double mean(SolvedPose pose, String joint, List<Side> sides) {
        return sides.stream()
                .mapToDouble(side -> pose.skeleton().point(joint, side).x())
                .average()
                .orElseThrow();
    }

    private static boolean asksForHeavyHeels(Drill drill) {
        boolean marked = MEASURING.solved(drill).orElseThrow().all().stream().anyMatch(FactsOfTheTradeTest::shows);
        return marked
                || Stream.concat(drill.actionSteps().stream().map(Step::text), drill.feel().stream())
                        .map(text -> text.english().toLowerCase(Locale.ROOT))
                        .anyMatch(text -> text.contains("heel") && text.contains("heav"));
    }

    private static boolean shows(SolvedPose pose) {
        return pose.marks().stream().anyMatch(m -> Set.of("heel", "heels").contains(m.id()));
    }

    private static Stream<Named<Drill>> drills(Predicate<Drill> which) {
        return LIBRARY.catalogue().inUse().stream().filter(which).map(d -> Named.of(d.id(), d));
    }
}
