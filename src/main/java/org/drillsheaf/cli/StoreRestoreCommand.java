package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.upkeep.Backup;
import org.drillsheaf.store.upkeep.BackupFolder;
import org.drillsheaf.store.upkeep.Restoring;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;

/** Takes a backup back. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        description =
                "Puts a backup in the record's place. The backup is checked first, clients that were erased since are"
                        + " erased again, and the file that was there is set aside, not removed. The passphrase is the"
                        + " backup's.")
final class StoreRestoreCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private StoreOption store = new StoreOption();

    @Parameters(arity = "0..1", paramLabel = "<backup>", description = "The backup's file; the newest by default.")
    private @Nullable Path backup;

    @Override
    public Integer call() {
        StoreAddress.File record = store.file("restore");
        StoreAddress.File from = backup == null ? newest(record) : new StoreAddress.File(backup);
        Restoring.Outcome outcome;
        try (Passphrase passphrase = store.passphrase()) {
            outcome = new Restoring(record, Clock.systemUTC()).restore(from, passphrase, store.who());
        }
        PrintWriter out = spec.commandLine().getOut();
        out.println("Restored " + record.shown() + " from " + from.shown());
        if (outcome.erasedAgain() > 0) {
            out.println(
                    "Erased again: " + outcome.erasedAgain() + (outcome.erasedAgain() == 1 ? " client" : " clients"));
        }
        outcome.aside()
                .ifPresent(aside -> out.println("The file that was there is now " + aside
                        + "; remove it when nothing in it is missed, it may hold clients that were erased since"));
        return ExitCode.DONE;
    }

    private static StoreAddress.File newest(StoreAddress.File record) {
        Optional<Backup> newest = new BackupFolder(record).list().stream().findFirst();
        return newest.map(Backup::address)
                .orElseThrow(() -> BadInput.because(
                        record.shown(), "There is no backup beside this record", "Name the backup's file"));
    }
}
