package org.drillsheaf.desk.drill;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.drillsheaf.LocalText;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.client.Born;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.Paper;
import org.drillsheaf.client.Print;
import org.drillsheaf.drill.Action;
import org.drillsheaf.drill.Dose;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.DrillWords;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.safety.DoseLimits;
import org.drillsheaf.drill.safety.Judgement;
import org.drillsheaf.handout.HandoutMaker;
import org.drillsheaf.handout.HandoutOrder;
import org.drillsheaf.handout.HandoutPrinter;
import org.drillsheaf.program.AssignedDose;
import org.drillsheaf.program.Cost;
import org.drillsheaf.program.DrillHash;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.PhasePlan;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.Proof;

/**
 * Prints the block of one drill as a handout has it: the real page of a handout with this drill alone, cut to what stands on it.
 * For an invented body of 170 cm. Safe for several threads.
 */
public final class BlockPrinter {
    private static final double STATURE_CENTIMETRES = 170;
    private static final float DOTS_PER_INCH = 120;
    /** Shares of the page that the running head and the foot take. */
    private static final double HEAD = .06;

    private static final double FOOT = .06;
    private static final int MARGIN = 24;
    /** Nobody can be asked, so no lines for questions stand below the drill. */
    private static final String NO_COACH = "";

    private final HandoutPrinter printer;
    private final HandoutMaker maker;

    public BlockPrinter(HandoutPrinter printer, DrillWords words) {
        this.printer = printer;
        this.maker = new HandoutMaker(printer, words.equipment());
    }

    /** Languages a block can be printed in. */
    public Set<String> languages() {
        return printer.languages();
    }

    /**
     * The block as a picture; empty when it cannot be printed, {@code problems} then tells why.
     *
     * @param date on the page
     */
    public Optional<BufferedImage> print(Drill drill, String language, LocalDate date, Problems problems) {
        return maker.handout(order(drill, language, date), problems)
                .flatMap(handout -> printer.print(handout, problems))
                .map(BlockPrinter::lastPage);
    }

    private static BufferedImage lastPage(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            BufferedImage page =
                    renderer.renderImageWithDPI(document.getNumberOfPages() - 1, DOTS_PER_INCH, ImageType.RGB);
            return cut(page);
        } catch (IOException e) {
            throw new UncheckedIOException("a PDF in memory cannot fail to be read", e);
        }
    }

    /** Without the running head, the foot and the white around. */
    private static BufferedImage cut(BufferedImage page) {
        int from = (int) (page.getHeight() * HEAD);
        int to = (int) (page.getHeight() * (1 - FOOT));
        int left = page.getWidth();
        int right = 0;
        int top = to;
        int bottom = from;
        for (int y = from; y < to; y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                if ((page.getRGB(x, y) & 0xFFFFFF) < 0xF0F0F0) {
                    left = Math.min(left, x);
                    right = Math.max(right, x);
                    top = Math.min(top, y);
                    bottom = Math.max(bottom, y);
                }
            }
        }
        if (right <= left || bottom <= top) {
            return page;
        }
        int width = right - left + 2 * MARGIN;
        int height = bottom - top + 2 * MARGIN;
        BufferedImage cut = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
        java.awt.Graphics2D g = cut.createGraphics();
        g.setColor(java.awt.Color.WHITE);
        g.fillRect(0, 0, width, height);
        g.drawImage(page.getSubimage(left, top, right - left + 1, bottom - top + 1), MARGIN, MARGIN, null);
        g.dispose();
        return cut;
    }

    private static HandoutOrder order(Drill drill, String language, LocalDate date) {
        Entry entry = entry(drill);
        List<PhasePlan> phases = new ArrayList<>();
        List<HandoutOrder.PhaseWords> words = new ArrayList<>();
        for (Phase phase : Phase.values()) {
            boolean now = phase == Phase.SETTLE;
            phases.add(new PhasePlan(
                    phase,
                    now ? PhasePlan.Standing.NOW : PhasePlan.Standing.AHEAD,
                    now ? List.of(entry) : List.of(),
                    entry.minutes(),
                    6,
                    List.of(),
                    List.of()));
            LocalText title = LocalText.english(phase.title());
            words.add(new HandoutOrder.PhaseWords(title, title, title));
        }
        Client client = new Client(
                "trial",
                "Trial",
                "Trial",
                Born.in(1980),
                Optional.empty(),
                STATURE_CENTIMETRES,
                OptionalDouble.empty(),
                List.of(language, "en"),
                Paper.A4,
                Print.STANDARD,
                NO_COACH,
                Set.of(),
                Set.of(),
                20,
                6,
                Optional.empty());
        Program program = new Program(
                client.id(),
                date,
                Phase.SETTLE,
                List.of(),
                phases,
                new Proof(Cost.NONE, Cost.NONE, 1, 1, 0, false, true),
                List.of(),
                List.of(),
                List.of());
        Judgement judgement = new Judgement(
                Action.CAUTION, drill, List.of(), DoseLimits.NONE, Optional.empty(), List.of(), List.of());
        return new HandoutOrder(
                client,
                program,
                Map.of(drill.id(), judgement),
                words,
                Optional.empty(),
                Set.of(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.of("Trial"),
                Paper.A4,
                false);
    }

    private static Entry entry(Drill drill) {
        boolean sided = drill.dose().sides() != Dose.Sides.BOTH_TOGETHER;
        return new Entry(
                drill.id(),
                drill.edition().revision(),
                DrillHash.of(drill),
                List.of(),
                sided ? Optional.of(Side.RIGHT) : Optional.empty(),
                AssignedDose.usual(drill),
                drill.minutes(drill.dose().usual()),
                false,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of());
    }
}
