package org.drillsheaf.desk.handout;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.course.Documents;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.client.ClientDraft;
import org.drillsheaf.desk.client.Evaluation;
import org.drillsheaf.desk.client.Evaluator;
import org.drillsheaf.desk.house.HouseStyleSetting;
import org.drillsheaf.desk.work.Going;
import org.drillsheaf.handout.DocumentMaker;
import org.drillsheaf.handout.DocumentOrder;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.program.DrillHash;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.ProgramReader;
import org.drillsheaf.store.record.ClientRecord;
import org.drillsheaf.store.record.ClientSummary;
import org.drillsheaf.store.record.KeptProgram;

/** The papers of several clients' last visits, into one folder. Only what is signed and not held leaves the house. Blocks. */
public final class Batch {
    private final Workplace workplace;
    private final Evaluator evaluator;

    public Batch(Workplace workplace) {
        this.workplace = workplace;
        this.evaluator = new Evaluator(workplace.knowledge());
    }

    /**
     * How it went.
     *
     * @param printed files, in the order of the clients
     * @param left clients without papers, with the reason
     * @param stopped whether the coach stopped it before the last client
     */
    public record Outcome(List<Path> printed, List<String> left, boolean stopped) {}

    /** What is printed for one client: the signed program with what it was built from. */
    private record Ready(Evaluation read, KeptProgram kept, Program program) {}

    /** Prints; a paper is written whole or not at all, and what was written before a stop stays. */
    public Outcome print(List<ClientSummary> clients, List<DocumentKind> kinds, Path folder, Going going) {
        Problems problems = new Problems();
        Optional<DocumentMaker> maker =
                HouseStyleSetting.maker(workplace.store(), workplace.folders(), workplace.knowledge(), problems);
        if (maker.isEmpty()) {
            return new Outcome(List.of(), List.of(problems.all().get(0).message()), false);
        }
        List<Path> printed = new ArrayList<>();
        List<String> left = new ArrayList<>();
        try {
            for (int i = 0; i < clients.size(); i++) {
                going.at(i, clients.size());
                ClientSummary client = clients.get(i);
                List<String> why = new ArrayList<>();
                Optional<Ready> ready = ready(client, why);
                if (ready.isPresent()) {
                    print(client, ready.get(), kinds, folder, maker.get(), printed, why);
                }
                why.forEach(reason -> left.add(client.name() + ": " + reason));
            }
            going.at(clients.size(), clients.size());
        } catch (Going.Stopped e) {
            return new Outcome(printed, left, true);
        }
        return new Outcome(printed, left, false);
    }

    private Optional<Ready> ready(ClientSummary client, List<String> why) {
        Optional<ClientRecord> record = workplace.store().clients().load(client.key());
        Optional<LocalDate> visit = client.lastVisit();
        if (record.isEmpty() || visit.isEmpty()) {
            why.add(workplace.words().text("clients.no-visit"));
            return Optional.empty();
        }
        Evaluation read = evaluator.read(ClientDraft.of(record.get()), visit.get());
        if (!read.mayBuild()) {
            why.add(workplace.words().text("handout.safety"));
            return Optional.empty();
        }
        Optional<KeptProgram> kept = workplace
                .store()
                .programs()
                .newest(client.key(), visit.get())
                .filter(k -> k.signedBy().isPresent());
        if (kept.isEmpty()) {
            why.add(workplace.words().text("batch.not-signed"));
            return Optional.empty();
        }
        Optional<Program> program = YamlNode.parse(client.id(), kept.get().yaml(), new Problems())
                .flatMap(node -> ProgramReader.read(node, new Problems()))
                .filter(p ->
                        p.phases().stream().flatMap(f -> f.entries().stream()).allMatch(this::isAsBuilt));
        if (program.isEmpty()) {
            why.add(workplace.words().text("batch.drill-changed"));
        }
        return program.map(p -> new Ready(read, kept.get(), p));
    }

    private boolean isAsBuilt(Entry entry) {
        return workplace
                .knowledge()
                .catalogue()
                .drill(entry.drill())
                .filter(drill -> DrillHash.of(drill).equals(entry.hash()))
                .isPresent();
    }

    private void print(
            ClientSummary client,
            Ready ready,
            List<DocumentKind> kinds,
            Path folder,
            DocumentMaker maker,
            List<Path> printed,
            List<String> why) {
        DocumentOrder order =
                Documents.order(ready.read().course().orElseThrow(), Optional.empty(), Optional.of(ready.program()));
        DocumentOrder signed = order.with(order.setting().signedBy(ready.kept().signedBy()));
        for (DocumentKind kind : kinds) {
            Problems problems = new Problems();
            Optional<byte[]> pdf = maker.print(kind, signed, problems);
            if (pdf.isEmpty()) {
                why.add(problems.all().get(0).message());
                continue;
            }
            printed.add(write(
                    folder.resolve(
                            client.id() + "-" + kind.id() + "-" + ready.read().date() + ".pdf"),
                    pdf.get()));
            new HandingOut(
                            client.key(),
                            Optional.of(ready.kept().key()),
                            kind,
                            ready.read().date(),
                            signed.settingOf(kind),
                            ready.read().draft().yaml(),
                            Optional.of(ready.kept().yaml()),
                            pdf.get())
                    .keep(workplace);
        }
    }

    private static Path write(Path file, byte[] pdf) {
        Path half = file.resolveSibling(file.getFileName() + ".new");
        try {
            Files.write(half, pdf);
            return Files.move(half, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }
}
