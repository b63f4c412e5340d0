package org.drillsheaf.handout.press;

import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.fop.apps.FOUserAgent;
import org.apache.fop.apps.MimeConstants;
import org.apache.fop.render.intermediate.IFContext;
import org.apache.fop.render.intermediate.IFSerializer;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Documents;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.course.Planning;
import org.drillsheaf.handout.DocumentMaker;
import org.drillsheaf.handout.DocumentOrder;
import org.drillsheaf.handout.HandoutFiles;
import org.drillsheaf.handout.HandoutPrinter;
import org.drillsheaf.handout.page.Document;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.handout.paint.Picture;
import org.drillsheaf.program.Program;
import org.drillsheaf.saying.Messages;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;

/**
 * What a warm handout costs, beside the plain pipeline and beside the floor. Read the processor time, not the clock: the
 * collector and the compiler count, other programs on the machine do not. Aims: at most half of the plain pipeline, at most
 * 2.5 times the floor. {@code template}, {@code layout} and {@code blankPictures} split the whole by difference:
 * figures = handout - blankPictures, PDF with fonts and last pass = blankPictures - layout - template.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 15)
@Measurement(iterations = 1, time = 20)
@Fork(1)
public class PressBenchmark {
    private static final String CLIENT = "odile-farrant";

    /** Processor time of the whole process over all documents; divide one by the other. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Work {
        public double cpuMillis;
        public double documents;

        byte[] of(Supplier<byte[]> document) {
            double before = cpuMillisNow();
            byte[] made = document.get();
            cpuMillis += cpuMillisNow() - before;
            documents++;
            return made;
        }
    }

    /** One handout of a sample client with everything ready, its pictures drawn. */
    @State(Scope.Benchmark)
    public static class Handout {
        Press press;
        Document document;
        Function<String, Messages> messages;
        Press.FilledPage page;
        Press.FilledPage blank;
        String inline;
        final PlainPipeline plain = new PlainPipeline();
        MarksOnly marks;
        byte[] raw;
        DocumentMaker maker;
        DocumentOrder order;
        private final Workbench bench = new Workbench(new FontFiles(), new InkMemory());

        @Setup
        public void prepare() throws IOException {
            Problems problems = new Problems();
            Folders folders = Folders.ofThisProgram(problems).orElseThrow();
            Knowledge knowledge = Knowledge.read(folders, problems).orElseThrow();
            Path file = Path.of("samples", "clients", CLIENT + ".yaml");
            List<ClientVisit> visits = YamlNode.parse(file.toString(), Files.readString(file), problems)
                    .flatMap(root -> ClientVisit.readAll(root, Optional.empty(), knowledge, problems))
                    .orElseThrow();
            Course course = Course.of(visits, knowledge);
            Planning planning = Planning.along(course, knowledge);
            maker = Documents.maker(folders, knowledge, problems).orElseThrow();
            order = Documents.order(course, Optional.of(planning.needs()), Optional.of((Program) planning.result()));
            document = maker.make(DocumentKind.CLIENT_HANDOUT, order, problems).orElseThrow();
            HandoutPrinter printer = HandoutFiles.load(
                            folders.templates(), folders.house(), folders.schema("house"), problems)
                    .orElseThrow();
            messages = printer::messagesFor;
            press = new Press(templates(folders.templates()), printer.house());
            page = press.fill(document, messages, problems).orElseThrow();
            blank = new Press.FilledPage(page.template(), page.text(), blankOf(page), page.created());
            inline = PlainPipeline.withInlinePictures(page);
            byte[] pdf = press.set(page, problems).orElseThrow();
            marks = new MarksOnly(pdf);
            System.out.printf(
                    "%n%s: %d kB page description, %d kB with pictures; PDF %d kB, plain %d kB, floor %d kB with %d marks%n",
                    CLIENT,
                    page.text().length() / 1000,
                    inline.length() / 1000,
                    pdf.length / 1000,
                    plain.print(inline).length / 1000,
                    marks.write().length / 1000,
                    marks.marks());
        }

        private static Map<String, String> templates(Path folder) throws IOException {
            Map<String, String> templates = new HashMap<>();
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file :
                        files.filter(f -> f.toString().endsWith(".ftlx")).toList()) {
                    templates.put(file.getFileName().toString(), Files.readString(file));
                }
            }
            return templates;
        }

        /** Sets the lines and pages and goes no further: no pictures, no fonts in it, no PDF. */
        void layOut() {
            try {
                FOUserAgent agent = bench.agentFor(blank.pictures());
                agent.getEventBroadcaster().addEventListener(event -> {});
                IFSerializer marks = new IFSerializer(new IFContext(agent));
                marks.mimicDocumentHandler(
                        agent.getRendererFactory().createDocumentHandler(agent, MimeConstants.MIME_PDF));
                agent.setDocumentHandlerOverride(marks);
                XMLReader reader = PageSetter.reader();
                reader.setContentHandler(
                        bench.toPdf(agent, OutputStream.nullOutputStream()).getDefaultHandler());
                reader.parse(new InputSource(new StringReader(blank.text())));
            } catch (IOException | SAXException | ParserConfigurationException e) {
                throw new IllegalStateException(e);
            }
        }

        private static PictureShelf blankOf(Press.FilledPage page) {
            PictureShelf shelf = new PictureShelf();
            for (int i = 1; page.pictures().at(PictureShelf.ADDRESS + i).isPresent(); i++) {
                Picture picture = page.pictures().at(PictureShelf.ADDRESS + i).orElseThrow();
                shelf.keep(new Picture(picture.widthMm(), picture.heightMm(), surface -> {}));
            }
            return shelf;
        }
    }

    /** From the finished values to the archived PDF: what each printing of a client costs. */
    @Benchmark
    public byte[] handout(Handout handout, Work work) {
        return work.of(() -> handout.press
                .print(handout.document, handout.messages, new Problems())
                .orElseThrow());
    }

    /** The same from program and client on: texts chosen, doses put in, pictures found again. */
    @Benchmark
    public byte[] fromProgram(Handout handout, Work work) {
        return work.of(() -> handout.maker
                .print(DocumentKind.CLIENT_HANDOUT, handout.order, new Problems())
                .orElseThrow());
    }

    /** Baseline: template, then pictures as SVG in the page description. */
    @Benchmark
    public byte[] plainPipeline(Handout handout, Work work) {
        return work.of(() -> {
            handout.press.fill(handout.document, handout.messages, new Problems());
            return handout.plain.print(handout.inline);
        });
    }

    /** Baseline: the same marks without any layout. */
    @Benchmark
    public byte[] marksOnly(Handout handout, Work work) {
        return work.of(handout.marks::write);
    }

    @Benchmark
    public byte[] template(Handout handout, Work work) {
        return work.of(() -> {
            handout.press.fill(handout.document, handout.messages, new Problems());
            return new byte[0];
        });
    }

    @Benchmark
    public byte[] blankPictures(Handout handout, Work work) {
        return work.of(() -> handout.press.set(handout.blank, new Problems()).orElseThrow());
    }

    @Benchmark
    public byte[] layout(Handout handout, Work work) {
        return work.of(() -> {
            handout.layOut();
            return new byte[0];
        });
    }

    private static double cpuMillisNow() {
        return ManagementFactory.getOperatingSystemMXBean() instanceof com.sun.management.OperatingSystemMXBean machine
                ? machine.getProcessCpuTime() / 1e6
                : Double.NaN;
    }
}
