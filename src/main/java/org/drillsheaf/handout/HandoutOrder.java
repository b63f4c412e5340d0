package org.drillsheaf.handout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.drillsheaf.LocalText;
import org.drillsheaf.client.Appointment;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.Paper;
import org.drillsheaf.drill.safety.Judgement;
import org.drillsheaf.program.Program;

/**
 * Everything that a client's documents are made from. All of it was decided before; printing decides nothing.
 *
 * @param judgements by drill id: each drill of the program with the client's changes in it, and the sentences to print
 * @param phases the four phases in the client's words, in order
 * @param conditions ids of the client's conditions
 * @param conditionTexts what the client has to mind in every drill because of a condition
 * @param setUp how to get ready at home for these drills
 * @param whileTraining what to mind during all of them
 * @param note the coach's own words to this client
 * @param breathOutSeconds the client's own measured breath out
 * @param signedBy the coach who checked the program; empty when nobody did
 */
public record HandoutOrder(
        Client client,
        Program program,
        Map<String, Judgement> judgements,
        List<PhaseWords> phases,
        Optional<Appointment> next,
        Set<String> conditions,
        List<LocalText> conditionTexts,
        List<LocalText> setUp,
        List<LocalText> whileTraining,
        Optional<String> note,
        OptionalDouble breathOutSeconds,
        Optional<String> signedBy,
        Paper paper,
        boolean large) {

    /** What a phase is called, what it is for and what it looks like when it goes well. */
    public record PhaseWords(LocalText name, LocalText purpose, LocalText good) {}

    public HandoutOrder {
        judgements = Map.copyOf(judgements);
        phases = List.copyOf(phases);
        conditions = Set.copyOf(conditions);
        conditionTexts = List.copyOf(conditionTexts);
        setUp = List.copyOf(setUp);
        whileTraining = List.copyOf(whileTraining);
    }
}
