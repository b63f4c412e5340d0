package org.drillsheaf.desk.drill;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlDocument;
import org.drillsheaf.course.Folders;
import org.drillsheaf.drill.library.HouseLayer.Laid;
import org.drillsheaf.drill.library.Layers;

/**
 * The clinic's own drills on disk: {@code house/exercise-library}. A starter drill is never written; keeping one makes a house
 * version of it. A file is written beside its place and moved there whole, so that it is never half written.
 */
public final class DrillFolder {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    /** Keys of a drill's file in their usual order. */
    static final List<String> ORDER = List.of(
            "id",
            "name",
            "family",
            "level",
            "phases",
            "goals",
            "positions",
            "equipment",
            "status",
            "revision",
            "based-on",
            "author",
            "reviewed-on",
            "reason",
            "prerequisites",
            "easier",
            "harder",
            "translations",
            "purpose",
            "set-up",
            "action",
            "breathing",
            "feel",
            "not-feel",
            "faults",
            "dose",
            "stop",
            "conditions",
            "tags",
            "pose",
            "alt-text",
            "variants");

    private final Path drills;

    public DrillFolder(Folders folders) {
        drills = folders.files().clinicDrills().orElseThrow();
    }

    /**
     * A drill taken up to be edited.
     *
     * @param loaded the clinic's file as it was read; empty when the clinic has none yet
     */
    public record Opened(String id, YamlDocument document, Optional<String> loaded) {}

    /** Takes up a drill of the catalogue; empty when its text is no YAML. */
    public Optional<Opened> open(String id, Layers layers, Problems problems) {
        Laid laid = layers.drills().get(id);
        if (laid == null) {
            problems.error(id, 0, "There is no such drill", "Choose one from the list");
            return Optional.empty();
        }
        boolean ownFile = laid.house().filter(h -> !h.has("withdrawn")).isPresent();
        String text = layers.text(
                ownFile ? laid.house().orElseThrow() : laid.starter().orElseThrow());
        Optional<String> loaded = laid.house().map(layers::text);
        return YamlDocument.of(shown(id), text, problems).map(document -> {
            int delivered = laid.starter().flatMap(s -> s.integer("revision")).orElse(0);
            YamlDocument house = ownFile || delivered == 0
                    ? document
                    : document.with("/based-on", JSON.numberNode(delivered), ORDER)
                            .with("/revision", JSON.numberNode(1));
            return new Opened(id, house, loaded);
        });
    }

    /** A new drill of the clinic's own, which begins like another one. */
    public Opened copy(YamlDocument of, String id, String name) {
        YamlDocument copy = of.without("/based-on")
                .with("/id", JSON.textNode(id))
                .with("/name/en", JSON.textNode(name))
                .with("/status", JSON.textNode("draft"))
                .with("/revision", JSON.numberNode(1));
        return new Opened(
                id, YamlDocument.of(shown(id), copy.text(), new Problems()).orElseThrow(), Optional.empty());
    }

    private static String shown(String id) {
        return "house/exercise-library/" + id + ".yaml";
    }

    /** The next version of a draft, as it would be written; the first house version is version 1. */
    public static YamlDocument next(Opened opened, YamlDocument draft) {
        boolean first = opened.loaded().isEmpty()
                || opened.loaded().filter(t -> t.contains("withdrawn: true")).isPresent();
        int revision = draft.at("/revision").asInt(0);
        return first ? draft : draft.with("/revision", JSON.numberNode(revision + 1));
    }

    /**
     * Writes a drill.
     *
     * @return empty when it could not be written, or when somebody else wrote it since it was opened; nothing is changed then
     */
    public Optional<Opened> write(Opened opened, YamlDocument document, Problems problems) {
        Path file = drills.resolve(opened.id() + ".yaml");
        String shown = shown(opened.id());
        try {
            Files.createDirectories(drills);
            Optional<String> there = Files.exists(file) ? Optional.of(Files.readString(file)) : Optional.empty();
            if (!there.equals(opened.loaded())) {
                problems.error(
                        shown,
                        0,
                        "Somebody changed this drill since you opened it",
                        "Copy what you need, open the drill again and put it in; nothing of yours was written");
                return Optional.empty();
            }
            replace(file, document.text());
            return Optional.of(new Opened(opened.id(), document, Optional.of(document.text())));
        } catch (IOException e) {
            problems.error(
                    shown,
                    0,
                    "The drill could not be written: " + e.getMessage(),
                    "Check the room on the disk and your rights in the folder; the file there is as it was");
            return Optional.empty();
        }
    }

    private static void replace(Path file, String text) throws IOException {
        Path beside = Files.createTempFile(Optional.ofNullable(file.getParent()).orElseThrow(), ".keeping-", ".tmp");
        try {
            try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
                channel.write(java.nio.ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8)));
                channel.force(true);
            }
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
    }
}
