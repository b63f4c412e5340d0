package org.drillsheaf.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.upkeep.TableSum;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Moves a record to another place or engine. */
@Command(
        name = "copy",
        mixinStandardHelpOptions = true,
        description =
                "Copies the whole record into a new file or an empty PostgreSQL database, and compares counts and "
                        + "checksums of every table at the end. The record itself stays as it is.")
final class StoreCopyCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private StoreOption store = new StoreOption();

    @Parameters(paramLabel = "<target>", description = "The new file or the address of the empty database.")
    private String target;

    @Option(
            names = "--target-passphrase-file",
            paramLabel = "<file>",
            description = "File whose first line is the target's passphrase or password; nobody else may read it."
                    + " Without it you are asked.")
    private @Nullable Path targetFile;

    @Override
    public Integer call() {
        StoreAddress to = StoreAddress.of(target);
        Optional<Path> file = Optional.ofNullable(targetFile);
        if (to instanceof StoreAddress.File made) {
            TextFile.makeFolder(made.folder());
        }
        try (Store from = store.open();
                Passphrase passphrase = to instanceof StoreAddress.File
                        ? PassphraseSource.fresh(file, "A passphrase for " + to.shown())
                        : StoreOption.passphrase(to, file)) {
            List<TableSum> sums = copy(from, to, passphrase);
            long rows = sums.stream().mapToLong(TableSum::rows).sum();
            spec.commandLine()
                    .getOut()
                    .println("Copied " + rows + " rows to " + to.shown() + "; counts and checksums of all "
                            + sums.size() + " tables agree.");
        }
        return ExitCode.DONE;
    }

    private List<TableSum> copy(Store from, StoreAddress to, Passphrase passphrase) {
        Store empty = Store.create(to, passphrase, Clock.systemUTC());
        boolean copied = false;
        try (empty;
                RowBar bar = new RowBar("Copying")) {
            List<TableSum> sums = from.copyInto(empty, store.who(), bar);
            copied = true;
            return sums;
        } finally {
            if (!copied && to instanceof StoreAddress.File half) {
                TextFile.removeQuietly(half.file()); // made just now, and of no use to anybody
            }
        }
    }
}
