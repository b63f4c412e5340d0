package org.drillsheaf.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes an empty record. */
@Command(
        name = "create",
        mixinStandardHelpOptions = true,
        description = "Makes a new record: an encrypted file, or the tables in an empty PostgreSQL database.")
final class StoreCreateCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "<record>",
            description = "The file or the server's address; the file of this user by default.")
    private @Nullable String record;

    @Option(
            names = "--passphrase-file",
            paramLabel = "<file>",
            description = "File whose first line is the passphrase; nobody else may read it. Without it you are asked.")
    private @Nullable Path passphraseFile;

    @Override
    public Integer call() {
        StoreAddress address = record == null ? new StoreOption().address() : StoreAddress.of(record);
        Optional<Path> file = Optional.ofNullable(passphraseFile);
        if (address instanceof StoreAddress.File made) {
            TextFile.makeFolder(made.folder());
        }
        try (Passphrase passphrase = address instanceof StoreAddress.File
                        ? PassphraseSource.fresh(file, "A passphrase for " + address.shown())
                        : StoreOption.passphrase(address, file);
                Store store = Store.create(address, passphrase, Clock.systemUTC())) {
            spec.commandLine()
                    .getOut()
                    .println("Made an empty record: " + store.address().shown());
            if (address instanceof StoreAddress.File) {
                spec.commandLine()
                        .getOut()
                        .println("Nobody can open it without the passphrase, and nobody can bring a lost one back.");
            }
        }
        return ExitCode.DONE;
    }
}
