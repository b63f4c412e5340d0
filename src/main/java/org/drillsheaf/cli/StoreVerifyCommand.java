package org.drillsheaf.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillsheaf.Problems;
import org.drillsheaf.course.FrozenPaper;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.ClientSummary;
import org.drillsheaf.store.record.Documents;
import org.drillsheaf.store.record.HandedOut;
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

    @Option(
            names = "--redraw",
            description =
                    "Also draw every paper that this version handed out once more from its frozen inputs, and compare.")
    private boolean redraw;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        try (Store record = store.open()) {
            Verification found = verify(record);
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
            boolean same = !redraw || redraw(record, out);
            return found.isWhole() && same ? ExitCode.DONE : ExitCode.CANNOT;
        }
    }

    private static Verification verify(Store record) {
        try (RowBar bar = new RowBar("Verifying")) {
            return record.verify(bar);
        }
    }

    private static boolean redraw(Store record, PrintWriter out) {
        int same = 0;
        boolean whole = true;
        for (ClientSummary client : record.clients().list()) {
            for (HandedOut document : record.documents().list(client.key())) {
                if (!document.drawnBy().equals(Drillsheaf.version())) {
                    continue; // another version drew it: only the stored file is promised
                }
                if (isDrawnAlike(record, document)) {
                    same++;
                } else {
                    whole = false;
                    out.println("The paper " + document.key() + " is drawn differently now; the stored file is right.");
                }
            }
        }
        out.println(same + (same == 1 ? " paper" : " papers") + " drawn again, byte for byte the same.");
        return whole;
    }

    private static boolean isDrawnAlike(Store record, HandedOut document) {
        try {
            Optional<FrozenPaper> frozen = FrozenPaper.of(record.documents().inputs(document));
            Optional<byte[]> pdf =
                    frozen.isEmpty() ? Optional.empty() : frozen.get().draw(new Problems());
            return pdf.map(Documents::hash).equals(Optional.of(document.pdfHash()));
        } catch (IOException e) {
            throw BadInput.because(
                    System.getProperty("java.io.tmpdir", ""), "Temporary files cannot be written", "Free some space");
        }
    }
}
