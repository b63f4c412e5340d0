package org.drillsheaf.handout;

import com.ibm.icu.text.PluralRules;
import com.ibm.icu.util.ULocale;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.drillsheaf.LocalText;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.drill.Breathing;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Keyframe;
import org.drillsheaf.drill.Step;
import org.drillsheaf.figure.draw.Annotations;
import org.drillsheaf.figure.pose.Distance;
import org.drillsheaf.figure.pose.PoseFrame;
import org.drillsheaf.figure.pose.PoseSheetReader;
import org.drillsheaf.figure.pose.PoseWords;
import org.drillsheaf.figure.pose.SolvedSheet;
import org.drillsheaf.handout.page.DrillBlock;
import org.drillsheaf.handout.page.Wording;
import org.drillsheaf.program.AssignedDose;
import org.drillsheaf.program.Entry;
import org.drillsheaf.saying.Messages;

/** Turns one entry of a program, with the client's changes in the drill, into what stands on paper. */
final class DrillBlockMaker {
    private final HandoutOrder order;
    private final Function<String, Messages> phrases;
    private final DrillFigures figures;

    /** @param phrases by language tag; a drill that does not speak the client's first language speaks its own throughout */
    DrillBlockMaker(HandoutOrder order, Function<String, Messages> phrases, DrillFigures figures) {
        this.order = order;
        this.phrases = phrases;
        this.figures = figures;
    }

    /** The block, empty when the drill's pose cannot be read; {@code problems} then tells why. */
    Optional<DrillBlock> block(int number, Entry entry, Drill drill, Problems problems) {
        return PoseSheetReader.read(drill.pose(), problems).map(sheet -> {
            SolvedSheet solved = sheet.solve();
            boolean mirrored = entry.side().equals(Optional.of(Side.LEFT));
            return block(number, entry, drill, mirrored ? solved.mirrored() : solved, mirrored);
        });
    }

    private DrillBlock block(int number, Entry entry, Drill drill, SolvedSheet sheet, boolean mirrored) {
        String language = language(drill);
        Placeholders places = new Placeholders(
                phrases.apply(language), order.client().statureCentimetres(), entry, sheet.distances());
        List<List<Step>> steps = stepsByFrame(drill, sheet);
        List<DrillBlock.Group> groups = new ArrayList<>();
        List<DrillFigures.Frame> frames = new ArrayList<>();
        int next = 1;
        for (PoseFrame frame : PoseFrame.values()) {
            List<Step> own = steps.get(frame.ordinal());
            if (own.isEmpty() && frame != PoseFrame.START) {
                continue;
            }
            frames.add(frame(frame, own, next, places, sheet, drill, mirrored));
            next += own.size();
        }
        DrillFigures.Drawn drawn = figures.draw(sheet, frames, drill.name().best(List.of(language)), order.large());
        next = 1;
        for (int i = 0; i < frames.size(); i++) {
            List<DrillBlock.Step> printed = new ArrayList<>();
            for (Step step : steps.get(frames.get(i).frame().ordinal())) {
                printed.add(new DrillBlock.Step(
                        next++, Wording.withOwnNumbers(places.fill(step.text().best(List.of(language))))));
            }
            groups.add(new DrillBlock.Group(
                    frames.get(i).frame().id(), drawn.figures().get(i), printed));
        }
        return new DrillBlock(
                number,
                drill.id(),
                drill.name().best(List.of(language)),
                language,
                drill.translations().stream().anyMatch(t -> t.language().equals(language) && t.isUnreviewed()),
                drill.purpose().best(List.of(language)),
                dose(entry, drill, language),
                groups,
                drawn.arrangement(),
                drawn.small(),
                breath(drill.breathing()),
                drill.breathing().cue().map(c -> places.plain(c.best(List.of(language)))),
                texts(drill.feel(), places, language),
                texts(drill.notFeel(), places, language),
                drill.faults().stream()
                        .map(f -> new DrillBlock.Fault(
                                places.plain(f.fault().best(List.of(language))),
                                places.plain(f.fix().best(List.of(language)))))
                        .toList(),
                texts(drill.stop(), places, language),
                entry.revision(),
                drill.edition().basedOn().isPresent(),
                YearMonth.from(drill.edition().reviewedOn()),
                sheet.distances().isEmpty()
                        ? Optional.empty()
                        : Optional.of((int) Math.round(order.client().statureCentimetres())));
    }

    private String language(Drill drill) {
        return order.client().languages().stream()
                .filter(drill::speaks)
                .findFirst()
                .orElse("en");
    }

    private static List<String> texts(List<LocalText> texts, Placeholders places, String language) {
        return texts.stream().map(t -> places.plain(t.best(List.of(language)))).toList();
    }

    /** Set-up steps belong to the start; an action whose picture is missing goes to the one before. */
    private static List<List<Step>> stepsByFrame(Drill drill, SolvedSheet sheet) {
        List<List<Step>> byFrame = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        byFrame.get(0).addAll(drill.setUpSteps());
        for (Step step : drill.actionSteps()) {
            int wanted = step.keyframe() == Keyframe.END ? 2 : 1;
            while (wanted > 0 && sheet.pose(PoseFrame.values()[wanted]).isEmpty()) {
                wanted--;
            }
            byFrame.get(wanted).add(step);
        }
        return byFrame;
    }

    private DrillFigures.Frame frame(
            PoseFrame frame,
            List<Step> steps,
            int first,
            Placeholders places,
            SolvedSheet sheet,
            Drill drill,
            boolean mirrored) {
        String language = language(drill);
        Messages messages = phrases.apply(language);
        Map<String, String> keys = new LinkedHashMap<>();
        StringBuilder keyed = new StringBuilder();
        List<Annotations.Dimension> dimensions = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            String text = steps.get(i).text().best(List.of(language));
            String number = messages.say("number", Map.of("value", first + i));
            steps.get(i).mark().ifPresent(mark -> {
                keys.put(mark, number);
                keyed.append(' ').append(number).append(": ").append(places.plain(text));
            });
            for (Distance distance : sheet.sheet().distances()) {
                boolean shown = distance.frame() == frame && distance.along().isPresent();
                if (shown && text.contains("{" + distance.name() + "}")) {
                    dimensions.add(new Annotations.Dimension(
                            mirrored ? otherSide(distance.of()) : distance.of(),
                            mirrored ? otherSide(distance.from()) : distance.from(),
                            Character.toLowerCase(distance.along().get().name().charAt(0)),
                            places.value(distance.name())));
                }
            }
        }
        String shown = Optional.ofNullable(drill.altText().get(Keyframe.values()[frame.ordinal()]))
                .flatMap(text -> text.in(language))
                .map(places::plain)
                .or(() -> PoseWords.in(language)
                        .map(words -> words.describe(sheet.pose(frame).orElseThrow())))
                .orElse("");
        String alternative = messages.say(
                        "picture.alternative",
                        Map.of(
                                "letter", messages.letter(frame.ordinal()),
                                "keyframe", messages.say("keyframe." + frame.id(), Map.of()),
                                "shown", shown))
                + keyed;
        return new DrillFigures.Frame(frame, keys, dimensions, alternative);
    }

    private static String otherSide(String point) {
        return point.endsWith(".R")
                ? point.substring(0, point.length() - 2) + ".L"
                : point.endsWith(".L") ? point.substring(0, point.length() - 2) + ".R" : point;
    }

    private DrillBlock.Dose dose(Entry entry, Drill drill, String language) {
        AssignedDose dose = entry.dose();
        Map<String, String> forms =
                drill.dose().noun().getOrDefault(language, drill.dose().noun().getOrDefault("en", Map.of()));
        String category = PluralRules.forLocale(new ULocale(language)).select(dose.each());
        String noun = Optional.ofNullable(forms.get(category))
                .or(() -> Optional.ofNullable(forms.get("other")))
                .orElse(dose.count());
        return new DrillBlock.Dose(
                dose.sets(),
                dose.each(),
                noun,
                dose.count(),
                dose.sides(),
                entry.side(),
                dose.restSeconds(),
                dose.effort(),
                dose.effort(),
                entry.minutes());
    }

    /** No line where the breath is free: a counted breath would then be the wrong thing to see. */
    private Optional<DrillBlock.Breath> breath(Breathing breathing) {
        if (breathing.focus() == 0) {
            return Optional.empty();
        }
        boolean easy = order.breathOutSeconds().isPresent()
                && order.breathOutSeconds().getAsDouble() < breathing.out().least();
        return Optional.of(new DrillBlock.Breath(
                (int) Math.round(breathing.in().middle()),
                (int) Math.round(breathing.out().least()),
                (int) Math.round(breathing.out().most()),
                (int) Math.round(breathing.pause().most()),
                breathing.inBy().name().toLowerCase(java.util.Locale.ROOT),
                breathing.outBy().name().toLowerCase(java.util.Locale.ROOT),
                easy));
    }
}
