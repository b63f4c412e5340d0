package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.ClientSummary;
import org.drillsheaf.store.record.DrillRevision;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;

/** Looks for clients and drills by the beginnings of words. */
@Command(
        name = "find",
        mixinStandardHelpOptions = true,
        description =
                "Finds clients and drills in the record by the beginnings of words, without minding accents, capitals and their"
                        + " order. Of a drill it tells every edition that was ever kept.",
        footer = {"", "Try: drillsheaf store find odile", "     drillsheaf store find heel sli"})
final class StoreFindCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private StoreOption store = new StoreOption();

    @CommandLine.Option(
            names = "--most",
            paramLabel = "<number>",
            defaultValue = "20",
            description = "How many clients, and how many drills, at most; 20 by default.")
    private int most;

    @CommandLine.Parameters(
            arity = "1..*",
            paramLabel = "<word>",
            description =
                    "Beginnings of words: of a client's name, id, coach or year of birth, of a drill's name in any language.")
    private List<String> words = List.of();

    @Override
    public Integer call() {
        if (most < 1) {
            throw new CommandLine.ParameterException(spec.commandLine(), "--most: at least 1, not " + most + ".");
        }
        PrintWriter out = spec.commandLine().getOut();
        String typed = String.join(" ", words);
        try (Store record = store.open()) {
            List<ClientSummary> clients = record.search().clients(typed, most);
            List<String> drills = record.search().drills(typed, most);
            clients.forEach(client -> out.println(line(client)));
            drills.forEach(drill -> tell(record.drills().revisions(drill), out));
            if (clients.isEmpty() && drills.isEmpty()) {
                out.println("Nobody and no drill in the record is called “" + typed + "”.");
                return ExitCode.CANNOT;
            }
        }
        return ExitCode.DONE;
    }

    private static String line(ClientSummary client) {
        return String.format(
                Locale.ROOT,
                "client  %s: %s, born %s, coach %s%s",
                client.id(),
                client.name(),
                client.born(),
                client.coach(),
                client.lastVisit().map(day -> ", last visit " + day).orElse(""));
    }

    private static void tell(List<DrillRevision> editions, PrintWriter out) {
        for (DrillRevision edition : editions) {
            out.println("drill   " + edition.drill() + ": "
                    + (edition.origin() == DrillRevision.Origin.HOUSE ? "house " : "")
                    + "version " + edition.revision() + ", kept "
                    + edition.savedAt().atOffset(ZoneOffset.UTC).toLocalDate() + " by " + edition.savedBy());
        }
    }
}
