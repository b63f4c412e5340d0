package org.drillsheaf.drill;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;

/** One complete drill as a text, and the project's vocabularies, for the tests of this package. */
public final class SampleDrill {
    public static final String TEXT =
            """
            id: wall-lean-breath
            name: {en: Wall lean with long breath}
            family: wall-lean
            level: 1
            phases: [settle, restore]
            goals: {inhibit-back-tone: 3, full-exhale: 2}
            positions: [leaning]
            equipment: [wall]
            status: in-use
            revision: 1
            author: Otterbrook drill group
            reviewed-on: 2026-10-12
            reason: First version.
            prerequisites: []
            purpose: {en: Lets your lower back have a rest.}
            set-up:
              - {en: "Stand with your back to a wall. Put your heels {heels-from-wall} from it."}
            action:
              - {en: "Reach both arms forward and down.", mark: reach}
            breathing: {in-seconds: 3, out-seconds: [6, 8], pause-seconds: 2, in-by: nose, out-by: mouth, focus: 1, full-exhale: true, resist: false, cue: {en: Breathe out as you reach.}}
            feel: [{en: Sides of your belly at work}]
            not-feel: [{en: Your lower back at work}]
            faults: [{fault: {en: You push with your legs.}, fix: {en: Soften your knees. Let your heels get heavy.}}]
            dose:
              count: breaths
              noun: {en: {one: breath, other: breaths}}
              sets: {default: 2, range: [1, 3]}
              each: {default: 5, range: [4, 6]}
              hold-seconds: {default: 0, range: [0, 0]}
              effort: {default: 2, range: [1, 2]}
              sides: both-together
            stop: []
            conditions:
              - {id: pregnancy, action: modify, variant: hand-on-worktop, reason: {en: A hand steadies you.}, source: {kind: common-practice, text: Used in the trade.}}
            tags: {belly: 0, can-hold: true, end-range: false, breath-hold: false, head-down: false, neck-turn: false, stand: 1}
            pose:
              views: [side]
              distances: {heels-from-wall: {of: heel-back.R, from: wall, along: x}}
              start:
                root: leaning
                joints: {pelvis: {tilt: -14}, spine: {lumbar: 14, thoracic: 34}, hip: {flex: 20, abd: 4}, knee: {flex: 26}, shoulder: {from-trunk: 30}}
                props: [{wall: {x: 0, faces: +x}}, {floor: {}}]
                contacts: [{touch: low-back, plane: wall}, {flat: feet, plane: floor}, {touch: feet, plane: floor}, {place: heel.R, x: 0.16}]
                solve: [root.x, root.y, hip.flex]
              move: {from: start, joints: {shoulder: {from-trunk: 50}}, feel: [obliques], marks: [{id: reach, arrow: {at: tip.R, dir: [0.77,-0.64,0], len: 0.12}}]}
            variants:
              - {id: hand-on-worktop, name: {en: Hand on a worktop}, change: {en: Keep one hand on the worktop.}, equipment: [wall, counter], pose: {start: {joints: {knee: {flex: 10}}}}}
            """;

    private SampleDrill() {}

    public static YamlSchema schema() {
        return YamlSchema.of(file("shared/schemas/drill.schema.json"));
    }

    public static DrillWords words() {
        Problems problems = new Problems();
        DrillWords words = new DrillWords(
                WordsReader.goals(yaml("goals", problems), schema("goals"), problems),
                WordsReader.positions(yaml("positions", problems), schema("positions"), problems),
                WordsReader.equipment(yaml("equipment", problems), schema("equipment"), problems),
                Set.of("pregnancy", "hip-posterior"),
                Set.of("loaded-turn"));
        if (!problems.isEmpty()) {
            throw new AssertionError(problems.all().toString());
        }
        return words;
    }

    /** The sample read as a drill. */
    public static Drill drill() {
        return drill(TEXT);
    }

    public static Drill drill(String text) {
        Problems problems = new Problems();
        Catalogue catalogue =
                new CatalogueReader(words(), schema()).read(Map.of("wall-lean-breath.yaml", text), problems);
        if (problems.hasErrors()) {
            throw new AssertionError(problems.all().toString());
        }
        return catalogue.drill("wall-lean-breath").orElseThrow();
    }

    private static YamlNode yaml(String name, Problems problems) {
        String path = "shared/" + name + ".yaml";
        return YamlNode.parse(path, file(path), problems).orElseThrow();
    }

    private static YamlSchema schema(String name) {
        return YamlSchema.of(file("shared/schemas/" + name + ".schema.json"));
    }

    private static String file(String path) {
        try {
            return Files.readString(Path.of(path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
