package org.drillsheaf.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Paper;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.handout.DocumentMaker;
import org.drillsheaf.handout.DocumentSetting;
import org.drillsheaf.store.Store;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints programs that were built before, one or a thousand. */
@Command(
        name = "print",
        mixinStandardHelpOptions = true,
        description = "Prints documents of programs that “build” has written.",
        footer = {
            "",
            "A run that was broken off goes on where it stopped when it is started again.",
            "Exit codes: 0 all printed, 2 something in the input is wrong (the others are printed all the same)."
        })
final class PrintCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private StoreOption store = new StoreOption();

    @Parameters(
            paramLabel = "<program.yaml>",
            arity = "0..*",
            description = "Program files; with --store ids or names of clients of the record.")
    private List<String> programs = List.of();

    @Option(
            names = "--visit",
            paramLabel = "<date>",
            description = "With --store: the visit whose program is printed; the last one by default.")
    private @Nullable LocalDate visit;

    @Option(
            names = "--program",
            paramLabel = "<n>",
            description = "With --store: the version of the program; the newest by default.")
    private @Nullable Integer version;

    @Option(names = "--out", required = true, paramLabel = "<dir>", description = "Folder for the papers.")
    private Path out;

    @Option(
            names = "--clients",
            paramLabel = "<dir>",
            description = "Folder with the clients' files; by default that of each program.")
    private @Nullable Path clients;

    @Option(
            names = "--language",
            paramLabel = "<tag>",
            split = ",",
            description = "Language of the papers, for example es; the client's own by default.")
    private List<String> languages = List.of();

    @Option(names = "--catalogue", description = "The book of all drills, for the clinic, instead of programs.")
    private boolean catalogue;

    @Option(
            names = "--large",
            description = "Large print, whatever the client's file says; papers of the coach have it only so.")
    private boolean large;

    @Option(names = "--paper", paramLabel = "<A4|Letter>", description = "Paper; the client's own by default.")
    private @Nullable String paper;

    @CommandLine.Mixin
    private PapersOption asked = new PapersOption();

    @Override
    public Integer call() {
        PrintWriter terminal = spec.commandLine().getOut();
        Optional<Paper> sheet = paper();
        Folders folders = HouseData.folders();
        Knowledge knowledge = HouseData.knowledge(folders);
        TextFile.makeFolder(out);
        if (catalogue) {
            return catalogue(terminal, folders, knowledge, sheet);
        } else if (programs.isEmpty()) {
            throw BadInput.because("print", "No program is named", "Name program files, or ask for --catalogue");
        }
        List<Optional<String>> wanted = new ArrayList<>();
        languages.forEach(tag -> wanted.add(Optional.of(language(folders, tag))));
        List<Optional<String>> tags = wanted.isEmpty() ? List.of(Optional.empty()) : wanted;
        if (store.isNamed()) {
            return fromRecord(new RecordPrint(
                    folders,
                    knowledge,
                    Papers.maker(folders, knowledge),
                    asked.documents(),
                    tags,
                    own -> setting(own, sheet).signedBy(own.signedBy()),
                    out));
        }
        PrintBatch batch = new PrintBatch(
                knowledge,
                Papers.maker(folders, knowledge),
                Optional.ofNullable(clients),
                asked.documents(),
                tags,
                own -> setting(own, sheet),
                house(folders),
                new PrintRecord(out));
        int threads = Math.max(1, Math.min(Runtime.getRuntime().availableProcessors(), programs.size()));
        PrintBatch.Outcome outcome = withBar(batch, threads);
        outcome.problems().forEach(p -> spec.commandLine().getErr().println(p.message()));
        terminal.println(summary(outcome));
        return outcome.left() == 0 ? ExitCode.DONE : ExitCode.BAD_INPUT;
    }

    private Integer fromRecord(RecordPrint print) {
        int again = 0;
        int anew = 0;
        try (Store record = store.open()) {
            for (String client : programs) {
                RecordPrint.Outcome outcome = print.print(
                        new OpenRecord(record, RecordClients.one(record, client), store.who()),
                        new RecordPrint.Wanted(Optional.ofNullable(visit), Optional.ofNullable(version)),
                        asked.signedBy());
                again += outcome.again();
                anew += outcome.anew();
            }
        }
        spec.commandLine().getOut().println("Printed " + (again + anew) + "; handed out before: " + again + ".");
        return ExitCode.DONE;
    }

    private int catalogue(PrintWriter terminal, Folders folders, Knowledge knowledge, Optional<Paper> sheet) {
        terminal.println("Drawing the pictures and printing …");
        terminal.flush();
        DocumentMaker maker = Papers.maker(folders, knowledge);
        Map<Path, byte[]> books = new LinkedHashMap<>();
        for (String language : languages.isEmpty() ? List.of("en") : languages) {
            Problems problems = new Problems();
            DocumentSetting setting = new DocumentSetting(
                    Optional.of(language(folders, language)),
                    sheet.orElse(Paper.A4),
                    Optional.of(large),
                    Optional.empty());
            Optional<byte[]> book = maker.printCatalogue(setting, problems);
            BadInput.stopAtErrors(problems);
            books.put(
                    out.resolve("catalogue-book" + (language.equals("en") ? "" : "-" + language) + ".pdf"),
                    book.orElseThrow());
        }
        books.forEach(TextFile::write);
        books.keySet().forEach(file -> terminal.println("Wrote " + file));
        return ExitCode.DONE;
    }

    private PrintBatch.Outcome withBar(PrintBatch batch, int threads) {
        List<Path> files = programs.stream().map(Path::of).toList();
        if (System.console() == null || programs.size() < 2) {
            return batch.print(files, threads, () -> {});
        }
        try (ProgressBar bar = new ProgressBarBuilder()
                .setTaskName("Printing")
                .setInitialMax(programs.size())
                .setStyle(ProgressBarStyle.ASCII)
                .build()) {
            return batch.print(files, threads, bar::step);
        }
    }

    private static String summary(PrintBatch.Outcome outcome) {
        StringBuilder text = new StringBuilder("Printed " + outcome.printed());
        if (outcome.finishedBefore() > 0) {
            text.append(", ").append(outcome.finishedBefore()).append(" were finished before");
        }
        if (outcome.left() > 0) {
            text.append("; ")
                    .append(outcome.left())
                    .append(outcome.left() == 1 ? " program was" : " programs were")
                    .append(" not printed whole");
        }
        return text.append('.').toString();
    }

    private DocumentSetting setting(DocumentSetting own, Optional<Paper> sheet) {
        return own.on(sheet.orElse(own.paper()))
                .large(large ? Optional.of(true) : own.large())
                .signedBy(asked.signedBy());
    }

    private Optional<Paper> paper() {
        if (paper == null) {
            return Optional.empty();
        }
        String word = paper;
        return Optional.of(Stream.of(Paper.values())
                .filter(p -> p.name().equalsIgnoreCase(word))
                .findFirst()
                .orElseThrow(() -> BadInput.because("--paper", "There is no paper “" + word + "”", "A4 or Letter")));
    }

    private static String language(Folders folders, String tag) {
        boolean known = tag.matches("[A-Za-z-]{2,12}")
                && Files.exists(folders.templates().resolve("messages").resolve(tag + ".yaml"));
        if (!known) {
            throw BadInput.because(
                    "--language", "There are no phrases for the language “" + tag + "”", "See templates/messages");
        }
        return tag;
    }

    /** One checksum over everything that gives all papers their look and their fixed words. */
    private static String house(Folders folders) {
        StringBuilder all = new StringBuilder(new Drillsheaf.Version().getVersion()[0]);
        try (Stream<Path> files = Files.walk(folders.home().resolve("templates"));
                Stream<Path> shared = Files.list(folders.home().resolve("shared"))) {
            List<Path> read = new ArrayList<>(Stream.concat(files, shared)
                    .filter(Files::isRegularFile)
                    .sorted()
                    .toList());
            try (Stream<Path> style = Files.list(folders.house().resolveSibling(""))) {
                style.filter(Files::isRegularFile).sorted().forEach(read::add);
            }
            for (Path file : read) {
                all.append(PrintRecord.sum(Files.readAllBytes(file)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the templates cannot be listed", e);
        }
        return PrintRecord.sum(all.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
}
