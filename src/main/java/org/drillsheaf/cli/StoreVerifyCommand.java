package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.upkeep.TableSum;
import org.drillsheaf.store.upkeep.Verification;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Reads all of a record and says whether it is whole. */
@Command(
        name = "verify",
        mixinStandardHelpOptions = true,
        description =
                "Reads every row, follows the audit from its first entry, and holds every paper against its hash.")
final class StoreVerifyCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private StoreOption store = new StoreOption();

    @Option(names = "--sums", description = "Print the count and the checksum of every table.")
    private boolean sums;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        try (Store record = store.open();
                RowBar bar = new RowBar("Verifying")) {
            Verification found = record.verify(bar);
            if (sums) {
                for (TableSum sum : found.tables()) {
                    out.printf(Locale.ROOT, "%-20s %9d  %s%n", sum.table(), sum.rows(), sum.sum());
                }
            }
            found.faults().forEach(out::println);
            long rows = found.tables().stream().mapToLong(TableSum::rows).sum();
            out.println(
                    found.isWhole()
                            ? "The record is whole: " + rows + " rows read."
                            : "The record is not whole. Leave it as it is, and restore the newest backup.");
            return found.isWhole() ? ExitCode.DONE : ExitCode.CANNOT;
        }
    }
}
