package org.drillsheaf.desk.handout;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.Paper;
import org.drillsheaf.client.Print;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Documents;
import org.drillsheaf.course.Planning;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.Evaluation;
import org.drillsheaf.desk.house.HouseStyleSetting;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.handout.DocumentMaker;
import org.drillsheaf.handout.DocumentOrder;
import org.drillsheaf.handout.DocumentSetting;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.ProgramYaml;
import org.drillsheaf.store.record.HandedOut;
import org.drillsheaf.store.record.KeptProgram;
import org.jspecify.annotations.Nullable;

/** What the sheet with the papers shows and does. Knows no toolkit. */
public final class HandoutModel {
    /** Papers that are made for a client, in the order of the list. */
    public static final List<DocumentKind> KINDS = List.of(
            DocumentKind.CLIENT_HANDOUT,
            DocumentKind.REMINDER_CARD,
            DocumentKind.PRACTICE_LOG,
            DocumentKind.COACH_SHEET,
            DocumentKind.PROGRESS_REPORT,
            DocumentKind.REFERRAL_NOTE);

    /** Languages of the papers. */
    public static final List<String> LANGUAGES = List.of("en", "es", "ar");

    private final ClientCase client;
    private final Workplace workplace;
    private final Words words;
    private @Nullable DocumentMaker maker;

    /**
     * What is wanted.
     *
     * @param language tag; empty for the client's own
     * @param large empty until the coach says; then it is as the reader of the paper needs it
     */
    public record Choice(DocumentKind kind, Optional<String> language, Paper paper, Optional<Boolean> large) {
        public Choice with(DocumentKind other) {
            return new Choice(other, language, paper, large);
        }

        public Choice in(Optional<String> other) {
            return new Choice(kind, other, paper, large);
        }

        public Choice on(Paper other) {
            return new Choice(kind, language, other, large);
        }

        public Choice large(boolean wanted) {
            return new Choice(kind, language, paper, Optional.of(wanted));
        }
    }

    /**
     * A made paper.
     *
     * @param pdf empty when it cannot be made, and then {@code problems} says why
     */
    public record Made(Choice choice, Source source, Optional<byte[]> pdf, List<Problem> problems) {}

    /** What a paper is made from: everything that was decided up to the moment. */
    public record Source(Evaluation evaluation, Optional<Planning> planning, Optional<KeptProgram> signed) {

        Optional<Program> program() {
            return planning.map(Planning::result)
                    .filter(Program.class::isInstance)
                    .map(Program.class::cast);
        }
    }

    public HandoutModel(ClientCase client) {
        this.client = client;
        this.workplace = client.workplace();
        this.words = workplace.words();
    }

    public ClientCase client() {
        return client;
    }

    /** What the client's file asks for. */
    public Choice first() {
        return new Choice(
                DocumentKind.CLIENT_HANDOUT,
                Optional.empty(),
                person().map(Client::paper).orElse(Paper.A4),
                Optional.empty());
    }

    /** Whether the paper is set in large print: the client's papers as the client needs it, those of the coach only when asked for. */
    public boolean isLarge(Choice choice) {
        return choice.large()
                .orElse(choice.kind().isReadByTheClient()
                        && person().map(Client::print)
                                .filter(Print.LARGE::equals)
                                .isPresent());
    }

    private Optional<Client> person() {
        return client.evaluation().get().flatMap(Evaluation::visit).map(v -> v.client());
    }

    /** Everything a paper needs; empty while nothing was read. */
    public Optional<Source> source() {
        boolean current = client.isBuiltForNow();
        return client.evaluation()
                .get()
                .filter(e -> e.course().isPresent())
                .map(e -> new Source(
                        e,
                        current ? client.built().get().map(Evaluation.Built::planning) : Optional.empty(),
                        client.signed()));
    }

    /** Whether a program is being built for what was typed last. */
    public boolean isBuilding() {
        return client.evaluation().get().filter(Evaluation::mayBuild).isPresent() && !client.isBuiltForNow();
    }

    /** Why a paper cannot be shown; empty when it can. */
    public Optional<String> notShown(DocumentKind kind) {
        Optional<Evaluation> read =
                client.evaluation().get().filter(e -> e.course().isPresent());
        if (read.isEmpty()) {
            return Optional.of(words.text("handout.not-read"));
        }
        Course course = read.get().course().orElseThrow();
        if (kind == DocumentKind.REFERRAL_NOTE) {
            return course.last().visit().reading().safety().needsReferralNote()
                    ? Optional.empty()
                    : Optional.of(words.text("handout.no-referral"));
        }
        if (kind == DocumentKind.PROGRESS_REPORT) {
            return course.last().change().isPresent() ? Optional.empty() : Optional.of(words.text("handout.one-visit"));
        }
        if (!read.get().mayBuild()) {
            return Optional.of(words.text("handout.safety"));
        }
        return source().flatMap(Source::program).isPresent()
                ? Optional.empty()
                : Optional.of(words.text("handout.no-program"));
    }

    /**
     * Why a paper cannot be printed or handed out: a client's paper needs a signed program. What stays in the house, and the
     * note for a clinician, need none.
     */
    public Optional<String> notPrinted(DocumentKind kind) {
        Optional<String> notShown = notShown(kind);
        if (notShown.isPresent()) {
            return notShown;
        }
        boolean forClient = kind == DocumentKind.CLIENT_HANDOUT
                || kind == DocumentKind.REMINDER_CARD
                || kind == DocumentKind.PRACTICE_LOG;
        return forClient && client.signed().isEmpty()
                ? Optional.of(words.text("handout.not-signed"))
                : Optional.empty();
    }

    /** Makes the paper; blocks. */
    public Made make(Choice choice, Source source) {
        Problems problems = new Problems();
        Optional<byte[]> pdf = maker(problems).flatMap(m -> m.print(choice.kind(), order(choice, source), problems));
        return new Made(choice, source, pdf, problems.all());
    }

    private static DocumentOrder order(Choice choice, Source source) {
        return Documents.order(source.evaluation().course().orElseThrow(), needs(source), source.program())
                .with(new DocumentSetting(
                        choice.language(),
                        choice.paper(),
                        choice.large(),
                        source.signed().flatMap(KeptProgram::signedBy)));
    }

    private static Optional<org.drillsheaf.program.Needs> needs(Source source) {
        return source.planning().map(Planning::needs);
    }

    private synchronized Optional<DocumentMaker> maker(Problems problems) {
        if (maker == null) {
            maker = HouseStyleSetting.maker(workplace.store(), workplace.folders(), workplace.knowledge(), problems)
                    .orElse(null);
        }
        return Optional.ofNullable(maker);
    }

    /** The clinic's details may have changed; the next paper reads them again. */
    public synchronized void readHouseAgain() {
        maker = null;
    }

    /** Name of a file for a paper. */
    public String fileName(DocumentKind kind, String ending) {
        return client.draft().get().id() + "-" + kind.id() + "-"
                + client.visit().get() + ending;
    }

    /** Writes the paper into a file, whole or not at all, and keeps a copy in the record; blocks. */
    public void save(Made made, Path file, byte[] content) throws IOException {
        Path half = file.resolveSibling(file.getFileName() + ".new");
        Files.write(half, content);
        Files.move(half, file, StandardCopyOption.REPLACE_EXISTING);
        keep(made);
    }

    /** Keeps what was handed out, with everything it was made from; blocks. */
    public void keep(Made made) {
        new HandingOut(
                        client.key(),
                        made.source().signed().map(KeptProgram::key),
                        made.choice().kind(),
                        made.source().evaluation().date(),
                        order(made.choice(), made.source())
                                .settingOf(made.choice().kind()),
                        made.source().evaluation().draft().yaml(),
                        made.source().program().map(ProgramYaml::write),
                        made.pdf().orElseThrow())
                .keep(workplace);
    }

    /** The papers that were handed out, newest first; blocks. */
    public List<HandedOut> handedOut() {
        return new ArrayList<>(workplace.store().documents().list(client.key()));
    }
}
