package org.drillsheaf.handout;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.drillsheaf.LocalText;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.client.Paper;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.EquipmentItem;
import org.drillsheaf.drill.Goal;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.Step;
import org.drillsheaf.figure.draw.Annotations;
import org.drillsheaf.figure.draw.Drawing;
import org.drillsheaf.figure.draw.DrawingPainter;
import org.drillsheaf.figure.draw.DrawingStyle;
import org.drillsheaf.figure.draw.FigureDrawer;
import org.drillsheaf.figure.draw.View;
import org.drillsheaf.figure.pose.PoseFrame;
import org.drillsheaf.figure.pose.PoseSheetReader;
import org.drillsheaf.figure.pose.PoseWords;
import org.drillsheaf.figure.pose.SolvedPose;
import org.drillsheaf.figure.pose.SolvedSheet;
import org.drillsheaf.handout.page.CatalogueBook;
import org.drillsheaf.handout.page.DrillBlock;
import org.drillsheaf.handout.page.Frame;
import org.drillsheaf.handout.page.Told;
import org.drillsheaf.handout.paint.Picture;
import org.drillsheaf.program.Vocabulary;
import org.drillsheaf.saying.Messages;

/** Lays the catalogue out as a book for the clinic: drills in use, as written, with the author's pictures. */
final class CatalogueBookMaker {
    /** A body of middle stature, for the distances. */
    private static final int STATURE_CM = 170;

    private static final double MILLIMETRES_PER_STATURE = 34;

    private final Vocabulary vocabulary;
    private final Messages messages;
    private final Function<String, Messages> phrases;
    private final List<String> languages;
    private final FigureDrawer drawer = new FigureDrawer();

    /** @param phrases by language tag; a text that is not there in the book's language is filled with words of its own */
    CatalogueBookMaker(Vocabulary vocabulary, Messages messages, Function<String, Messages> phrases) {
        this.vocabulary = vocabulary;
        this.messages = messages;
        this.phrases = phrases;
        this.languages = Stream.of(messages.language(), "en").distinct().toList();
    }

    /** Empty when {@code problems} got an error: a pose that cannot be read. */
    Optional<CatalogueBook> book(String clinic, Paper paper, boolean large, Problems problems) {
        Problems found = new Problems();
        List<Drill> drills = vocabulary.library().catalogue().inUse().stream()
                .sorted(Comparator.comparing(Drill::family)
                        .thenComparing(Drill::level)
                        .thenComparing(Drill::id))
                .toList();
        Map<String, List<CatalogueBook.Entry>> families = new LinkedHashMap<>();
        for (Drill drill : drills) {
            entry(drill, found).ifPresent(entry -> families.computeIfAbsent(drill.family(), f -> new ArrayList<>())
                    .add(entry));
        }
        problems.addAll(found.all());
        if (found.hasErrors()) {
            return Optional.empty();
        }
        LocalDate newest = drills.stream()
                .map(d -> d.edition().reviewedOn())
                .max(Comparator.naturalOrder())
                .orElse(LocalDate.EPOCH);
        return Optional.of(new CatalogueBook(
                new Frame(messages.language(), newest, clinic, clinic, clinic, Optional.empty(), paper, large),
                STATURE_CM,
                families.entrySet().stream()
                        .map(f -> new CatalogueBook.Family(f.getKey(), title(f.getKey()), f.getValue()))
                        .toList(),
                Stream.of(Phase.values()).map(phase -> phase(phase, drills)).toList()));
    }

    /** Families have no names of their own, so the id, which is in English, is read as one. */
    private static Told title(String family) {
        String words = family.replace('-', ' ');
        return new Told(words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1), "en");
    }

    private CatalogueBook.PhaseList phase(Phase phase, List<Drill> drills) {
        return new CatalogueBook.PhaseList(
                phase.ordinal() + 1,
                name(phase),
                drills.stream()
                        .filter(d -> d.phases().contains(phase))
                        .map(d -> new CatalogueBook.Place(d.id(), told(d.name())))
                        .toList());
    }

    private String name(Phase phase) {
        return vocabulary.phases().rows().get(phase.ordinal()).name().best(languages);
    }

    private Told told(LocalText text) {
        return Told.best(text, languages);
    }

    private Optional<CatalogueBook.Entry> entry(Drill drill, Problems problems) {
        return PoseSheetReader.read(drill.pose(), problems).map(read -> {
            SolvedSheet sheet = read.solve();
            return new CatalogueBook.Entry(
                    drill.id(),
                    told(drill.name()),
                    drill.level(),
                    drill.phases().stream().map(this::name).toList(),
                    drill.goals().entrySet().stream()
                            .sorted(Map.Entry.<String, Integer>comparingByValue()
                                    .reversed())
                            .map(goal -> new CatalogueBook.Aim(goal(goal.getKey()), goal.getValue()))
                            .toList(),
                    drill.equipment().stream().map(this::thing).toList(),
                    told(drill.purpose()),
                    pictures(drill, sheet),
                    Stream.concat(drill.setUpSteps().stream(), drill.actionSteps().stream())
                            .map(Step::text)
                            .map(text -> filled(text, sheet))
                            .toList(),
                    drill.feel().stream().map(text -> filled(text, sheet)).toList(),
                    drill.notFeel().stream().map(text -> filled(text, sheet)).toList(),
                    drill.stop().stream().map(text -> filled(text, sheet)).toList(),
                    drill.edition().revision(),
                    YearMonth.from(drill.edition().reviewedOn()),
                    drill.edition().author());
        });
    }

    private Told goal(String id) {
        Goal goal = vocabulary.library().catalogue().words().goals().get(id);
        return goal == null ? new Told(id, "en") : told(goal.name());
    }

    private Told thing(String id) {
        EquipmentItem item =
                vocabulary.library().catalogue().words().equipment().get(id);
        return item == null ? new Told(id, "en") : told(item.name());
    }

    /** The text for the right side, and for a body of middle stature. */
    private Told filled(LocalText text, SolvedSheet sheet) {
        Told told = told(text);
        Messages own = phrases.apply(told.language());
        String filled = told.text()
                .replace("{side}", own.say("side." + Side.RIGHT.id(), Map.of()))
                .replace("{other-side}", own.say("side." + Side.LEFT.id(), Map.of()));
        for (Map.Entry<String, Double> distance : sheet.distances().entrySet()) {
            filled = filled.replace(
                    "{" + distance.getKey() + "}",
                    own.say("length.centimetres", Map.of("value", Math.round(distance.getValue() * STATURE_CM))));
        }
        return new Told(filled, told.language());
    }

    private List<DrillBlock.Figure> pictures(Drill drill, SolvedSheet sheet) {
        View view =
                sheet.sheet().views().stream().findFirst().flatMap(View::parse).orElse(View.SIDE);
        List<DrillBlock.Figure> pictures = new ArrayList<>();
        for (Map.Entry<PoseFrame, SolvedPose> frame : sheet.poses().entrySet()) {
            Drawing drawing =
                    drawer.draw(frame.getValue(), view, DrawingStyle.author(MILLIMETRES_PER_STATURE), Annotations.NONE);
            String shown = PoseWords.in(messages.language())
                    .map(words -> words.describe(frame.getValue()))
                    .orElse("");
            pictures.add(new DrillBlock.Figure(
                    new Picture(drawing.widthMm(), drawing.heightMm(), on -> DrawingPainter.paint(drawing, on, 1)),
                    0,
                    messages.say(
                            "book.picture",
                            Map.of(
                                    "name",
                                    told(drill.name()).text(),
                                    "keyframe",
                                    messages.say("keyframe." + frame.getKey().id(), Map.of()),
                                    "shown",
                                    shown))));
        }
        return pictures;
    }
}
