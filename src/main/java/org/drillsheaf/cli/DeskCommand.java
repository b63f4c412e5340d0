package org.drillsheaf.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.desk.DeskLaunch;
import org.drillsheaf.desk.setting.SettingsFile;
import org.drillsheaf.store.sql.StoreAddress;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Opens the window. */
@Command(
        name = "desk",
        mixinStandardHelpOptions = true,
        description = "Opens the window in which a coach goes from screen to handout. Also opens without any command.",
        footer = {"", "Exit codes: 0 the window was closed, 2 no window can be shown; what is missing is printed."})
final class DeskCommand implements Callable<Integer> {
    @Mixin
    private HouseOption house = new HouseOption();

    @Option(
            names = "--settings",
            paramLabel = "<file>",
            description = "What this desk remembers for itself; by default a file of the user's.")
    private @Nullable Path settings;

    @Option(
            names = "--records",
            paramLabel = "<dir>",
            description = "Folder for a new record and for the demo clinic; by default a folder of the user's.")
    private @Nullable Path records;

    @Override
    public Integer call() {
        List<Problem> problems = DeskLaunch.run(
                house.folders(),
                settings == null ? SettingsFile.ofThisUser() : new SettingsFile(settings),
                records == null ? StoreAddress.File.ofUser().folder() : records);
        Problems found = new Problems();
        found.addAll(problems);
        BadInput.stopAtErrors(found);
        return ExitCode.DONE;
    }
}
