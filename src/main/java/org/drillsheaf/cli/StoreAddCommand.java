package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.drillsheaf.Problems;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.ClientRecord;
import org.drillsheaf.store.record.ClientText;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.Part;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.record.SaveResult;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;

/** Takes clients' files into the record. */
@Command(
        name = "add",
        mixinStandardHelpOptions = true,
        description = "Takes clients' files into the record; of a client that is there, what differs is saved as a new"
                + " version.")
final class StoreAddCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private StoreOption store = new StoreOption();

    @Parameters(paramLabel = "<client.yaml>", arity = "1..*", description = "Clients' files.")
    private List<Path> files = List.of();

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Problems problems = new Problems();
        List<ClientText> clients = new ArrayList<>();
        for (Path file : files) {
            ClientText.parse(file.toString(), TextFile.read(file), problems).ifPresent(clients::add);
        }
        BadInput.stopAtErrors(problems);
        try (Store record = store.open()) {
            for (ClientText client : clients) {
                Optional<UUID> there = record.clients().key(client.id());
                if (there.isEmpty()) {
                    record.clients().add(client, store.who());
                    out.println("Added " + client.id());
                } else {
                    int saved = save(record, record.clients().load(there.get()).orElseThrow(), client);
                    out.println(
                            saved == 0
                                    ? "Nothing new about " + client.id()
                                    : "Saved " + client.id() + ": " + saved + (saved == 1 ? " part" : " parts"));
                }
            }
        }
        return ExitCode.DONE;
    }

    private int save(Store record, ClientRecord there, ClientText client) {
        int saved = 0;
        for (Map.Entry<PartKey, Content> part : client.parts().entrySet()) {
            long base = there.part(part.getKey()).map(Part::version).orElse(0L);
            SaveResult result = record.clients().save(there.key(), part.getKey(), base, part.getValue(), store.who());
            if (!(result instanceof SaveResult.Saved done)) {
                throw BadInput.because(
                        client.id(),
                        "Somebody saved " + part.getKey() + " at the same time",
                        "Both are kept; look at them at the desk");
            }
            saved += done.version() > base ? 1 : 0;
        }
        return saved;
    }
}
