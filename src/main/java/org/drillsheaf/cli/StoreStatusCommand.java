package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.Erasure;
import org.drillsheaf.store.upkeep.Backup;
import org.drillsheaf.store.upkeep.BackupPlan;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;

/** Says what the record holds and how well it is looked after. */
@Command(
        name = "status",
        mixinStandardHelpOptions = true,
        description = "Says what the record holds, which backups there are, and until when they hold erased clients.")
final class StoreStatusCommand implements Callable<Integer> {
    private static final Map<String, String> WORDS = Map.of(
            "client", "clients",
            "client_part_version", "versions of their parts",
            "clash", "clashes to settle",
            "program", "versions of programs",
            "document", "papers handed out",
            "drill_revision", "editions of drills",
            "audit", "entries in the audit");

    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private StoreOption store = new StoreOption();

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        try (Store record = store.open()) {
            out.println("Record: " + record.address().shown());
            record.counts().forEach((table, count) -> {
                if (WORDS.containsKey(table)) {
                    out.printf(Locale.ROOT, "%9d %s%n", count, WORDS.get(table));
                }
            });
            backups(record, out);
            erased(record, out);
        }
        return ExitCode.DONE;
    }

    private static void backups(Store record, PrintWriter out) {
        if (record.backups().folder().isEmpty()) {
            out.println("Backups: made by whoever runs the server");
            return;
        }
        List<Backup> backups = record.backups().list();
        BackupPlan plan = record.backups().plan();
        out.println("Backups: one every " + plan.everyMinutes() + " minutes of use; the newest " + plan.newest()
                + " are kept, one a day for " + plan.days() + " days, one a week for " + plan.weeks() + " weeks");
        if (backups.isEmpty()) {
            out.println("  none yet; “store backup” makes one");
        }
        for (Backup backup : backups) {
            out.printf(
                    Locale.ROOT,
                    "  %s  %,d kB  %s%n",
                    backup.made(),
                    (backup.bytes() + 1023) / 1024,
                    backup.address().shown());
        }
    }

    private static void erased(Store record, PrintWriter out) {
        for (Erasure erasure : record.erasures()) {
            LocalDate day = erasure.at().atOffset(ZoneOffset.UTC).toLocalDate();
            String until = record.backups().folder().isEmpty()
                    ? "; the server's own backups may hold them longer"
                    : ", in older backups until " + record.backups().heldUntil(erasure.at());
            out.println("Erased " + day + " by " + erasure.by() + ": client " + erasure.client() + until);
        }
    }
}
