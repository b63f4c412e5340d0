package org.drillsheaf.handout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillsheaf.LocalText;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.drill.safety.ActiveCondition;
import org.drillsheaf.drill.safety.Caution;
import org.drillsheaf.drill.safety.Judgement;
import org.drillsheaf.drill.safety.Safety;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.PhaseRow;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.Vocabulary;

/** Gathers what the pages with drills are made from. Safe for several threads. */
final class HandoutOrderMaker {
    private static final String BREATH_OUT = "breath-out";

    private final Vocabulary vocabulary;
    private final Safety safety;

    HandoutOrderMaker(Vocabulary vocabulary, Safety safety) {
        this.vocabulary = vocabulary;
        this.safety = safety;
    }

    HandoutOrder order(DocumentOrder order, Program program) {
        DocumentOrder.Seen now = order.now();
        DocumentSetting setting = order.setting();
        Map<String, Judgement> judgements = program.now().entries().stream()
                .map(Entry::drill)
                .distinct()
                .filter(id -> vocabulary.library().catalogue().drill(id).isPresent())
                .collect(Collectors.toMap(
                        id -> id,
                        id -> safety.judge(
                                vocabulary.library().catalogue().drill(id).orElseThrow(), now.safety())));
        return new HandoutOrder(
                reader(order.client(), setting),
                program,
                judgements,
                vocabulary.phases().rows().stream()
                        .map(HandoutOrderMaker::words)
                        .toList(),
                now.visit().next(),
                now.conditions().stream().map(ClientCondition::id).collect(Collectors.toSet()),
                now.safety().active().stream()
                        .flatMap(active -> active.condition().clientText().stream())
                        .toList(),
                sentences(Caution.Group.SET_UP, judgements.values(), now),
                sentences(Caution.Group.WHILE_TRAINING, judgements.values(), now),
                now.visit().handoutNote(),
                breathOut(now),
                setting.signedBy(),
                setting.paper(),
                order.isLarge(DocumentKind.CLIENT_HANDOUT));
    }

    /** The client, with the language that is asked for in front of their own. */
    private static Client reader(Client client, DocumentSetting setting) {
        if (setting.language().isEmpty()) {
            return client;
        }
        List<String> languages = new ArrayList<>(setting.language().stream().toList());
        client.languages().stream().filter(l -> !languages.contains(l)).forEach(languages::add);
        return client.speaking(languages);
    }

    /** What the house says about practising at home, as far as it concerns these drills and this client. */
    private List<LocalText> sentences(Caution.Group group, Collection<Judgement> judgements, DocumentOrder.Seen now) {
        Set<String> equipment = judgements.stream()
                .flatMap(judgement -> judgement.drill().equipment().stream())
                .collect(Collectors.toSet());
        Set<String> conditions =
                now.safety().active().stream().map(ActiveCondition::id).collect(Collectors.toSet());
        return vocabulary.library().cautions().stream()
                .filter(caution -> caution.group() == group && caution.concerns(equipment, conditions))
                .map(Caution::text)
                .toList();
    }

    private static HandoutOrder.PhaseWords words(PhaseRow row) {
        return new HandoutOrder.PhaseWords(row.name(), row.sentence(), row.good());
    }

    private static OptionalDouble breathOut(DocumentOrder.Seen now) {
        return now.reading()
                .screen()
                .measurement(BREATH_OUT, java.util.Optional.empty())
                .flatMap(m -> m.value())
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }
}
