package org.drillsheaf.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import org.drillsheaf.store.Store;
import picocli.CommandLine;
import picocli.CommandLine.Parameters;

/** Lets a command name its client: a file, or a client of the record. */
final class ClientOption {
    @CommandLine.Mixin
    private StoreOption store = new StoreOption();

    @Parameters(
            paramLabel = "<client>",
            description = "The client's file; with --store the id or the name of a client of the record.")
    private String client;

    /** Reads the file, or opens the record; close it. */
    ClientAtWork open() {
        if (!store.isNamed()) {
            try {
                return new ClientAtWork(client, TextFile.read(Path.of(client)), Optional.empty());
            } catch (InvalidPathException e) {
                throw BadInput.because(client, "This is no name of a file", "Name a YAML file");
            }
        }
        Store record = store.open();
        try {
            UUID key = RecordClients.one(record, client);
            return ClientAtWork.of(new OpenRecord(record, key, store.who()));
        } catch (RuntimeException e) {
            record.close();
            throw e;
        }
    }
}
