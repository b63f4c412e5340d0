package org.drillsheaf.cli;

import java.io.Console;
import java.io.PrintWriter;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.Erasure;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Erases a client for good. */
@Command(
        name = "erase-client",
        mixinStandardHelpOptions = true,
        description =
                "Erases a client with every version and paper. The audit keeps that it happened, not what it held.")
final class StoreEraseCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private StoreOption store = new StoreOption();

    @Parameters(paramLabel = "<client>", description = "Id of the client.")
    private String client;

    @Option(names = "--yes", paramLabel = "<id>", description = "The id once more, instead of being asked.")
    private @Nullable String yes;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        try (Store record = store.open()) {
            UUID key = RecordClients.withId(record, client);
            if (!client.equals(yes == null ? ask() : yes)) {
                throw BadInput.because(client, "Nobody was erased: the id was not repeated", "Write --yes " + client);
            }
            Erasure erasure = record.erase(key, store.who());
            out.println("Erased the client that had the key " + key);
            out.println(
                    record.backups().folder().isEmpty()
                            ? "Ask whoever runs the server how long its backups are kept."
                            : "Earlier backups hold the client until "
                                    + record.backups().heldUntil(erasure.at())
                                    + " at the latest; a restore erases the client again.");
        }
        return ExitCode.DONE;
    }

    private String ask() {
        Console console = System.console();
        return console == null ? "" : console.readLine("This cannot be undone. The id once more: ");
    }
}
