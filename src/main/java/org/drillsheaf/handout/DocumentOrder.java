package org.drillsheaf.handout;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.client.Print;
import org.drillsheaf.client.Visit;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.safety.ClientSafety;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.program.CoachWishes;
import org.drillsheaf.program.Needs;
import org.drillsheaf.program.Program;
import org.drillsheaf.screen.Comparison;
import org.drillsheaf.screen.GateResult;
import org.drillsheaf.screen.GateRules;
import org.drillsheaf.screen.Reading;

/**
 * Everything that one client's documents are made from. All of it was decided before; printing decides nothing.
 *
 * @param visits up to the one printed for, oldest first, at least one
 * @param change what the re-screen shows; empty at the first visit
 * @param needs what the builder was asked for; empty when nothing was built
 * @param program empty when there is none
 */
public record DocumentOrder(
        Client client,
        List<Seen> visits,
        Optional<Change> change,
        Optional<Needs> needs,
        Optional<Program> program,
        DocumentSetting setting) {

    /**
     * One visit with what was read from it.
     *
     * @param conditions as told, with those that follow from the screen
     */
    public record Seen(
            Visit visit, Reading reading, List<ClientCondition> conditions, ClientSafety safety, CoachWishes wishes) {
        public Seen {
            conditions = List.copyOf(conditions);
        }
    }

    /**
     * What a re-screen shows.
     *
     * @param phaseBefore the phase the client was in
     * @param phaseNow the phase to work on from now
     * @param gate out of the phase before
     */
    public record Change(
            Phase phaseBefore, Phase phaseNow, Comparison comparison, GateResult gate, GateRules.Decision decision) {}

    public DocumentOrder {
        visits = List.copyOf(visits);
        if (visits.isEmpty()) {
            throw new IllegalArgumentException("no document without a visit");
        }
    }

    /** The visit printed for. */
    public Seen now() {
        return visits.get(visits.size() - 1);
    }

    /** Whether this paper is set in large print: as asked for, else as its reader needs it. */
    public boolean isLarge(DocumentKind kind) {
        return setting.large().orElse(kind.isReadByTheClient() && client.print() == Print.LARGE);
    }

    /** The setting with nothing left open, as a paper of this kind is printed. */
    public DocumentSetting settingOf(DocumentKind kind) {
        return setting.large(Optional.of(isLarge(kind)));
    }

    public DocumentOrder with(DocumentSetting other) {
        return new DocumentOrder(client, visits, change, needs, program, other);
    }
}
