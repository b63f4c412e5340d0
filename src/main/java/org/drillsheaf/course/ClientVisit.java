package org.drillsheaf.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.client.ClientFile;
import org.drillsheaf.client.ClientReader;
import org.drillsheaf.client.Visit;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.safety.ActiveCondition;
import org.drillsheaf.drill.safety.ClientSafety;
import org.drillsheaf.program.CoachWishes;
import org.drillsheaf.program.CoachWishesReader;
import org.drillsheaf.screen.GateResult;
import org.drillsheaf.screen.GateRules;
import org.drillsheaf.screen.Reading;
import org.drillsheaf.screen.Screen;
import org.drillsheaf.screen.ScreenCondition;
import org.drillsheaf.screen.ScreenReader;

/**
 * One visit of one client as read from a file, with its reading.
 *
 * @param before the reading of the visit before; empty at the first one
 * @param conditions as told, with those that follow from the screen
 */
public record ClientVisit(
        Client client,
        Visit visit,
        Reading reading,
        Optional<Reading> before,
        List<ClientCondition> conditions,
        ClientSafety safety,
        CoachWishes wishes) {

    /** Key under which the gates ask whether the goal is barred; see shared/phases.yaml. */
    private static final String TURNING_IN_BARRED = "internal-rotation-barred";

    /** The gates between the phases as this visit leaves them; what was done but not measured is not counted. */
    public List<GateResult> gates(Knowledge knowledge) {
        GateRules rules = new GateRules(knowledge.vocabulary().reading());
        return knowledge.vocabulary().gates().stream()
                .map(gate -> rules.measuredLinesOnly(gate, asked()))
                .toList();
    }

    /** What the gates are asked of. */
    public GateRules.Asked asked() {
        boolean barred = safety.barredGoals().containsKey("internal-rotation-reference");
        return new GateRules.Asked(client, conditions, visit, reading, before, Map.of(TURNING_IN_BARRED, barred));
    }

    /**
     * Reads a client's file up to a visit, with everything that was entered on the way.
     *
     * @param root the file
     * @param date the visit; empty for the last one
     * @return the visits, oldest first, the last is the one asked for; empty when {@code problems} got an error
     */
    public static Optional<List<ClientVisit>> readAll(
            YamlNode root, Optional<LocalDate> date, Knowledge knowledge, Problems problems) {
        Problems found = new Problems();
        Optional<ClientFile> read = new ClientReader(knowledge.clientSchema(), knowledge.knownIds()).read(root, found);
        ScreenReader screenReader =
                new ScreenReader(knowledge.vocabulary().reading().battery());
        List<Screen> screens = read.map(f -> screenReader.read(f, found)).orElse(List.of());
        List<ClientVisit> visits = new ArrayList<>();
        if (read.isPresent() && !found.hasErrors()) {
            visits.addAll(upTo(date, read.get(), screens, knowledge, found));
        }
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : Optional.of(List.copyOf(visits));
    }

    private static List<ClientVisit> upTo(
            Optional<LocalDate> date, ClientFile file, List<Screen> screens, Knowledge knowledge, Problems problems) {
        LocalDate last = date.orElse(file.lastVisit().date());
        if (file.visitOn(last).isEmpty()) {
            String dates = file.visits().stream().map(v -> v.date().toString()).collect(Collectors.joining(", "));
            problems.error(file.file(), 0, "There is no visit on " + last, "Name one of " + dates);
            return List.of();
        }
        List<ClientVisit> visits = new ArrayList<>();
        for (Visit visit : file.visits()) {
            if (!visit.date().isAfter(last)) {
                Screen screen = screens.stream()
                        .filter(s -> s.date().equals(visit.date()))
                        .findFirst()
                        .orElseThrow();
                visits.add(one(file, visit, screen, visits, knowledge, problems));
            }
        }
        return visits;
    }

    private static ClientVisit one(
            ClientFile file,
            Visit visit,
            Screen screen,
            List<ClientVisit> earlier,
            Knowledge knowledge,
            Problems problems) {
        Optional<Reading> before = earlier.isEmpty()
                ? Optional.empty()
                : Optional.of(earlier.get(earlier.size() - 1).reading());
        Reading reading = knowledge
                .vocabulary()
                .reading()
                .read(file.client(), withSwitchedOn(file, visit, knowledge), visit, screen, before);
        List<ClientCondition> conditions = new ArrayList<>(file.conditions());
        for (ScreenCondition following : reading.conditions()) {
            if (following.holds() && conditions.stream().noneMatch(c -> c.id().equals(following.id()))) {
                conditions.add(ClientCondition.of(following.id()));
            }
        }
        ClientSafety safety =
                ClientSafety.of(knowledge.safetyRules(), conditions, visit.date(), reading.age(), seen(visit));
        return new ClientVisit(
                file.client(),
                visit,
                reading,
                before,
                List.copyOf(conditions),
                safety,
                wishes(visit, knowledge, problems));
    }

    private static CoachWishes wishes(Visit visit, Knowledge knowledge, Problems problems) {
        Set<String> drills =
                knowledge.catalogue().drills().stream().map(Drill::id).collect(Collectors.toSet());
        CoachWishesReader reader =
                new CoachWishesReader(knowledge.catalogue().words().goals().keySet(), drills, problems);
        return visit.coach().map(reader::read).orElse(CoachWishes.NONE);
    }

    /** The conditions told and those that they switch on, which bar tests as well. */
    private static List<ClientCondition> withSwitchedOn(ClientFile file, Visit visit, Knowledge knowledge) {
        ClientSafety safety = ClientSafety.of(
                knowledge.safetyRules(),
                file.conditions(),
                visit.date(),
                file.client().born().ageOn(visit.date()),
                seen(visit));
        List<ClientCondition> all = new ArrayList<>(file.conditions());
        safety.active().stream()
                .map(ActiveCondition::id)
                .filter(id -> all.stream().noneMatch(c -> c.id().equals(id)))
                .forEach(id -> all.add(ClientCondition.of(id)));
        return List.copyOf(all);
    }

    private static Set<String> seen(Visit visit) {
        return visit.observed().entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }
}
