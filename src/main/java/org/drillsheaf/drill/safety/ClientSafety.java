package org.drillsheaf.drill.safety;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.saying.Saying;

/**
 * What a client's conditions come to on the day of a visit: every condition that holds, those that others switch on too,
 * with all settings.
 *
 * @param active in the order told, then those switched on
 * @param combinations the rules for several conditions that hold
 * @param waits why the program waits; empty when it need not
 * @param barredGoals goal id to the condition that bars it
 * @param inPersonOnly too many conditions for a program at home
 * @param remarks what the coach should know: settings assumed, settings loosened, words that were not understood
 */
public record ClientSafety(
        List<ActiveCondition> active,
        List<SafetyRules.Combination> combinations,
        List<Waiting> waits,
        Map<String, String> barredGoals,
        boolean inPersonOnly,
        List<Saying> remarks) {

    private static final Set<String> COUNTED_GROUPS = Set.of("joints", "heart", "belly");

    /**
     * A reason to wait with the program.
     *
     * @param unanswered ids of the settings that nobody answered and that count against the client until then
     */
    public record Waiting(String condition, Saying reason, Set<String> unanswered) {
        public Waiting {
            unanswered = Set.copyOf(unanswered);
        }
    }

    public ClientSafety {
        active = List.copyOf(active);
        combinations = List.copyOf(combinations);
        waits = List.copyOf(waits);
        barredGoals = Map.copyOf(barredGoals);
        remarks = List.copyOf(remarks);
    }

    /**
     * Works out what holds.
     *
     * @param told the client's conditions as told
     * @param visit the day of the visit; weeks are counted to it
     * @param age years on that day
     * @param seen what the coach has seen, by key; anything else counts as not seen
     */
    public static ClientSafety of(
            SafetyRules rules, List<ClientCondition> told, LocalDate visit, int age, Set<String> seen) {
        return new Expansion(rules, visit, age, seen).expand(told);
    }

    /** Whether a condition of this id holds. */
    public boolean has(String condition) {
        return active.stream().anyMatch(a -> a.id().equals(condition));
    }

    /** One pass over the conditions, from the told ones to those they switch on. */
    private static final class Expansion {
        private final SafetyRules rules;
        private final LocalDate visit;
        private final int age;
        private final Set<String> seen;
        private final Map<String, ActiveCondition> active = new LinkedHashMap<>();
        private final Set<String> done = new TreeSet<>();
        private final List<Waiting> waits = new ArrayList<>();
        private final List<Saying> remarks = new ArrayList<>();

        private Expansion(SafetyRules rules, LocalDate visit, int age, Set<String> seen) {
            this.rules = rules;
            this.visit = visit;
            this.age = age;
            this.seen = seen;
        }

        /** A condition still to be looked at, and the one that switched it on. */
        private record Pending(ClientCondition told, Optional<String> because) {}

        private ClientSafety expand(List<ClientCondition> told) {
            Deque<Pending> pending = new ArrayDeque<>();
            told.forEach(c -> pending.add(new Pending(c, Optional.empty())));
            for (SafetyRules.ByAge byAge : rules.byAge()) {
                if (age >= byAge.years() && !seen.contains(byAge.unlessSeen())) {
                    pending.add(new Pending(ClientCondition.of(byAge.condition()), Optional.of("age")));
                }
            }
            while (!pending.isEmpty()) {
                Pending next = pending.poll();
                if (done.add(next.told().id())) {
                    pending.addAll(look(next));
                }
            }
            return new ClientSafety(
                    List.copyOf(active.values()),
                    rules.combinations().stream()
                            .filter(c -> c.holds(active.keySet(), seen))
                            .toList(),
                    waits,
                    barredGoals(),
                    counted() >= rules.inPersonFrom(),
                    remarks);
        }

        /** Adds the condition if it holds, and returns those it switches on. */
        private List<Pending> look(Pending next) {
            ClientCondition told = next.told();
            Optional<Condition> known = rules.condition(told.id());
            if (known.isEmpty()) {
                waits.add(new Waiting(
                        told.id(),
                        Saying.phrase("waits.no-rules").with("condition", Saying.written(told.id())),
                        Set.of()));
                return List.of();
            }
            Condition condition = known.get();
            SettingValues settings = settings(condition, told);
            Facts nothing = new Facts(Map.of(), Map.of(), Set.of());
            if (!condition.applies().evaluate(nothing, settings).mayBe()) {
                remarks.add(Saying.phrase("remark.no-longer").with("condition", name(condition)));
                return List.of();
            }
            active.put(condition.id(), new ActiveCondition(condition, settings, told.sides(), next.because()));
            for (Condition.Wait wait : condition.waits()) {
                if (wait.expression().evaluate(nothing, settings).mayBe()) {
                    Set<String> unanswered = new TreeSet<>(wait.expression().settings());
                    unanswered.retainAll(settings.assumed());
                    waits.add(new Waiting(condition.id(), Saying.own(wait.reason()), unanswered));
                }
            }
            List<Pending> more = new ArrayList<>();
            for (Condition.Link link : condition.switchesOn()) {
                if (link.expression().evaluate(nothing, settings).mayBe()) {
                    more.add(new Pending(linked(link, told), Optional.of(condition.id())));
                }
            }
            return more;
        }

        private static ClientCondition linked(Condition.Link link, ClientCondition told) {
            return new ClientCondition(
                    link.condition(),
                    told.sides(),
                    told.since(),
                    link.settings(),
                    Optional.empty(),
                    Set.of(),
                    told.line());
        }

        private SettingValues settings(Condition condition, ClientCondition told) {
            Map<String, String> values = new TreeMap<>();
            Set<String> assumed = new TreeSet<>();
            for (SettingDefinition setting : condition.settings().values()) {
                Optional<String> written = told.setting(setting.id());
                Optional<String> value = written.flatMap(setting::read);
                Saying.Phrase remark = Saying.phrase("remark."
                                + (value.isPresent() ? "loosened" : written.isPresent() ? "not-understood" : "assumed"))
                        .with("condition", name(condition))
                        .with("setting", Saying.own(setting.name()))
                        .with("cautious", word(setting.cautious()));
                if (value.isEmpty()) {
                    assumed.add(setting.id());
                    remarks.add(remark.with("value", Saying.written(written.orElse(""))));
                } else if (!value.get().equals(setting.cautious())) {
                    remarks.add(remark.with("value", word(value.get())));
                }
                values.put(setting.id(), value.orElse(setting.cautious()));
            }
            boolean bothSides = condition.sided() && told.sides().size() != 1;
            return new SettingValues(values, assumed, told.weeksOn(visit), age, seen, bothSides);
        }

        private static Saying name(Condition condition) {
            return Saying.name(Saying.Name.Kind.CONDITION, condition.id());
        }

        private static Saying word(String value) {
            return Saying.name(Saying.Name.Kind.WORD, value);
        }

        private Map<String, String> barredGoals() {
            Map<String, String> barred = new TreeMap<>();
            active.values().forEach(a -> a.condition().barredGoals().forEach(goal -> barred.putIfAbsent(goal, a.id())));
            return barred;
        }

        /** Conditions of joints, heart and belly, without those that come with another one that is counted. */
        private long counted() {
            return active.values().stream()
                    .filter(a -> COUNTED_GROUPS.contains(a.condition().group()))
                    .filter(a -> a.because()
                            .map(active::get)
                            .filter(b -> COUNTED_GROUPS.contains(b.condition().group()))
                            .isEmpty())
                    .count();
        }
    }
}
