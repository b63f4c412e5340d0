package org.drillsheaf.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.House;
import org.drillsheaf.store.upkeep.Backup;
import org.drillsheaf.store.upkeep.BackupPlan;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Makes a backup now. */
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        description =
                "Makes a backup beside the record, proves it by opening it, and lets those go that are kept no longer.")
final class StoreBackupCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private StoreOption store = new StoreOption();

    @Option(
            names = "--every",
            paramLabel = "<minutes>",
            description = "From now on: minutes of use between two backups.")
    private @Nullable Integer every;

    @Option(names = "--newest", paramLabel = "<n>", description = "From now on: so many of the newest are kept.")
    private @Nullable Integer newest;

    @Option(names = "--days", paramLabel = "<n>", description = "From now on: one of each day is kept so long.")
    private @Nullable Integer days;

    @Option(names = "--weeks", paramLabel = "<n>", description = "From now on: one of each week is kept so long.")
    private @Nullable Integer weeks;

    @Override
    public Integer call() {
        store.file("backup");
        try (Store record = store.open()) {
            plan(record);
            Backup backup = record.backups().make();
            spec.commandLine()
                    .getOut()
                    .println("Made and opened a backup: " + backup.address().shown());
        }
        return ExitCode.DONE;
    }

    private void plan(Store record) {
        BackupPlan old = record.backups().plan();
        BackupPlan plan;
        try {
            plan = new BackupPlan(
                    every == null ? old.everyMinutes() : every,
                    newest == null ? old.newest() : newest,
                    days == null ? old.days() : days,
                    weeks == null ? old.weeks() : weeks);
        } catch (IllegalArgumentException e) {
            throw BadInput.because("backup", "This plan cannot be kept: " + e.getMessage(), "Choose another number");
        }
        if (!plan.equals(old)) {
            long version = Optional.ofNullable(record.house().settings().get(BackupPlan.SETTING))
                    .map(House.Setting::version)
                    .orElse(0L);
            record.house().save(new House.Setting(BackupPlan.SETTING, plan.text(), version), store.who());
        }
    }
}
