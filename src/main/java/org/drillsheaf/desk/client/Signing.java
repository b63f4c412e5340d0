package org.drillsheaf.desk.client;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.work.Lane;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.ProgramYaml;
import org.drillsheaf.store.record.KeptProgram;
import org.drillsheaf.store.record.Programs;
import org.jspecify.annotations.Nullable;

/** The program of the chosen visit in the record, and who signed it. Belongs to the toolkit's thread. */
final class Signing {
    private final Workplace workplace;
    private final Evaluator evaluator;
    private final UUID client;
    private final ObservableValue<LocalDate> visit;
    private final Consumer<String> failed;
    private final Lane lane;
    private final ReadOnlyObjectWrapper<Optional<KeptProgram>> kept = new ReadOnlyObjectWrapper<>(Optional.empty());
    private @Nullable Compared compared;

    /**
     * @param visit the day of the chosen visit; a program of another day is not taken
     * @param failed gets what went wrong
     */
    Signing(
            Workplace workplace,
            Evaluator evaluator,
            UUID client,
            ObservableValue<LocalDate> visit,
            Consumer<String> failed) {
        this.workplace = workplace;
        this.evaluator = evaluator;
        this.client = client;
        this.visit = visit;
        this.failed = failed;
        this.lane = new Lane(workplace.background());
    }

    /** The newest version in the record. */
    ReadOnlyObjectProperty<Optional<KeptProgram>> kept() {
        return kept.getReadOnlyProperty();
    }

    /** Another visit is chosen. */
    void forget() {
        kept.set(Optional.empty());
    }

    void look() {
        LocalDate date = visit.getValue();
        lane.run(
                () -> workplace.store().programs().newest(client, date),
                found -> {
                    if (date.equals(visit.getValue())) {
                        kept.set(found);
                    }
                },
                this::failed);
    }

    /** Keeps the program and signs it with the coach's name. */
    void sign(Program program) {
        lane.run(
                () -> {
                    Programs programs = workplace.store().programs();
                    KeptProgram saved =
                            programs.save(client, program, evaluator.knowledge().catalogue(), workplace.coach());
                    return programs.sign(saved.key(), workplace.coach());
                },
                signed -> kept.set(Optional.of(signed)),
                this::failed);
    }

    private void failed(Exception e) {
        failed.accept(String.valueOf(e.getMessage()));
    }

    /** The signed version, when it is the very program on the desk. */
    Optional<KeptProgram> signed(Optional<Evaluation.Built> built) {
        Optional<KeptProgram> inRecord = kept.get().filter(k -> k.signedBy().isPresent());
        if (compared == null || !compared.built.equals(built) || !compared.kept.equals(inRecord)) {
            Optional<KeptProgram> same = inRecord.filter(k -> built.flatMap(Evaluation.Built::program)
                    .map(ProgramYaml::write)
                    .filter(k.yaml()::equals)
                    .isPresent());
            compared = new Compared(built, inRecord, same);
        }
        return compared.same;
    }

    /** The program as text beside the one in the record: asked for several times at every key, so kept until one of them changes. */
    private record Compared(Optional<Evaluation.Built> built, Optional<KeptProgram> kept, Optional<KeptProgram> same) {}
}
