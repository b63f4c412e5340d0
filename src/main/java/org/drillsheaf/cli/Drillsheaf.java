package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.drillsheaf.desk.DeskLaunch;
import org.drillsheaf.store.sql.StoreFailure;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program's front door: reads the arguments, hands over to one command, and turns what went wrong into one line. */
@Command(
        name = "drillsheaf",
        description = "Screens a client, builds a phased exercise program and prints an illustrated handout.",
        versionProvider = Drillsheaf.Version.class,
        mixinStandardHelpOptions = true,
        subcommands = {
            BuildCommand.class,
            ReadCommand.class,
            DrawCommand.class,
            CheckCommand.class,
            PrintCommand.class,
            CatalogueCommand.class,
            DeskCommand.class,
            StoreCommand.class
        },
        footer = {
            "",
            "Exit codes: 0 done, 1 cannot be done (the reason is printed), 2 something in the input is wrong.",
            "",
            "Try: drillsheaf build samples/clients/odile-farrant.yaml --out out"
        })
public final class Drillsheaf implements Runnable {

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    public static void main(String[] arguments) {
        Locale.setDefault(Locale.ROOT); // numbers on the terminal and in files must not depend on the machine
        // Whichever transformer lies on the class path, printing takes the one of the JDK: another one can cost four
        // times the time.
        System.setProperty(
                "javax.xml.transform.TransformerFactory",
                "com.sun.org.apache.xalan.internal.xsltc.trax.TransformerFactoryImpl");
        // Without a command the window opens, where there is a display for it.
        String[] asked = arguments.length == 0 && DeskLaunch.hasDisplay() ? new String[] {"desk"} : arguments;
        System.exit(run(
                new PrintWriter(System.out, true, StandardCharsets.UTF_8),
                new PrintWriter(System.err, true, StandardCharsets.UTF_8),
                asked));
    }

    /** Runs one command and gives its exit code; what a test calls. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine line = new CommandLine(new Drillsheaf());
        line.setOut(out);
        line.setErr(err);
        line.setExecutionExceptionHandler((failure, command, parsed) -> {
            if (failure instanceof BadInput bad) {
                bad.problems().forEach(p -> err.println(p.message()));
                return ExitCode.BAD_INPUT;
            }
            if (failure instanceof StoreFailure record) {
                err.println(record.problem().message());
                return ExitCode.of(record);
            }
            throw failure;
        });
        int code = line.execute(arguments);
        out.flush();
        err.flush();
        return code;
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    /** The version of this program, for example {@code 0.1.0}. */
    static String version() {
        String version = Drillsheaf.class.getPackage().getImplementationVersion();
        return version == null ? "(development build)" : version;
    }

    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"Drillsheaf " + version()};
        }
    }
}
