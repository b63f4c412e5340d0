package org.drillsheaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drillsheaf.Side;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.course.Planning;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Step;
import org.drillsheaf.drill.safety.Caution;
import org.drillsheaf.drill.safety.Judgement;
import org.drillsheaf.drill.safety.PoseMeasuring;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.pose.SolvedPose;
import org.drillsheaf.figure.pose.SolvedSheet;
import org.drillsheaf.handout.DocumentMaker;
import org.drillsheaf.handout.PdfProof;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.PhasePlan;
import org.drillsheaf.program.Program;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the samples' papers and programs must hold, whatever the catalogue is like on the day. */
class SampleHandoutsTest {
    @TempDir
    private static Path out;

    private static final PoseMeasuring MEASURING = new PoseMeasuring();
    private static final Map<String, ClientVisit> VISITS = new TreeMap<>();
    private static final Map<String, Program> PROGRAMS = new TreeMap<>();
    private static final Map<String, byte[]> PDFS = new TreeMap<>();
    private static Knowledge knowledge;

    @BeforeAll
    static void makeThemAll() throws IOException {
        Folders folders = HouseData.folders();
        knowledge = HouseData.knowledge(folders);
        DocumentMaker maker = Papers.maker(folders, knowledge);
        for (String id : clients()) {
            Path file = Path.of("samples/clients", id + ".yaml");
            Course course = Course.of(HouseData.visits(file, Optional.empty(), knowledge), knowledge);
            ClientVisit visit = course.last().visit();
            Papers papers = new Papers(maker, course, out);
            if (!visit.reading().safety().isClear()) {
                PDFS.put(id, papers.referralNote().pdf());
                continue;
            }
            Planning planning = Planning.along(course, knowledge);
            Program program = (Program) planning.result();
            VISITS.put(id, visit);
            PROGRAMS.put(id, program);
            PDFS.put(
                    id,
                    papers.make(planning, program, List.of(DocumentKind.CLIENT_HANDOUT), Optional.empty())
                            .get(0)
                            .pdf());
        }
    }

    static List<String> clients() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("samples/clients"))) {
            return files.map(f -> f.getFileName().toString().replace(".yaml", ""))
                    .sorted()
                    .toList();
        }
    }

    static List<String> programs() throws IOException {
        return clients().stream().filter(id -> !id.equals("petra-holm")).toList();
    }

    @ParameterizedTest
    @MethodSource("clients")
    void theReferenceValidatorFindsNothing(String id) {
        PdfProof.assertValid(PDFS.get(id));
    }

    @ParameterizedTest
    @MethodSource("programs")
    void theTextHoldsEveryStepOfEveryDrillInOrder(String id) {
        ClientVisit visit = VISITS.get(id);
        List<String> pieces = new ArrayList<>();
        for (Entry entry : PROGRAMS.get(id).now().entries()) {
            Drill drill = judged(visit, entry).drill();
            for (Step step : Stream.concat(drill.setUpSteps().stream(), drill.actionSteps().stream())
                    .toList()) {
                String text = step.text().best(visit.client().languages());
                // What stands in braces is worked out for the client; the words around it must be there.
                for (String piece : text.split("\\{[^}]*}")) {
                    if (!piece.isBlank()) {
                        pieces.add(plain(piece));
                    }
                }
            }
        }
        assertThat(pieces).hasSizeGreaterThan(10);
        assertThat(plain(PdfProof.taggedText(PDFS.get(id)))).containsSubsequence(pieces);
    }

    /** Letters and signs without spaces; Arabic without vowel marks, whose place within joined letters is a matter of taste. */
    private static String plain(String text) {
        return text.replaceAll("[\\s\\u00a0\\u064b-\\u0652\\u200e\\u200f]+", "").replace("’", "'");
    }

    @ParameterizedTest
    @MethodSource("programs")
    void everySessionFitsTheMinutesAndEveryDrillIsAllowed(String id) {
        ClientVisit visit = VISITS.get(id);
        for (PhasePlan phase : PROGRAMS.get(id).phases()) {
            assertThat(phase.minutes()).isLessThanOrEqualTo(visit.client().minutesPerSession());
            assertThat(phase.entries().stream().mapToInt(Entry::minutes).sum()).isEqualTo(phase.minutes());
            for (Entry entry : phase.entries()) {
                assertThat(judged(visit, entry).isOffered()).as(entry.drill()).isTrue();
            }
        }
    }

    /**
     * Published precautions after a posterior hip replacement: no bending past 90 degrees (our default keeps 10 away), no
     * turning in, no crossing of the midline. Read back from the joint points of every picture as printed, both sides.
     */
    @ParameterizedTest
    @MethodSource("programs")
    void aReplacedHipIsNeverBentPastItsLimitTurnedInOrCrossed(String id) {
        ClientVisit visit = VISITS.get(id);
        boolean replaced = visit.conditions().stream().anyMatch(c -> c.id().equals("hip-posterior"));
        for (PhasePlan phase : PROGRAMS.get(id).phases()) {
            for (Entry entry : replaced ? phase.entries() : List.<Entry>of()) {
                SolvedSheet sheet =
                        MEASURING.solved(judged(visit, entry).drill()).orElseThrow();
                Stream.concat(sheet.all().stream(), sheet.mirrored().all().stream())
                        .forEach(pose -> assertHipIsSafe(entry.drill(), pose));
            }
        }
        assertThat(replaced).isEqualTo(id.equals("edwin-tarrow"));
    }

    /** What a client has to mind because of a condition stands on paper, whole. */
    @ParameterizedTest
    @MethodSource("programs")
    void everyConditionsSentencesArePrinted(String id) {
        ClientVisit visit = VISITS.get(id);
        List<String> sentences = visit.safety().active().stream()
                .flatMap(active -> active.condition().clientText().stream())
                .map(text -> plain(text.best(visit.client().languages())))
                .toList();

        String printed = plain(PdfProof.taggedText(PDFS.get(id)));
        assertThat(sentences).allSatisfy(sentence -> assertThat(printed).contains(sentence));
        assertThat(sentences.isEmpty()).isEqualTo(visit.safety().active().isEmpty());
    }

    /** House rule: whoever gets a drill with a chair or a band is told how to set it up. */
    @ParameterizedTest
    @MethodSource("programs")
    void theSetUpOfEveryThingUsedIsPrinted(String id) {
        ClientVisit visit = VISITS.get(id);
        String printed = plain(PdfProof.taggedText(PDFS.get(id)));
        boolean chair = PROGRAMS.get(id).now().entries().stream()
                .anyMatch(e -> judged(visit, e).drill().equipment().contains("chair"));

        assertThat(printed.contains(plain(setUp("A chair with four legs", visit))))
                .isEqualTo(chair);
        assertThat(printed).contains(plain(setUp("bare feet or grippy soles", visit)));
    }

    /** What the house says about setting up, in the client's language; found by words of the English text. */
    private static String setUp(String english, ClientVisit visit) {
        return knowledge.vocabulary().library().cautions().stream()
                .map(Caution::text)
                .filter(text -> text.english().toLowerCase(Locale.ROOT).contains(english.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow()
                .best(visit.client().languages());
    }

    private static void assertHipIsSafe(String drill, SolvedPose pose) {
        for (Side side : Side.values()) {
            assertThat(pose.measuredAngle(Motion.HIP_FLEX, side))
                    .as("%s bends the hip", drill)
                    .isLessThanOrEqualTo(80.5);
            assertThat(pose.angle(Motion.HIP_INT, side))
                    .as("%s turns the thigh in", drill)
                    .isLessThanOrEqualTo(0.5);
            double outward = side == Side.RIGHT ? 1 : -1;
            for (String joint : List.of("knee", "ankle")) {
                Vec3 fromMiddle =
                        pose.skeleton().point(joint, side).minus(pose.skeleton().point("pelvis"));
                assertThat(outward * pose.skeleton().frame("pelvis").axisZ().dot(fromMiddle))
                        .as("%s crosses the midline with the %s", drill, joint)
                        .isGreaterThanOrEqualTo(-0.001);
            }
        }
    }

    private static Judgement judged(ClientVisit visit, Entry entry) {
        return knowledge
                .safety()
                .judge(knowledge.catalogue().drill(entry.drill()).orElseThrow(), visit.safety());
    }
}
