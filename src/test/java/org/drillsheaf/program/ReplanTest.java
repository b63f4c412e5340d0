package org.drillsheaf.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import com.google.ortools.Loader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.client.ClientFile;
import org.drillsheaf.client.Visit;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.safety.ClientSafety;
import org.drillsheaf.program.build.BuildTask;
import org.drillsheaf.program.build.Level;
import org.drillsheaf.program.build.RuleCheck;
import org.drillsheaf.program.build.SecondOpinion;
import org.drillsheaf.program.build.Valuation;
import org.drillsheaf.screen.NextStep;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * After a re-screen the rest is planned anew with the least needless change: no part of what changed can be taken back without
 * breaking a rule, losing coverage or leaving minutes unused.
 */
class ReplanTest {
    private static final House HOUSE = House.open();
    private static final BuilderSettings SETTINGS = HOUSE.vocabulary.builder();

    /** A program planned anew, with what it was planned from. */
    private record Replanned(Needs needs, BuildTask task, Program program) {
        /** Ids by phase, from the one to work on. */
        List<List<String>> drills() {
            return needs.ahead().stream()
                    .map(p -> program.phase(p.phase()).entries().stream()
                            .map(Entry::drill)
                            .toList())
                    .toList();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "sami-haddad, ADVANCE, nothing",
        "sami-haddad, ADVANCE, sore wrist",
        "sami-haddad, STAY, shorter",
        "odile-farrant, ADVANCE, without its first drill",
        "lise-varga, ADVANCE, shorter",
        "bram-okonjo, STAY, sore wrist"
    })
    void noPartOfTheChangeCanBeTakenBackForFree(String sample, NextStep step, String news) {
        Replanned again = again(sample, step, news);
        List<List<String>> drills = again.drills();
        Valuation now = Valuation.of(again.task(), drills);
        List<Undo> changes = changes(again.task(), drills);

        assertThat(RuleCheck.broken(again.task(), drills)).isEmpty();
        assertThat(now.changes()).isEqualTo(changes.size()).isEqualTo(told(again.program()));
        assertThat(changes).as("small enough to try every part of it").hasSizeLessThan(16);
        for (int part = 1; part < 1 << changes.size(); part++) {
            List<List<String>> back = takenBack(drills, changes, part);
            if (RuleCheck.broken(again.task(), back).isEmpty()) {
                Valuation value = Valuation.of(again.task(), back);
                boolean worse = value.coverage() > now.coverage()
                        || value.coverage() == now.coverage() && value.minutes() > now.minutes();
                assertThat(worse || value.changes() >= now.changes())
                        .as("%s instead of %s", back, drills)
                        .isTrue();
            }
        }
    }

    @Test
    void anotherSolverNeedsAsManyChanges() {
        try {
            Loader.loadNativeLibraries();
        } catch (UnsatisfiedLinkError | RuntimeException e) {
            abort("the second solver has no native library for this machine: " + e.getMessage());
        }
        Replanned again = again("bram-okonjo", NextStep.ADVANCE, "shorter");
        Map<Level, Integer> other = SecondOpinion.best(
                        again.task(), List.of(Level.COVERAGE, Level.MINUTES, Level.CHANGES), 60)
                .orElseThrow();
        Cost value = again.program().proof().value();

        assertThat(again.needs().start()).isEqualTo(Phase.INTEGRATE);
        assertThat(value.changes()).isPositive();
        assertThat(List.of(value.coverage(), value.minutes(), value.changes()))
                .containsExactly(other.get(Level.COVERAGE), other.get(Level.MINUTES), other.get(Level.CHANGES));
    }

    private static Replanned again(String sample, NextStep step, String news) {
        ClientFile file = HOUSE.sample(sample);
        Program before = (Program) HOUSE.builder.build(HOUSE.needs(file, 0));
        int last = file.visits().size() - 1;
        Visit visit = file.visits().get(last);
        Client client = file.client();
        CoachWishes wishes = HOUSE.wishes(visit);
        ClientSafety safety = HOUSE.safety(file, HOUSE.reading(file, last), visit);
        switch (news) {
            case "nothing" -> {}
            case "shorter" -> client = client.with(client.equipment(), client.minutesPerSession() - 4);
            case "sore wrist" -> {
                List<ClientCondition> told = new ArrayList<>(file.conditions());
                told.add(ClientCondition.of("wrist-pain"));
                safety = ClientSafety.of(
                        HOUSE.vocabulary.library().safetyRules(),
                        told,
                        visit.date(),
                        HOUSE.reading(file, last).age(),
                        Set.of());
            }
            case "without its first drill" -> {
                List<Pin> pins = new ArrayList<>(wishes.pins());
                String drill = before.now().entries().get(0).drill();
                pins.add(new Pin(Pin.Kind.MUST_NOT_HAVE, drill, Optional.empty(), "does not like it"));
                wishes = new CoachWishes(wishes.weights(), pins, wishes.doses(), wishes.order(), wishes.start());
            }
            default -> throw new IllegalArgumentException(news);
        }
        Needs needs = HOUSE.needsMaker.after(before, step, client, HOUSE.reading(file, last), safety, wishes);
        Offers offers = HOUSE.builder.offers(needs);
        return new Replanned(
                needs, new TaskMaker(needs, offers, SETTINGS).task(), (Program) HOUSE.builder.build(needs, offers));
    }

    /** A change that may be taken back: a drill that was added goes, one that was left out comes again. */
    private record Undo(int phase, String drill, boolean added) {}

    private static List<Undo> changes(BuildTask task, List<List<String>> drills) {
        List<Undo> changes = new ArrayList<>();
        for (int p = 0; p < drills.size(); p++) {
            Set<String> kept = task.phases().get(p).kept();
            for (String id : drills.get(p)) {
                if (!kept.isEmpty() && !kept.contains(id)) {
                    changes.add(new Undo(p, id, true));
                }
            }
            for (String id : kept) {
                if (!drills.get(p).contains(id)) {
                    changes.add(new Undo(p, id, false));
                }
            }
        }
        return changes;
    }

    private static List<List<String>> takenBack(List<List<String>> drills, List<Undo> changes, int part) {
        List<Set<String>> back = new ArrayList<>();
        drills.forEach(phase -> back.add(new HashSet<>(phase)));
        for (int i = 0; i < changes.size(); i++) {
            Undo undo = changes.get(i);
            if ((part & 1 << i) != 0 && undo.added()) {
                back.get(undo.phase()).remove(undo.drill());
            } else if ((part & 1 << i) != 0) {
                back.get(undo.phase()).add(undo.drill());
            }
        }
        return back.stream().map(List::copyOf).toList();
    }

    private static int told(Program program) {
        return (int) program.changes().stream()
                .filter(c -> c.kind() != ProgramChange.Kind.DOSE)
                .count();
    }
}
