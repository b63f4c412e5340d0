package org.drillsheaf.desk.program;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.Pin;
import org.drillsheaf.store.record.Content;

/** The coach's wishes as they are written in a visit: each method gives the visit with one wish more, other, or gone. */
public final class WishesEdit {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private WishesEdit() {}

    /** @param weight empty for the weight that the reading suggests */
    public static Content weight(Content visit, Phase phase, String goal, OptionalInt weight) {
        return changed(
                visit,
                "weights",
                w -> is(w, "phase", phase.id()) && is(w, "goal", goal),
                weight.isEmpty()
                        ? Optional.empty()
                        : Optional.of(NODES.objectNode()
                                .put("phase", phase.id())
                                .put("goal", goal)
                                .put("weight", weight.getAsInt())));
    }

    /** Pins a drill in a phase, or leaves it out there. */
    public static Content pin(Content visit, Pin.Kind kind, String drill, Phase phase) {
        return changed(
                visit,
                "pins",
                p -> isPin(p, drill, phase),
                Optional.of(NODES.objectNode()
                        .put("kind", kind.id())
                        .put("drill", drill)
                        .put("phase", phase.id())));
    }

    /** Takes back what was asked of a drill in a phase, and what was asked of it everywhere. */
    public static Content unpin(Content visit, String drill, Optional<Phase> phase) {
        return changed(
                visit,
                "pins",
                p -> is(p, "drill", drill)
                        && (phase.isEmpty()
                                || !p.has("phase")
                                || is(p, "phase", phase.get().id())),
                Optional.empty());
    }

    /** Another drill in the place of one. */
    public static Content swap(Content visit, Phase phase, String out, String in) {
        Content left = pin(unpin(visit, out, Optional.of(phase)), Pin.Kind.MUST_NOT_HAVE, out, phase);
        return pin(left, Pin.Kind.MUST_HAVE, in, phase);
    }

    /** A dose in place of the builder's; empty numbers are left to it, and all empty takes the wish back. */
    public static Content dose(
            Content visit, String drill, Phase phase, OptionalInt sets, OptionalInt each, OptionalInt effort) {
        ObjectNode wish = NODES.objectNode().put("drill", drill).put("phase", phase.id());
        sets.ifPresent(n -> wish.put("sets", n));
        each.ifPresent(n -> wish.put("each", n));
        effort.ifPresent(n -> wish.put("effort", n));
        return changed(
                visit,
                "doses",
                d -> is(d, "drill", drill) && is(d, "phase", phase.id()),
                wish.size() > 2 ? Optional.of(wish) : Optional.empty());
    }

    /** The drills of a phase in this order. */
    public static Content order(Content visit, Phase phase, List<String> drills) {
        ArrayNode list = NODES.arrayNode();
        drills.forEach(list::add);
        ObjectNode wish = NODES.objectNode().put("phase", phase.id());
        wish.set("drills", list);
        return changed(visit, "order", o -> is(o, "phase", phase.id()), Optional.of(wish));
    }

    private static boolean isPin(JsonNode pin, String drill, Phase phase) {
        return is(pin, "drill", drill) && is(pin, "phase", phase.id());
    }

    private static boolean is(JsonNode item, String key, String value) {
        return item.path(key).asText("").equals(value);
    }

    private static Content changed(
            Content visit, String list, Predicate<JsonNode> replaced, Optional<ObjectNode> wanted) {
        ArrayNode items = NODES.arrayNode();
        visit.below("/coach/" + list).ifPresent(before -> before.json().forEach(item -> {
            if (!replaced.test(item)) {
                items.add(item);
            }
        }));
        wanted.ifPresent(items::add);
        Content changed =
                items.isEmpty() ? visit.without("/coach/" + list) : visit.with("/coach/" + list, Content.of(items));
        boolean nothing = changed.below("/coach")
                .map(c -> c.fields().keySet().equals(java.util.Set.of("")))
                .orElse(false);
        return nothing ? changed.without("/coach") : changed;
    }
}
