package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.upkeep.Restoring;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Gives a record's file another passphrase. */
@Command(
        name = "passphrase",
        mixinStandardHelpOptions = true,
        description = "Writes the record anew under another passphrase; backups made before keep the old one.")
final class StorePassphraseCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private StoreOption store = new StoreOption();

    @Option(
            names = "--new-passphrase-file",
            paramLabel = "<file>",
            description = "File whose first line is the new passphrase; nobody else may read it. Without it you are"
                    + " asked.")
    private @Nullable Path freshFile;

    @Override
    public Integer call() {
        StoreAddress.File record = store.file("passphrase");
        Path aside;
        try (Passphrase old = store.passphrase();
                Passphrase fresh = PassphraseSource.fresh(Optional.ofNullable(freshFile), "New passphrase")) {
            aside = new Restoring(record, Clock.systemUTC()).changePassphrase(old, fresh, store.who());
        }
        PrintWriter out = spec.commandLine().getOut();
        out.println("The record has its new passphrase: " + record.shown());
        out.println("The file under the old one is now " + aside
                + "; remove it, and old backups too if somebody knows the old passphrase");
        return ExitCode.DONE;
    }
}
