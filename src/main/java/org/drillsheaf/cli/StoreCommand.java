package org.drillsheaf.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;

/** Everything that is done to the record as a whole. */
@Command(
        name = "store",
        mixinStandardHelpOptions = true,
        description = "Keeps the record: makes it, checks it, backs it up, moves it.",
        subcommands = {
            StoreCreateCommand.class,
            StoreAddCommand.class,
            StoreStatusCommand.class,
            StoreFindCommand.class,
            StoreVerifyCommand.class,
            StoreBackupCommand.class,
            StoreRestoreCommand.class,
            StorePassphraseCommand.class,
            StoreCopyCommand.class,
            StoreExportCommand.class,
            StoreEraseCommand.class
        },
        footer = {
            "",
            "Unless --store names another, the record is record.mv.db in the folder drillsheaf of your data folder:"
                    + " $XDG_DATA_HOME or ~/.local/share on Linux, ~/Library/Application Support on a Mac, %%APPDATA%% on"
                    + " Windows. Its backups lie beside it, in record-backups.",
            "",
            "Exit codes: 0 done, 1 the record cannot be used (the reason and the steps that help are printed), 2 bad"
                    + " input."
        })
final class StoreCommand implements Runnable {
    @CommandLine.Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
