package org.drillsheaf.handout;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Client;
import org.drillsheaf.drill.safety.Safety;
import org.drillsheaf.handout.page.Document;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.handout.page.Frame;
import org.drillsheaf.handout.page.PracticeLog;
import org.drillsheaf.handout.page.ReminderCard;
import org.drillsheaf.handout.page.Told;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.Vocabulary;
import org.drillsheaf.saying.Messages;

/**
 * The one way to a document: kind and order in, pages out. Holds everything that all documents share, so one is enough for a
 * whole batch. Reads no file and no clock. Safe for several threads.
 */
public final class DocumentMaker {
    /** Language of the papers that stay in the house or go to a clinician. */
    private static final String HOUSE_LANGUAGE = "en";

    private final HandoutPrinter printer;
    private final Vocabulary vocabulary;
    private final HandoutMaker handouts;
    private final HandoutOrderMaker orders;

    public DocumentMaker(HandoutPrinter printer, Vocabulary vocabulary, Safety safety) {
        this.printer = printer;
        this.vocabulary = vocabulary;
        this.handouts = new HandoutMaker(
                printer, vocabulary.library().catalogue().words().equipment());
        this.orders = new HandoutOrderMaker(vocabulary, safety);
    }

    /**
     * Makes and prints one document of a client.
     *
     * @param kind one that is made for a client
     * @return the PDF, empty when {@code problems} got an error
     */
    public Optional<byte[]> print(DocumentKind kind, DocumentOrder order, Problems problems) {
        return make(kind, order, problems).flatMap(document -> print(document, problems));
    }

    /** Prints pages that were made before; empty when {@code problems} got an error. */
    public Optional<byte[]> print(Document document, Problems problems) {
        return printer.print(document, problems);
    }

    /** The pages of one document of a client; empty when {@code problems} got an error. */
    public Optional<Document> make(DocumentKind kind, DocumentOrder order, Problems problems) {
        if (kind.needsProgram() && order.program().isEmpty()) {
            problems.error(
                    order.client().id(),
                    0,
                    "There is no program to print for " + order.client().name(),
                    "Print the referral note, or settle what keeps the program back");
            return Optional.empty();
        }
        return switch (kind) {
            case CLIENT_HANDOUT -> handouts.handout(program(order), problems).map(Document.class::cast);
            case REFERRAL_NOTE -> referralNote(order, problems);
            case REMINDER_CARD -> handouts.handout(program(order), problems).map(ReminderCard::of);
            case PRACTICE_LOG -> handouts.handout(program(order), problems).map(PracticeLog::of);
            case COACH_SHEET -> coachSheet(order, problems);
            case PROGRESS_REPORT -> progressReport(order, problems);
            case CATALOGUE_BOOK -> {
                problems.error(
                        kind.id(), 0, "The catalogue book is for the clinic, not for a client", "print --catalogue");
                yield Optional.empty();
            }
        };
    }

    /**
     * Makes and prints the book of the whole catalogue for the clinic.
     *
     * @param setting its language, or the house's; paper and size of print
     */
    public Optional<byte[]> printCatalogue(DocumentSetting setting, Problems problems) {
        Messages messages = printer.messagesFor(setting.language().orElse(HOUSE_LANGUAGE));
        return new CatalogueBookMaker(vocabulary, messages, printer::messagesFor)
                .book(printer.house().name(), setting.paper(), setting.large().orElse(false), problems)
                .flatMap(book -> printer.print(book, problems));
    }

    private Optional<Document> coachSheet(DocumentOrder order, Problems problems) {
        Frame frame = frame(order, DocumentKind.COACH_SHEET);
        CoachSheetMaker maker = new CoachSheetMaker(vocabulary, printer.messagesFor(frame.language()));
        HandoutOrder forClient = program(order);
        Program program = order.program().orElseThrow();
        List<Told> things = handouts.things(forClient, program.now(), List.of(frame.language(), HOUSE_LANGUAGE));
        return handouts.handout(forClient, problems)
                .map(handout -> maker.sheet(order, program, frame, handout, things));
    }

    private Optional<Document> progressReport(DocumentOrder order, Problems problems) {
        if (order.change().isEmpty()) {
            problems.error(
                    order.client().id(),
                    0,
                    "There is only one visit, so nothing can have changed yet",
                    "Print the progress report after the next visit");
            return Optional.empty();
        }
        List<String> languages =
                order.setting().language().map(List::of).orElse(order.client().languages());
        String language = languages.stream()
                .filter(printer.languages()::contains)
                .findFirst()
                .orElse(HOUSE_LANGUAGE);
        Frame frame =
                frame(order.with(order.setting().inLanguage(Optional.of(language))), DocumentKind.PROGRESS_REPORT);
        return Optional.of(new ProgressReportMaker(
                        vocabulary,
                        printer.messagesFor(language),
                        printer.house().colours())
                .report(order, order.change().get(), frame));
    }

    private HandoutOrder program(DocumentOrder order) {
        Program program = order.program().orElseThrow();
        return orders.order(order, program);
    }

    private Optional<Document> referralNote(DocumentOrder order, Problems problems) {
        if (!order.now().reading().safety().needsReferralNote()) {
            problems.error(
                    order.client().id(), 0, "No safety answer asks for a referral note", "Print another document");
            return Optional.empty();
        }
        Frame frame = frame(order, DocumentKind.REFERRAL_NOTE);
        return Optional.of(ReferralNoteMaker.note(order, frame, vocabulary.speech(frame.language())));
    }

    /** The frame of a paper in the language of the house, unless another is asked for. */
    private static Frame frame(DocumentOrder order, DocumentKind kind) {
        Client client = order.client();
        DocumentSetting setting = order.setting();
        return new Frame(
                setting.language().orElse(HOUSE_LANGUAGE),
                order.now().visit().date(),
                client.called(),
                client.name(),
                client.coach(),
                setting.signedBy(),
                setting.paper(),
                order.isLarge(kind));
    }
}
