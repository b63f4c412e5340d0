package org.drillsheaf.program;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;
import org.drillsheaf.program.build.Level;

/** Reads the builder's settings from YAML. */
public final class BuilderSettingsReader {
    private BuilderSettingsReader() {}

    /** @return empty when the file has errors, which then stand in {@code problems} */
    public static Optional<BuilderSettings> read(
            YamlNode file, YamlSchema schema, Set<String> goals, Problems problems) {
        Problems own = new Problems();
        schema.check(file, own);
        YamlNode moderate = file.nearest("/moderate-effort");
        String goal = moderate.text("goal").orElse("");
        if (!own.hasErrors() && !goals.contains(goal)) {
            moderate.error(own, "There is no goal “" + goal + "”", "Use an id of the vocabulary");
        }
        problems.addAll(own.all());
        if (own.hasErrors()) {
            return Optional.empty();
        }
        Map<String, BuilderSettings.DoseBound> bounds = new HashMap<>();
        for (YamlNode bound : file.nearest("/dose-bounds").items()) {
            bounds.put(
                    bound.text("id").orElseThrow(),
                    new BuilderSettings.DoseBound(
                            PhaseTableReader.whole(bound, "most"), PhaseTableReader.source(bound.nearest("/source"))));
        }
        YamlNode effort = moderate.nearest("/effort");
        return Optional.of(new BuilderSettings(
                file.texts("order").stream()
                        .map(level -> Level.of(level).orElseThrow())
                        .toList(),
                PhaseTableReader.whole(file, "carried-over"),
                PhaseTableReader.whole(file, "most-steps"),
                PhaseTableReader.whole(file, "alternatives"),
                PhaseTableReader.whole(file, "least-dose-percent"),
                bounds,
                new BuilderSettings.Moderate(
                        goal,
                        PhaseTableReader.whole(moderate, "strength"),
                        PhaseTableReader.phases(moderate),
                        PhaseTableReader.number(effort, 0),
                        PhaseTableReader.number(effort, 1),
                        PhaseTableReader.source(moderate.nearest("/source")))));
    }
}
