package org.drillsheaf.handout;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.client.Paper;
import org.drillsheaf.handout.page.ClientHandout;
import org.drillsheaf.handout.page.DrillBlock;
import org.drillsheaf.handout.page.Frame;
import org.drillsheaf.handout.page.ReferralNote;
import org.drillsheaf.handout.page.Told;
import org.drillsheaf.handout.page.Wording;
import org.drillsheaf.handout.paint.Picture;
import org.drillsheaf.saying.Messages;

/** Documents of invented clients, for tests. */
final class SampleDocuments {
    static final LocalDate DATE = LocalDate.of(2026, 11, 12);

    private SampleDocuments() {}

    static HandoutPrinter printer() {
        Problems problems = new Problems();
        return HandoutFiles.load(
                        Path.of("templates"),
                        Path.of("samples/house.yaml"),
                        Path.of("shared/schemas/house.schema.json"),
                        problems)
                .orElseThrow(() -> new AssertionError(problems.all()));
    }

    static Frame frame(Paper paper, boolean large) {
        return new Frame(
                "en", DATE, "Marlow", "Marlow Tessier", "Tamsin Rook", Optional.of("Tamsin Rook"), paper, large);
    }

    static Frame unsigned(Frame f) {
        return new Frame(
                f.language(), f.date(), f.called(), f.fullName(), f.coach(), Optional.empty(), f.paper(), f.large());
    }

    static ClientHandout handout(Frame frame, int drills) {
        List<DrillBlock> blocks = IntStream.rangeClosed(1, drills)
                .mapToObj(number ->
                        number % 3 == 2 ? wallHeels(number) : number % 3 == 0 ? legLift(number) : wallLean(number))
                .toList();
        int minutes = blocks.stream().mapToInt(b -> b.dose().minutes()).sum();
        return new ClientHandout(
                frame,
                1,
                List.of("Settle", "Restore", "Reference", "Integrate"),
                told("First we help your back to rest and your breath to slow down."),
                Optional.of(told("The drills feel easy. You feel calmer after them.")),
                minutes,
                6,
                Stream.of("wall", "mat", "chair").map(SampleDocuments::told).toList(),
                Optional.of(new ClientHandout.Meeting(LocalDate.of(2026, 12, 10), Optional.of(LocalTime.of(9, 30)))),
                List.of(
                        new ClientHandout.Caution(
                                List.of(2), told("Your left hip: do not bend it past a square corner.")),
                        new ClientHandout.Caution(
                                List.of(1, 3), told("Your right wrist: make a fist, or rest on your forearms.")),
                        new ClientHandout.Caution(
                                List.of(), told("Your blood pressure: do not hold a full breath. Let it flow out."))),
                List.of(),
                List.of(told("Use a chair with four legs, without wheels. Put its back against a wall.")),
                List.of(told("Wait an hour after a big meal.")),
                List.of(),
                blocks);
    }

    static Told told(String english) {
        return new Told(english, "en");
    }

    /** The fullest opening page: not signed, of a pregnant client, in the language of the frame. */
    static ClientHandout longestOpening(Frame frame, HandoutPrinter printer) {
        ClientHandout h = handout(unsigned(frame), 1);
        return new ClientHandout(
                h.frame(),
                h.phase(),
                h.phases(),
                told("Ahora sus caderas y la parte de atrás de sus muslos vuelven a trabajar, poco a poco y sin"
                        + " prisa."),
                h.goodSign(),
                h.minutes(),
                h.sessionsPerWeek(),
                h.things(),
                h.next(),
                h.cautions(),
                List.of(printer.messagesFor(frame.language()).say("stop.help.pregnancy", Map.of())),
                h.setUp(),
                h.whileTraining(),
                h.note(),
                h.drills());
    }

    /** A printer of a made-up language whose stop rules are 35 % longer than Spanish ones. */
    static HandoutPrinter printerOfALongLanguage() {
        Map<String, String> phrases = new TreeMap<>();
        printer().messagesFor("es").phrases().forEach((key, phrase) -> {
            boolean grows = key.startsWith("stop.") || key.startsWith("handout.unsigned");
            phrases.put(
                    key,
                    !grows
                            ? phrase
                            : Stream.of(phrase.split("[|]"))
                                    .map(part -> part
                                            + " y todo esto con otra vuelta más "
                                                    .repeat(12)
                                                    .substring(0, part.length() * 35 / 100))
                                    .map(String::strip)
                                    .collect(Collectors.joining("|")));
        });
        Map<String, String> templates = new TreeMap<>();
        try (Stream<Path> files = Files.list(Path.of("templates"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".ftlx")).toList()) {
                templates.put(file.getFileName().toString(), Files.readString(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new HandoutPrinter(
                templates,
                Map.of("en", new Messages("en", false, phrases)),
                printer().house());
    }

    static ClientHandout withCautions(ClientHandout h, List<ClientHandout.Caution> cautions) {
        return new ClientHandout(
                h.frame(),
                h.phase(),
                h.phases(),
                h.purpose(),
                h.goodSign(),
                h.minutes(),
                h.sessionsPerWeek(),
                h.things(),
                h.next(),
                cautions,
                h.helpNow(),
                h.setUp(),
                h.whileTraining(),
                h.note(),
                h.drills());
    }

    static ClientHandout withDrills(ClientHandout h, List<DrillBlock> drills) {
        return new ClientHandout(
                h.frame(),
                h.phase(),
                h.phases(),
                h.purpose(),
                h.goodSign(),
                h.minutes(),
                h.sessionsPerWeek(),
                h.things(),
                h.next(),
                h.cautions(),
                h.helpNow(),
                h.setUp(),
                h.whileTraining(),
                h.note(),
                drills);
    }

    static DrillBlock machineTranslated(DrillBlock d) {
        return changed(d, d.name(), true);
    }

    static DrillBlock named(DrillBlock d, String name) {
        return changed(d, name, d.machineTranslated());
    }

    private static DrillBlock changed(DrillBlock d, String name, boolean machineTranslated) {
        return new DrillBlock(
                d.number(),
                d.id(),
                name,
                d.language(),
                machineTranslated,
                d.purpose(),
                d.dose(),
                d.groups(),
                d.arrangement(),
                d.small(),
                d.breath(),
                d.breathCue(),
                d.feel(),
                d.notFeel(),
                d.faults(),
                d.stop(),
                d.revision(),
                d.houseVersion(),
                d.checked(),
                d.statureCm());
    }

    static ReferralNote note(Frame frame) {
        return new ReferralNote(
                frame,
                ReferralNote.Urgency.EMERGENCY,
                List.of(
                        new ReferralNote.Answer(
                                "New: have you lost control of your bladder or bowels? Can you not pass water, or not"
                                        + " feel it? Is the skin between your legs, or on your seat, numb? Numb or weak in"
                                        + " both legs?",
                                "yes",
                                ReferralNote.Urgency.EMERGENCY),
                        new ReferralNote.Answer(
                                "Does pain wake you every night and no position eases it?",
                                "not-sure",
                                ReferralNote.Urgency.SOON)),
                false,
                List.of(
                        new ReferralNote.Measured("Straight-leg raise", "left 62°, right 70°"),
                        new ReferralNote.Measured("Standing toe touch", "12 cm")),
                Optional.of("1979"));
    }

    static DrillBlock wallLean(int number) {
        return new DrillBlock(
                number,
                "wall-lean-breath",
                "Wall lean with long breath",
                "en",
                false,
                "Lets your lower back have a rest.",
                new DrillBlock.Dose(3, 5, "breaths", "breaths", "both-together", Optional.empty(), 30, 1, 2, 4),
                groups(
                        "start",
                        standing(35, 56),
                        List.of(
                                "Stand with your back to a wall. Heels ⟦26 cm⟧ from it, feet ⟦15 cm⟧ apart.",
                                "Bend your knees a little. Rest your lower back on the wall."),
                        "move",
                        standing(26.6, 52.5),
                        List.of(
                                "Round your lower back into the wall.",
                                "Reach both arms forward and down.",
                                "Keep your weight in your heels.",
                                "Stay for 5 breaths. Stand up and rest.")),
                DrillBlock.Arrangement.SIDE_BY_SIDE,
                new DrillBlock.Figure(
                        standing(16.2, 31.9), 2, "Standing with the back against a wall, arms ahead and low"),
                Optional.of(new DrillBlock.Breath(3, 6, 8, 2, "nose", "mouth", false)),
                Optional.empty(),
                List.of("Sides of your belly at work", "Backs of your thighs at work", "Air going into your back"),
                List.of("Your lower back at work", "A tight neck or jaw", "Toes gripping the floor"),
                List.of(new DrillBlock.Fault(
                        "You push with your legs.", "Soften your knees. Let your heels get heavy.")),
                List.of(),
                3,
                false,
                YearMonth.of(2026, 10),
                Optional.of(172));
    }

    static DrillBlock wallHeels(int number) {
        return new DrillBlock(
                number,
                "wall-heels-drag",
                "Feet on the wall, heels pull down",
                "en",
                false,
                "Wakes the backs of your thighs, without strain.",
                new DrillBlock.Dose(4, 5, "breaths", "breaths", "both-together", Optional.empty(), 60, 2, 3, 5),
                groups(
                        "start",
                        lying(47.5, 25.7),
                        List.of(
                                "Lie on your back. Put your feet flat on the wall, ⟦20 cm⟧ apart.",
                                "Make square corners at your hips and knees. Your hips are about ⟦42 cm⟧ from the"
                                        + " wall."),
                        "move",
                        lying(47.5, 25.7),
                        List.of(
                                "Breathe out until you are empty. Let your ribs sink.",
                                "Pull your heels down the wall. Your feet do not slide.",
                                "Keep your lower back long and heavy.",
                                "Pull gently for 5 breaths. Then let go and rest.")),
                DrillBlock.Arrangement.STACKED,
                new DrillBlock.Figure(lying(29.7, 16.1), 2, "Lying on the back, feet on a wall"),
                Optional.of(new DrillBlock.Breath(4, 8, 8, 2, "nose", "mouth", false)),
                Optional.empty(),
                List.of("Backs of your thighs at work", "A long, heavy lower back", "Ribs sinking down"),
                List.of("Your lower back lifting", "A cramp in a thigh or calf", "Your head pushing back"),
                List.of(),
                List.of(),
                5,
                true,
                YearMonth.of(2026, 9),
                Optional.of(172));
    }

    static DrillBlock legLift(int number) {
        return new DrillBlock(
                number,
                "side-top-foot-up",
                "On the side, top foot up, knee stays",
                "en",
                false,
                "Shows your hip a small turn.",
                new DrillBlock.Dose(2, 8, "lifts", "repetitions", "one-side", Optional.of(Side.RIGHT), 45, 3, 4, 3),
                groups(
                        "start",
                        lying(47.5, 18),
                        List.of("Lie on your left side. Put a cushion between your knees."),
                        "move",
                        lying(47.5, 22),
                        List.of("Lift your right foot ⟦10 cm⟧. Your knees stay together.", "Lower it slowly.")),
                DrillBlock.Arrangement.STACKED,
                new DrillBlock.Figure(lying(32.2, 12.7), 2, "Lying on the left side, right foot lifted"),
                Optional.empty(),
                Optional.of("Breathe out on the lift."),
                List.of("The side of your hip at work", "Your ribs quiet"),
                List.of("Your lower back at work", "A pinch in the front of your hip"),
                List.of(new DrillBlock.Fault("Your waist rolls back.", "Bring your top hip over the lower one.")),
                List.of("your hip catches or clicks with pain"),
                1,
                false,
                YearMonth.of(2026, 10),
                Optional.of(172));
    }

    private static List<DrillBlock.Group> groups(
            String first, Picture one, List<String> steps, String second, Picture two, List<String> more) {
        List<DrillBlock.Group> groups = new ArrayList<>();
        groups.add(new DrillBlock.Group(first, figure(one, "Start position"), steps(1, steps)));
        groups.add(new DrillBlock.Group(second, figure(two, "Movement with keys"), steps(1 + steps.size(), more)));
        return groups;
    }

    private static DrillBlock.Figure figure(Picture picture, String alternative) {
        return new DrillBlock.Figure(picture, 2, alternative);
    }

    private static List<DrillBlock.Step> steps(int first, List<String> texts) {
        return IntStream.range(0, texts.size())
                .mapToObj(i -> new DrillBlock.Step(first + i, Wording.withOwnNumbers(texts.get(i))))
                .toList();
    }

    /** A stick man on a floor line, enough to judge a place on the page. */
    private static Picture standing(double width, double height) {
        return new Picture(width, height, g -> {
            g.setColor(new Color(0x1A1A1A));
            g.setStroke(new BasicStroke(0.5f));
            g.draw(new Line2D.Double(0, height - 2, width, height - 2));
            g.draw(new Rectangle2D.Double(0.3, 1, 1, height - 3));
            double x = width * 0.4;
            g.draw(new Ellipse2D.Double(x - height * 0.06, 1, height * 0.12, height * 0.12));
            g.draw(new Line2D.Double(x, 1 + height * 0.12, x - 2, height * 0.55));
            g.draw(new Line2D.Double(x - 2, height * 0.55, x + 2, height - 2));
            g.draw(new Line2D.Double(x, height * 0.25, width - 3, height * 0.5));
        });
    }

    private static Picture lying(double width, double height) {
        return new Picture(width, height, g -> {
            g.setColor(new Color(0x1A1A1A));
            g.setStroke(new BasicStroke(0.5f));
            g.draw(new Line2D.Double(0, height - 2, width, height - 2));
            g.draw(new Line2D.Double(width - 1, 0, width - 1, height - 2));
            g.draw(new Ellipse2D.Double(5, height - 8, 6, 6));
            g.draw(new Line2D.Double(11, height - 4, width * 0.6, height - 4));
            g.draw(new Line2D.Double(width * 0.6, height - 4, width * 0.6, height * 0.3));
            g.draw(new Line2D.Double(width * 0.6, height * 0.3, width - 2, height * 0.3));
        });
    }
}
