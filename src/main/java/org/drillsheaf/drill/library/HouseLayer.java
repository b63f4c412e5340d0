package org.drillsheaf.drill.library;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;

/**
 * Lays a clinic's own drills over the starter catalogue. A file of the clinic replaces the whole starter drill of the same
 * id and says which starter revision it is based on; or it is a drill of the clinic's own; or it withdraws a starter drill.
 * Nothing is mixed from both: a newer starter revision is told and left to the clinic.
 */
public final class HouseLayer {

    /** Where a drill of the catalogue comes from. */
    public enum Standing {
        /** As delivered. */
        STARTER,
        /** The clinic's version of a starter drill. */
        REPLACED,
        /** The clinic's own drill. */
        ADDED,
        /** A starter drill that the clinic no longer gives; old programs still print it. */
        WITHDRAWN
    }

    /**
     * One drill of the catalogue with what it was made from.
     *
     * @param node the drill that counts
     * @param starter as delivered; empty for a drill of the clinic's own
     * @param house the clinic's file; empty for a drill as delivered
     */
    public record Laid(YamlNode node, Standing standing, Optional<YamlNode> starter, Optional<YamlNode> house) {}

    private final YamlSchema withdrawalSchema;
    private final Problems problems;

    private HouseLayer(YamlSchema withdrawalSchema, Problems problems) {
        this.withdrawalSchema = withdrawalSchema;
        this.problems = problems;
    }

    /**
     * @param starter id to the delivered file
     * @param house id to the clinic's file
     * @param withdrawalSchema the shape of a file that withdraws a drill
     * @param problems takes mistakes of the clinic's files, and a warning for each starter drill that is newer
     * @return every drill in the order of the ids
     */
    public static Map<String, Laid> lay(
            Map<String, YamlNode> starter,
            Map<String, YamlNode> house,
            YamlSchema withdrawalSchema,
            Problems problems) {
        HouseLayer layer = new HouseLayer(withdrawalSchema, problems);
        Map<String, Laid> laid = new TreeMap<>(asDelivered(starter));
        house.forEach((id, node) ->
                layer.one(id, node, Optional.ofNullable(starter.get(id))).ifPresent(one -> laid.put(id, one)));
        return laid;
    }

    /** The starter catalogue alone. */
    public static Map<String, Laid> asDelivered(Map<String, YamlNode> starter) {
        Map<String, Laid> laid = new LinkedHashMap<>();
        starter.forEach(
                (id, node) -> laid.put(id, new Laid(node, Standing.STARTER, Optional.of(node), Optional.empty())));
        return laid;
    }

    /** Whether a clinic's file withdraws a drill instead of holding one. */
    public static boolean isWithdrawal(YamlNode file) {
        return file.has("withdrawn");
    }

    private Optional<Laid> one(String id, YamlNode house, Optional<YamlNode> starter) {
        if (isWithdrawal(house)) {
            return withdrawn(id, house, starter);
        }
        if (starter.isEmpty()) {
            house.get("based-on")
                    .ifPresent(place -> warn(
                            place,
                            "There is no starter drill “" + id + "” that this could be based on",
                            "Leave “based-on” out if the drill is the clinic's own"));
            return Optional.of(new Laid(house, Standing.ADDED, starter, Optional.of(house)));
        }
        if (house.has("based-on")) {
            compare(house.nearest("/based-on"), starter.get());
        } else {
            house.nearest("/id")
                    .error(
                            problems,
                            "“" + id + "” is a starter drill, and this file does not say which revision it replaces",
                            "Add “based-on: " + revision(starter.get()) + "”, or give the drill an id of its own");
        }
        return Optional.of(new Laid(house, Standing.REPLACED, starter, Optional.of(house)));
    }

    private Optional<Laid> withdrawn(String id, YamlNode house, Optional<YamlNode> starter) {
        Problems own = new Problems();
        withdrawalSchema.check(house, own);
        problems.addAll(own.all());
        if (own.hasErrors()) {
            return starter.map(s -> new Laid(s, Standing.STARTER, starter, Optional.of(house)));
        }
        if (starter.isEmpty()) {
            warn(
                    house.nearest("/id"),
                    "There is no starter drill “" + id + "” to withdraw",
                    "Remove this file, or write “status: withdrawn” in a drill of the clinic's own");
            return Optional.empty();
        }
        compare(house.nearest("/based-on"), starter.get());
        YamlNode over = house.without("withdrawn").with("status", "withdrawn");
        return Optional.of(new Laid(starter.get().with(over), Standing.WITHDRAWN, starter, Optional.of(house)));
    }

    /** The two revisions side by side. */
    private void compare(YamlNode place, YamlNode starter) {
        int basedOn = place.integer().orElse(0);
        int delivered = revision(starter);
        if (basedOn > delivered && delivered > 0) {
            place.error(
                    problems,
                    "This is based on revision " + basedOn + " of the starter drill, which is at revision " + delivered,
                    "Write “based-on: " + delivered + "”, or bring the starter catalogue up to date");
        } else if (basedOn > 0 && basedOn < delivered) {
            warn(
                    place,
                    "The starter drill has moved on to revision " + delivered + "; this is based on revision "
                            + basedOn,
                    "Compare it with " + starter.file() + ", take over what you want and write “based-on: " + delivered
                            + "”");
        }
    }

    private void warn(YamlNode place, String what, String remedy) {
        problems.add(Problem.warning(place.file(), place.line(), what, remedy));
    }

    private static int revision(YamlNode starter) {
        return starter.integer("revision").orElse(0);
    }
}
