package org.drillsheaf.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Documents;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.handout.DocumentMaker;
import org.drillsheaf.handout.DocumentOrder;
import org.drillsheaf.handout.DocumentSetting;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.program.Program;

/**
 * Prints any number of program files, as many at a time as there are cores. Each is read, printed, written and let go, so
 * that a thousand need no more room than a few. One that cannot be printed is told and left out.
 *
 * @param clients folder with the clients' files; empty for the folder of the program
 * @param house what stands in the templates, the phrases and the house style, as a checksum
 * @param setting by the client's own setting, what was asked for on the command line
 */
record PrintBatch(
        Knowledge knowledge,
        DocumentMaker maker,
        Optional<Path> clients,
        List<DocumentKind> kinds,
        List<Optional<String>> languages,
        java.util.function.UnaryOperator<DocumentSetting> setting,
        String house,
        PrintRecord record) {

    /** How it went. */
    record Outcome(int printed, int finishedBefore, List<Problem> problems, int left) {}

    /** @param step called after each program, from any thread */
    Outcome print(List<Path> programs, int threads, Runnable step) {
        Map<String, Path> names = new LinkedHashMap<>();
        List<Path> wanted = new ArrayList<>();
        Tally tally = new Tally();
        for (Path program : programs) {
            Path other = names.putIfAbsent(name(program), program);
            if (other == null) {
                wanted.add(program);
            } else {
                tally.leave(List.of(Problem.error(
                        program.toString(),
                        0,
                        "It would be printed over the papers of " + other,
                        "Give the files different names, or print them into different folders")));
                step.run();
            }
        }
        AtomicInteger next = new AtomicInteger();
        each(threads, () -> {
            for (int at = next.getAndIncrement(); at < wanted.size(); at = next.getAndIncrement()) {
                one(wanted.get(at), tally);
                step.run();
            }
        });
        return tally.outcome();
    }

    private static void each(int threads, Runnable work) {
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        try {
            List<Future<?>> running = new ArrayList<>();
            for (int i = 0; i < threads; i++) {
                running.add(workers.submit(work));
            }
            for (Future<?> future : running) {
                future.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (java.util.concurrent.ExecutionException e) {
            throw new IllegalStateException("a print worker broke", e.getCause());
        } finally {
            workers.shutdownNow();
        }
    }

    private void one(Path file, Tally tally) {
        try {
            String text = TextFile.read(file);
            Program program = ProgramFile.read(file.toString(), text, knowledge.catalogue());
            Path client = client(file, program);
            byte[] input = (PrintRecord.sum(bytes(text), bytes(TextFile.read(client))) + house)
                    .getBytes(StandardCharsets.UTF_8);
            Optional<DocumentOrder> order = Optional.empty();
            for (DocumentKind kind : kinds) {
                for (Optional<String> language : languages) {
                    String paper = name(file) + "-" + (kind == DocumentKind.CLIENT_HANDOUT ? "handout" : kind.id())
                            + language.map(l -> "-" + l).orElse("") + ".pdf";
                    String sum = PrintRecord.sum(input, bytes(kind.id() + language), bytes(asked(language)));
                    if (record.isFinished(paper, sum)) {
                        tally.finishedBefore();
                        continue;
                    }
                    DocumentOrder whole = order.isPresent() ? order.get() : order(client, program);
                    order = Optional.of(whole);
                    Problems problems = new Problems();
                    DocumentOrder mine =
                            whole.with(setting.apply(whole.setting()).inLanguage(language));
                    Optional<byte[]> pdf = maker.print(kind, mine, problems);
                    BadInput.stopAtErrors(problems);
                    record.finish(paper, sum, pdf.orElseThrow());
                    tally.printed();
                }
            }
        } catch (BadInput e) {
            tally.leave(e.problems().stream().map(p -> inFile(file, p)).toList());
        }
    }

    /** Everything of the command line that reaches the page. */
    private String asked(Optional<String> language) {
        DocumentSetting one =
                new DocumentSetting(language, org.drillsheaf.client.Paper.A4, Optional.empty(), Optional.empty());
        return setting.apply(one) + ""
                + setting.apply(one.on(org.drillsheaf.client.Paper.LETTER).large(Optional.of(false)));
    }

    private Path client(Path file, Program program) {
        Path beside = Optional.ofNullable(file.getParent()).orElse(Path.of("."));
        Path client = clients.orElse(beside).resolve(program.client() + ".yaml");
        if (!program.client().matches("[a-z0-9]+(-[a-z0-9]+)*") || !Files.isRegularFile(client)) {
            throw BadInput.because(
                    file.toString(),
                    "The file of its client, " + program.client() + ".yaml, is not in " + clients.orElse(beside),
                    "Name the folder with --clients");
        }
        return client;
    }

    private DocumentOrder order(Path client, Program program) {
        Course course = Course.of(HouseData.visits(client, Optional.of(program.date()), knowledge), knowledge);
        if (!course.last().visit().reading().safety().isClear()) {
            throw BadInput.because(
                    client.toString(),
                    "A safety answer of " + program.date() + " stands against this program",
                    "Build again; it prints the referral note");
        }
        return Documents.order(course, Optional.empty(), Optional.of(program));
    }

    private static Problem inFile(Path file, Problem problem) {
        return problem.file().equals(file.toString())
                ? problem
                : Problem.error(file.toString(), 0, problem.what() + " (" + problem.file() + ")", problem.remedy());
    }

    private static String name(Path program) {
        return program.getFileName().toString().replaceAll("(-program)?\\.ya?ml$", "");
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Counts from several threads. */
    private static final class Tally {
        private int printed;
        private int before;
        private int left;
        private final List<Problem> problems = new ArrayList<>();

        synchronized void printed() {
            printed++;
        }

        synchronized void finishedBefore() {
            before++;
        }

        synchronized void leave(List<Problem> why) {
            left++;
            problems.addAll(why);
        }

        synchronized Outcome outcome() {
            List<Problem> sorted = new ArrayList<>(problems);
            sorted.sort(java.util.Comparator.comparing(Problem::file));
            return new Outcome(printed, before, List.copyOf(sorted), left);
        }
    }
}
