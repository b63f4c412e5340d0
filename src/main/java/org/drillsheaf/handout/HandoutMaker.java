package org.drillsheaf.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drillsheaf.LocalText;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Client;
import org.drillsheaf.drill.EquipmentItem;
import org.drillsheaf.drill.safety.Judgement;
import org.drillsheaf.figure.draw.DrawingCache;
import org.drillsheaf.figure.draw.FigureDrawer;
import org.drillsheaf.handout.page.ClientHandout;
import org.drillsheaf.handout.page.DrillBlock;
import org.drillsheaf.handout.page.Frame;
import org.drillsheaf.handout.page.Told;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.PhasePlan;
import org.drillsheaf.saying.Messages;

/**
 * Turns a program into the pages of a client handout: words in the client's language, distances in the client's centimetres,
 * pictures drawn from the poses. Decides nothing. Safe for several threads.
 */
public final class HandoutMaker {
    /** Enough for the handouts of a few clients; about 6 MB. */
    private static final int KEPT_DRAWINGS = 200;

    /** As many of the widest letters as find room in a line of large print. Ideographs break anywhere by themselves. */
    private static final Pattern LONG_WORD =
            Pattern.compile("[^\\s\\p{IsIdeographic}]{24}(?=[^\\s\\p{IsIdeographic}]{3})");

    private final HandoutPrinter printer;
    private final Map<String, EquipmentItem> equipment;
    private final DrillFigures figures = new DrillFigures(new DrawingCache(new FigureDrawer(), KEPT_DRAWINGS));

    /** @param equipment items by id, for their names and stand-ins */
    public HandoutMaker(HandoutPrinter printer, Map<String, EquipmentItem> equipment) {
        this.printer = printer;
        this.equipment = Map.copyOf(equipment);
    }

    /** The handout of the phase that the client works on now; empty when {@code problems} got an error. */
    public Optional<ClientHandout> handout(HandoutOrder order, Problems problems) {
        PhasePlan phase = order.program().now();
        Messages messages = printer.messagesFor(language(order.client()));
        Problems found = new Problems();
        DrillBlockMaker maker = new DrillBlockMaker(order, printer::messagesFor, figures);
        List<DrillBlock> blocks = new ArrayList<>();
        for (Entry entry : phase.entries()) {
            Judgement judgement = order.judgements().get(entry.drill());
            if (judgement == null) {
                found.error(
                        entry.drill(), 0, "The drill of the program was not handed over", "Build the program again");
            } else {
                maker.block(blocks.size() + 1, entry, judgement.drill(), found).ifPresent(blocks::add);
            }
        }
        problems.addAll(found.all());
        if (found.hasErrors()) {
            return Optional.empty();
        }
        List<String> languages = Stream.concat(Stream.of(messages.language()), order.client().languages().stream())
                .distinct()
                .toList();
        HandoutOrder.PhaseWords words =
                order.phases().get(order.program().start().ordinal());
        return Optional.of(new ClientHandout(
                frame(order, messages),
                order.program().start().ordinal() + 1,
                order.phases().stream().map(p -> p.name().best(languages)).toList(),
                Told.best(words.purpose(), languages),
                Optional.of(Told.best(words.good(), languages)),
                phase.minutes(),
                phase.sessionsPerWeek(),
                things(order, phase, languages),
                order.next().map(a -> new ClientHandout.Meeting(a.date(), a.time())),
                cautions(order, phase, languages),
                order.conditions().contains("pregnancy")
                        ? List.of(messages.say("stop.help.pregnancy", Map.of()))
                        : List.of(),
                told(order.setUp(), languages),
                told(order.whileTraining(), languages),
                order.note().map(HandoutMaker::paragraphs).orElse(List.of()),
                blocks));
    }

    private static List<Told> told(List<LocalText> texts, List<String> languages) {
        return texts.stream().map(text -> Told.best(text, languages)).toList();
    }

    /** What a coach typed, line by line. A word that is longer than any line is broken, so that none leaves the page. */
    private static List<String> paragraphs(String note) {
        return note.lines()
                .map(line -> LONG_WORD.matcher(line.strip()).replaceAll("$0 "))
                .filter(line -> !line.isBlank())
                .toList();
    }

    private static Frame frame(HandoutOrder order, Messages messages) {
        Client client = order.client();
        return new Frame(
                messages.language(),
                order.program().date(),
                client.called(),
                client.name(),
                client.coach(),
                order.signedBy(),
                order.paper(),
                order.large());
    }

    /** The first of the client's languages that has fixed phrases. */
    private String language(Client client) {
        return client.languages().stream()
                .filter(printer.languages()::contains)
                .findFirst()
                .orElse("en");
    }

    /** Everything the session needs, each thing once; a stand-in is named instead of the thing it stands for. */
    List<Told> things(HandoutOrder order, PhasePlan phase, List<String> languages) {
        Set<Told> names = new LinkedHashSet<>();
        for (Entry entry : phase.entries()) {
            Judgement judgement = order.judgements().get(entry.drill());
            for (String id :
                    judgement == null ? List.<String>of() : judgement.drill().equipment()) {
                EquipmentItem item = equipment.get(id);
                if (item != null) {
                    names.add(Told.best(
                            item.standInAmong(order.client().equipment())
                                    .map(EquipmentItem.StandIn::name)
                                    .orElse(item.name()),
                            languages));
                }
            }
        }
        return List.copyOf(names);
    }

    /** Each sentence once, with the numbers of its drills. */
    private static List<ClientHandout.Caution> cautions(HandoutOrder order, PhasePlan phase, List<String> languages) {
        Map<Told, List<Integer>> drillsBySentence = new LinkedHashMap<>();
        int number = 0;
        for (Entry entry : phase.entries()) {
            number++;
            Judgement judgement = order.judgements().get(entry.drill());
            for (LocalText text : judgement == null ? List.<LocalText>of() : judgement.texts()) {
                drillsBySentence
                        .computeIfAbsent(Told.best(text, languages), t -> new ArrayList<>())
                        .add(number);
            }
        }
        int all = number;
        List<ClientHandout.Caution> cautions = new ArrayList<>();
        order.conditionTexts().stream()
                .map(text -> Told.best(text, languages))
                .distinct()
                .forEach(told -> cautions.add(new ClientHandout.Caution(List.of(), told)));
        drillsBySentence.forEach((sentence, drills) -> cautions.add(
                new ClientHandout.Caution(drills.size() == all && all > 1 ? List.of() : drills, sentence)));
        return cautions;
    }
}
