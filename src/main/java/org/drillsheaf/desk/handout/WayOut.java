package org.drillsheaf.desk.handout;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Readiness;
import org.drillsheaf.desk.words.Words;

/** How a paper leaves the house: printed, saved, or as a file for e-mail. */
final class WayOut extends VBox {
    private final HandoutModel model;
    private final Workplace workplace;
    private final Words words;
    private final Wanted wanted;
    private final Runnable isOut;
    private final ComboBox<String> printer = new ComboBox<>();
    private final Label state = Labels.prose("", "small", "second");
    private final Label noPrinter = Labels.prose("", "small", "second");
    private final Button print;
    private final Button save;
    private final Readiness printing;
    private final Readiness saving;
    private final Readiness mailing;
    private Optional<String> reason = Optional.empty();

    /** Hands the paper in sight over when it may leave the house; one that is still being made, when it is there. */
    interface Wanted {
        void paper(Consumer<HandoutModel.Made> use);
    }

    /** @param isOut is told when a paper left the house */
    WayOut(HandoutModel model, Wanted wanted, Runnable isOut) {
        super(8);
        this.model = model;
        this.workplace = model.client().workplace();
        this.words = workplace.words();
        this.wanted = wanted;
        this.isOut = isOut;
        this.print = Buttons.withKey(Buttons.main(words.text("handout.print"), this::print), "Ctrl P");
        this.save = Buttons.withKey(Buttons.plain(words.text("handout.save"), this::save), "Ctrl Shift S");
        Button mail = Buttons.plain(words.text("handout.mail"), this::mail);
        this.printing = Readiness.of(print);
        this.saving = Readiness.of(save);
        this.mailing = Readiness.of(mail);
        printer.setAccessibleText(words.text("handout.printer"));
        printer.setPromptText(words.text("handout.printer"));
        printer.setMaxWidth(Double.MAX_VALUE);
        print.setMaxWidth(Double.MAX_VALUE);
        noPrinter.setText(words.text("handout.no-printer"));
        noPrinter.setManaged(false);
        noPrinter.setVisible(false);
        getChildren()
                .addAll(
                        printer,
                        print,
                        noPrinter,
                        new FlowPane(8, 8, save, mail),
                        state,
                        Labels.prose(words.text("handout.keeps"), "small", "third"));
    }

    /** @param not why no paper may leave the house now */
    void ready(Optional<String> not) {
        reason = not;
        boolean none = printer.getItems().isEmpty();
        printing.set(not.or(() -> none ? Optional.of(words.text("handout.no-printer")) : Optional.empty()));
        saving.set(not);
        mailing.set(not);
        state.setText(not.orElse(""));
    }

    /** Says how it stands with the paper. */
    void tell(String text) {
        state.setText(text);
    }

    void lookForPrinters() {
        if (printer.getItems().isEmpty()) {
            workplace
                    .background()
                    .run(
                            Printers::names,
                            names -> {
                                printer.getItems().setAll(names);
                                names.stream().findFirst().ifPresent(printer::setValue);
                                noPrinter.setManaged(names.isEmpty());
                                noPrinter.setVisible(names.isEmpty());
                                ready(reason);
                            },
                            this::failed);
        }
    }

    /** As if the button were pressed. */
    void firePrint() {
        print.fire();
    }

    void fireSave() {
        save.fire();
    }

    private void print() {
        wanted.paper(paper -> {
            String name = printer.getValue();
            state.setText(words.text("handout.printing"));
            workplace
                    .background()
                    .run(
                            () -> {
                                Printers.print(
                                        name,
                                        model.fileName(paper.choice().kind(), ""),
                                        paper.pdf().orElseThrow());
                                model.keep(paper);
                                return true;
                            },
                            done -> out(words.text("handout.printed", name)),
                            this::failed);
        });
    }

    private void save() {
        wanted.paper(paper -> workplace
                .dialogs()
                .save(words.text("handout.save"), model.fileName(paper.choice().kind(), ".pdf"))
                .ifPresent(file -> write(paper, file, paper.pdf().orElseThrow())));
    }

    private void mail() {
        wanted.paper(paper -> workplace
                .dialogs()
                .save(words.text("handout.mail"), model.fileName(paper.choice().kind(), ".eml"))
                .ifPresent(file -> write(
                        paper,
                        file,
                        MailFile.of(
                                words.text("mail.subject"),
                                words.text("mail.text", workplace.coach()),
                                model.fileName(paper.choice().kind(), ".pdf"),
                                paper.pdf().orElseThrow()))));
    }

    private void write(HandoutModel.Made paper, Path file, byte[] content) {
        workplace
                .background()
                .run(
                        () -> {
                            model.save(paper, file, content);
                            return file;
                        },
                        written -> out(words.text("handout.saved", written.toString())),
                        this::failed);
    }

    private void out(String told) {
        state.setText(told);
        isOut.run();
    }

    private void failed(Exception failure) {
        state.setText(words.text("handout.failed", String.valueOf(failure.getMessage())));
    }
}
