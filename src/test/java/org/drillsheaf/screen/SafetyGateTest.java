package org.drillsheaf.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drillsheaf.saying.English.said;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.drillsheaf.client.Answer;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.client.PracticeLog;
import org.drillsheaf.client.Release;
import org.drillsheaf.client.SafetyAnswer;
import org.drillsheaf.client.Sex;
import org.drillsheaf.client.Visit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SafetyGateTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 15);
    private static final Client CLIENT = House.client(Optional.of(Sex.FEMALE), 1986);
    private static final SafetyGate GATE = House.RULES.safetyGate();

    static Stream<SafetyQuestion> questions() {
        return GATE.questions().stream();
    }

    private static SafetyReading read(Map<String, SafetyAnswer> answers, ClientCondition... conditions) {
        return GATE.read(CLIENT, List.of(conditions), visit(answers));
    }

    private static Visit visit(Map<String, SafetyAnswer> answers) {
        return new Visit(
                DAY,
                answers,
                Map.of(),
                Optional.empty(),
                Optional.empty(),
                PracticeLog.NOTHING_SAID,
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                Optional.empty(),
                1);
    }

    private static Map<String, SafetyAnswer> allNoBut(String id, SafetyAnswer answer) {
        Map<String, SafetyAnswer> answers = new LinkedHashMap<>(House.allNo());
        answers.put(id, answer);
        return answers;
    }

    @Test
    void noToEverythingIsClear() {
        assertThat(read(House.allNo()).status()).isEqualTo(SafetyStatus.CLEAR);
    }

    @ParameterizedTest
    @MethodSource("questions")
    void yesAndNotSureCountAlike(SafetyQuestion question) {
        for (Answer answer : List.of(Answer.YES, Answer.NOT_SURE)) {
            SafetyReading reading = read(allNoBut(question.id(), SafetyAnswer.of(answer)));
            SafetyStatus expected =
                    switch (question.effect()) {
                        case STOP -> SafetyStatus.STOPPED;
                        case HOLD -> SafetyStatus.HELD;
                        case ADVISE -> SafetyStatus.CLEAR;
                    };

            assertThat(reading.status()).isEqualTo(expected);
            assertThat(reading.needsReferralNote()).isEqualTo(question.effect() == SafetyQuestion.Effect.STOP);
        }
    }

    /** An unanswered question never allows more than a yes. */
    @ParameterizedTest
    @MethodSource("questions")
    void unansweredBlocksLikeAYesAndIsNamedButWritesNoNote(SafetyQuestion question) {
        Map<String, SafetyAnswer> answers = new LinkedHashMap<>(House.allNo());
        answers.remove(question.id());
        SafetyReading reading = read(answers, ClientCondition.of("pregnancy"));
        boolean asked = question.effect() != SafetyQuestion.Effect.ADVISE
                && question.askedIf().holds(39, 40, Set.of("pregnancy"));

        assertThat(reading.isClear()).isEqualTo(!asked);
        assertThat(reading.unanswered()).isEqualTo(asked ? List.of(question) : List.of());
        assertThat(reading.needsReferralNote()).isFalse();
    }

    @Test
    void stoppedIsSaidBeforeWhatIsStillToAsk() {
        SafetyReading reading = read(Map.of("chest", SafetyAnswer.of(Answer.YES)));

        assertThat(reading.status()).isEqualTo(SafetyStatus.STOPPED);
        assertThat(reading.unanswered()).isNotEmpty();
        assertThat(reading.urgency()).contains(SafetyQuestion.Urgency.TODAY);
        assertThat(said(reading.stopping().get(0).words())).startsWith("Chest, jaw, neck or arm discomfort: yes.");
    }

    @Test
    void aWrittenWordReleasesOnlyFromItsDateOn() {
        SafetyAnswer before = new SafetyAnswer(
                Answer.YES,
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Release("Dr Amble", DAY, "May start.")),
                1);
        SafetyAnswer after = new SafetyAnswer(
                Answer.YES,
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Release("Dr Amble", DAY.plusDays(1), "May start.")),
                1);

        assertThat(read(allNoBut("cancer", before)).status()).isEqualTo(SafetyStatus.CLEAR);
        assertThat(read(allNoBut("cancer", before)).released()).hasSize(1);
        assertThat(read(allNoBut("cancer", after)).status()).isEqualTo(SafetyStatus.STOPPED);
    }

    @Test
    void aReleaseMayStandWithTheConditionItIsAbout() {
        ClientCondition hip = new ClientCondition(
                "hip-posterior",
                Set.of(),
                Optional.empty(),
                Map.of(),
                Optional.of(new Release("Dr Amble", DAY.minusWeeks(1), "Limits as listed.")),
                Set.of("surgery"),
                1);

        assertThat(read(allNoBut("surgery", SafetyAnswer.of(Answer.YES)), hip).isClear())
                .isTrue();
        assertThat(read(allNoBut("chest", SafetyAnswer.of(Answer.YES)), hip).isClear())
                .isFalse();
    }

    @Test
    void surgeryAsksForPartAndDateAndBarsTheTestsOfThatPart() {
        SafetyAnswer shoulder = new SafetyAnswer(
                Answer.YES, Optional.of("shoulder"), Optional.of(DAY.minusWeeks(4)), Optional.empty(), 1);
        SafetyAnswer longAgo = new SafetyAnswer(
                Answer.YES, Optional.of("shoulder"), Optional.of(DAY.minusWeeks(13)), Optional.empty(), 1);
        SafetyAnswer bare = SafetyAnswer.of(Answer.YES);
        MovementTest arm = House.test("shoulder-flexion");
        MovementTest thigh = House.test("thigh-drop");

        assertThat(said(read(allNoBut("surgery", bare)).holding().get(0).words()))
                .contains("Ask for the body part and the date");
        assertThat(new Bars(List.of(), List.of(shoulder), DAY).barsAll(arm)).isTrue();
        assertThat(new Bars(List.of(), List.of(shoulder), DAY).barsAll(thigh)).isFalse();
        assertThat(new Bars(List.of(), List.of(longAgo), DAY).barsAll(arm)).isFalse();
        assertThat(new Bars(List.of(), List.of(bare), DAY).barsAll(thigh)).isTrue();
    }

    @Test
    void stoppedAndHeldShowFindingsAndNoPresentation() {
        for (String id : List.of("chest", "doctor-limits")) {
            Visit visit = visit(allNoBut(id, SafetyAnswer.of(Answer.YES)));
            Reading clear = InventedScreen.table("invented-screens.txt").get(0).read();
            Reading reading = House.RULES.read(CLIENT, List.of(), visit, clear.screen(), Optional.empty());

            assertThat(reading.findings()).anyMatch(f -> f.kind() == FindingKind.LIMITED);
            assertThat(reading.presentations()).isEmpty();
            assertThat(reading.leading()).isEmpty();
            assertThat(reading.nextTest()).isEmpty();
        }
    }

    /**
     * The table of the 2015 update (Riebe D et al., Med Sci Sports Exerc 2015;47(11):2473–2479), rows from memory; our drills are
     * light to moderate.
     */
    @ParameterizedTest
    @CsvSource({
        "NO, NO, NO, NOT_NEEDED",
        "NO, YES, NO, RECOMMENDED",
        "NO, NO, YES, RECOMMENDED",
        "NO, YES, YES, RECOMMENDED",
        "YES, NO, NO, NOT_NEEDED",
        "YES, YES, NO, NOT_NEEDED",
        "YES, NO, YES, STOP_AND_SEEK",
        "YES, YES, YES, STOP_AND_SEEK",
        "NOT_SURE, NOT_SURE, NO, RECOMMENDED"
    })
    void adviceBeforeExercise(Answer active, Answer disease, Answer symptom, SafetyReading.Clearance clearance) {
        Map<String, SafetyAnswer> answers = new LinkedHashMap<>(House.allNo());
        answers.put("active", SafetyAnswer.of(active));
        answers.put("heart-disease", SafetyAnswer.of(disease));
        answers.put("dizzy-rising", SafetyAnswer.of(symptom));

        assertThat(read(answers).clearance()).isEqualTo(clearance);
    }

    @Test
    void anUnansweredDiseaseCountsAsYes() {
        Map<String, SafetyAnswer> answers = new LinkedHashMap<>(House.allNo());
        answers.remove("heart-disease");

        assertThat(read(answers).clearance()).isEqualTo(SafetyReading.Clearance.RECOMMENDED);
        assertThat(said(read(answers).advice())).anyMatch(a -> a.contains("was not answered and counts as yes"));
    }

    @Test
    void aYearOfBirthAloneAsksTheQuestionsOfBothAges() {
        SafetyQuestion young = GATE.questions().stream()
                .filter(q -> q.id().equals("young-pain"))
                .findFirst()
                .orElseThrow();
        Map<String, SafetyAnswer> answers = new LinkedHashMap<>(House.allNo());
        answers.remove("young-pain");
        Client perhapsEighteen = House.client(Optional.empty(), DAY.getYear() - 19);

        assertThat(GATE.read(perhapsEighteen, List.of(), visit(answers)).unanswered())
                .containsExactly(young);
    }

    @Test
    void anAnswerPointsToAConditionThatIsNotInTheFile() {
        Map<String, SafetyAnswer> answers = allNoBut("blood-thinners", SafetyAnswer.of(Answer.YES));

        assertThat(read(answers).suggestedConditions()).containsExactly("blood-thinners");
        assertThat(read(answers, ClientCondition.of("blood-thinners")).suggestedConditions())
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("questions")
    void everyQuestionIsThereInEnglishAndSpanishWithASource(SafetyQuestion question) {
        assertThat(question.text().has("en")).isTrue();
        assertThat(question.text().has("es")).isTrue();
        assertThat(question.source().text()).isNotBlank();
        assertThat(question.text(List.of("es"))).contains("¿");
    }
}
