package org.drillsheaf.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;

/** Takes the catalogue out as one file and brings it back. */
@Command(
        name = "catalogue",
        mixinStandardHelpOptions = true,
        description = "Exports the catalogue as one file, or imports one.",
        subcommands = {CatalogueExportCommand.class, CatalogueImportCommand.class})
final class CatalogueCommand implements Runnable {
    @CommandLine.Spec
    private CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
