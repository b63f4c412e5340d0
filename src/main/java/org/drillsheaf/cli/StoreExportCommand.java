package org.drillsheaf.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.drillsheaf.store.Store;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Hands out everything that is kept about one client. */
@Command(
        name = "export-client",
        mixinStandardHelpOptions = true,
        description =
                "Writes everything about one client into one archive that needs no program to be read: a zip with a "
                        + "page to start from. It is not encrypted.")
final class StoreExportCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private StoreOption store = new StoreOption();

    @Parameters(paramLabel = "<client>", description = "Id or name of the client.")
    private String client;

    @Option(names = "--out", required = true, paramLabel = "<file.zip>", description = "The archive.")
    private Path out;

    @Override
    public Integer call() {
        try (Store record = store.open()) {
            UUID key = RecordClients.one(record, client);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            record.archive().write(key, bytes, store.who());
            TextFile.writePrivately(out, bytes.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException("memory cannot fail to be written to", e);
        }
        spec.commandLine().getOut().println("Wrote " + out + "; it is not encrypted, keep it as you keep the record");
        return ExitCode.DONE;
    }
}
