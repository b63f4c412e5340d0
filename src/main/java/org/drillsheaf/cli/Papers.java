package org.drillsheaf.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillsheaf.LocalText;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.client.Print;
import org.drillsheaf.drill.safety.ActiveCondition;
import org.drillsheaf.drill.safety.Caution;
import org.drillsheaf.drill.safety.Judgement;
import org.drillsheaf.handout.HandoutFiles;
import org.drillsheaf.handout.HandoutMaker;
import org.drillsheaf.handout.HandoutOrder;
import org.drillsheaf.handout.HandoutPrinter;
import org.drillsheaf.handout.page.Document;
import org.drillsheaf.handout.page.Frame;
import org.drillsheaf.handout.page.ReferralNote;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.PhaseRow;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.ProgramYaml;
import org.drillsheaf.screen.Finding;
import org.drillsheaf.screen.FindingKind;
import org.drillsheaf.screen.SafetyQuestion;
import org.drillsheaf.screen.SafetyReading;

/** Writes the papers of one visit into a folder. */
final class Papers {
    private static final String BREATH_OUT = "breath-out";

    private final Knowledge knowledge;
    private final ClientVisit visit;
    private final Path out;
    private final HandoutPrinter printer;

    Papers(Folders folders, Knowledge knowledge, ClientVisit visit, Path out) {
        this.knowledge = knowledge;
        this.visit = visit;
        this.out = out;
        Problems problems = new Problems();
        Optional<HandoutPrinter> loaded =
                HandoutFiles.load(folders.templates(), folders.house(), folders.schema("house"), problems);
        BadInput.stopAtErrors(problems);
        this.printer = loaded.orElseThrow();
    }

    /** The program as YAML and the client's handout; both are made before the first is written. */
    List<Path> program(Program program, Optional<String> signedBy) {
        Problems problems = new Problems();
        HandoutMaker maker =
                new HandoutMaker(printer, knowledge.catalogue().words().equipment());
        Optional<byte[]> handout = maker.handout(order(program, signedBy), problems)
                .flatMap(document -> printer.print(document, problems));
        BadInput.stopAtErrors(problems);
        Path programFile = file("program.yaml");
        Path handoutFile = file("handout.pdf");
        TextFile.write(programFile, ProgramYaml.write(program).getBytes(StandardCharsets.UTF_8));
        TextFile.write(handoutFile, handout.orElseThrow());
        return List.of(programFile, handoutFile);
    }

    /** The note for a clinician when a safety answer stops the program. */
    Path referralNote() {
        Problems problems = new Problems();
        Document note = note();
        Optional<byte[]> pdf = printer.print(note, problems);
        BadInput.stopAtErrors(problems);
        Path file = file("referral-note.pdf");
        TextFile.write(file, pdf.orElseThrow());
        return file;
    }

    private Path file(String name) {
        return out.resolve(visit.client().id() + "-" + name);
    }

    private HandoutOrder order(Program program, Optional<String> signedBy) {
        Client client = visit.client();
        Map<String, Judgement> judgements = program.now().entries().stream()
                .map(Entry::drill)
                .collect(Collectors.toMap(id -> id, id -> knowledge
                        .safety()
                        .judge(knowledge.catalogue().drill(id).orElseThrow(), visit.safety())));
        return new HandoutOrder(
                client,
                program,
                judgements,
                knowledge.vocabulary().phases().rows().stream()
                        .map(Papers::words)
                        .toList(),
                visit.visit().next(),
                visit.conditions().stream().map(ClientCondition::id).collect(Collectors.toSet()),
                visit.safety().active().stream()
                        .flatMap(active -> active.condition().clientText().stream())
                        .toList(),
                setUp(judgements.values()),
                breathOut(),
                signedBy,
                client.paper(),
                client.print() == Print.LARGE);
    }

    /** What the house says about chairs, bands, floors and getting up, as far as it concerns these drills and this client. */
    private List<LocalText> setUp(Collection<Judgement> judgements) {
        Set<String> equipment = judgements.stream()
                .flatMap(judgement -> judgement.drill().equipment().stream())
                .collect(Collectors.toSet());
        Set<String> conditions =
                visit.safety().active().stream().map(ActiveCondition::id).collect(Collectors.toSet());
        return knowledge.vocabulary().library().cautions().stream()
                .filter(caution -> caution.group() == Caution.Group.SET_UP && caution.concerns(equipment, conditions))
                .map(Caution::text)
                .toList();
    }

    private static HandoutOrder.PhaseWords words(PhaseRow row) {
        return new HandoutOrder.PhaseWords(row.name(), row.sentence(), row.good());
    }

    private OptionalDouble breathOut() {
        return visit.reading()
                .screen()
                .measurement(BREATH_OUT, Optional.empty())
                .flatMap(m -> m.value())
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private ReferralNote note() {
        Client client = visit.client();
        SafetyReading safety = visit.reading().safety();
        Frame frame = new Frame(
                "en", // for a clinician of the house, whose language is English
                visit.visit().date(),
                client.called(),
                client.name(),
                client.coach(),
                Optional.empty(),
                client.paper(),
                false);
        return new ReferralNote(
                frame,
                urgency(safety.urgency().orElse(SafetyQuestion.Urgency.TODAY)),
                safety.stopping().stream().map(Papers::answer).toList(),
                visit.before().isPresent(),
                visit.reading().findings().stream()
                        .filter(f -> f.kind() != FindingKind.NOT_TESTED)
                        .map(Papers::measured)
                        .toList(),
                Optional.of(String.valueOf(client.born().year())));
    }

    private static ReferralNote.Answer answer(SafetyReading.Flag flag) {
        return new ReferralNote.Answer(
                flag.question().text().english(),
                flag.answer().answer().id(),
                urgency(flag.question().urgency()));
    }

    private static ReferralNote.Measured measured(Finding finding) {
        return new ReferralNote.Measured(
                finding.test().name() + finding.side().map(s -> ", " + s.id()).orElse(""), finding.values());
    }

    private static ReferralNote.Urgency urgency(SafetyQuestion.Urgency urgency) {
        return switch (urgency) {
            case NOW -> ReferralNote.Urgency.EMERGENCY;
            case TODAY -> ReferralNote.Urgency.TODAY;
            case SOON, NONE -> ReferralNote.Urgency.SOON;
        };
    }
}
