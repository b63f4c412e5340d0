package org.drillsheaf.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Folders;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.exchange.sheet.CsvFile;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.ClientRecord;
import org.drillsheaf.store.record.ClientText;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.Part;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.record.SaveResult;

/** What others did meanwhile: a second desk at the same record, and a clinic whose drills come in. */
final class OtherDesk {
    private static final String DEPTH = "/screen/squat-depth/value";

    private OtherDesk() {}

    /** Two desks typed another squat depth into the last visit; nobody has decided yet. */
    static void typedTheSameField(Store store, String clientId) {
        UUID key = store.clients().key(clientId).orElseThrow();
        ClientRecord record = store.clients().load(key).orElseThrow();
        PartKey visit = PartKey.visit(record.visits().get(record.visits().size() - 1));
        Part part = record.part(visit).orElseThrow();
        Content content = part.content().orElseThrow();
        int depth = Integer.parseInt(content.value(DEPTH).orElseThrow());
        store.clients().save(key, visit, part.version(), content.with(DEPTH, depth + 1), "Joran Hale");
        assertThat(store.clients().save(key, visit, part.version(), content.with(DEPTH, depth + 2), "Tamsin Rook"))
                .isInstanceOf(SaveResult.Clashed.class);
    }

    /** A client like Lise Varga who was entered and has had no visit yet. */
    static void addedAClient(Store store, String id, String name) throws IOException {
        String yaml = Files.readString(Path.of("samples/clients/lise-varga.yaml"));
        Map<PartKey, Content> parts = new HashMap<>(
                ClientText.parse(id, yaml, new Problems()).orElseThrow().parts());
        parts.keySet().removeIf(part -> part.date().isPresent());
        parts.computeIfPresent(
                PartKey.CLIENT, (part, person) -> person.with("/id", id).with("/name", name));
        store.clients().add(new ClientText(id, parts), "Joran Hale");
    }

    /** A sheet of all drills in which one was renamed. */
    static Path sheetWithOneNewName(Folders folders, Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            CsvFile.write(LibraryFiles.layers(folders.files(), new Problems()), out);
        }
        String exported = Files.readString(file);
        int drill = exported.indexOf("Sitting, hum the breath out");
        String edited = exported.substring(drill)
                .replaceFirst("hum the breath out", "hum a long breath out")
                .replaceFirst("2026-10-12", "2026-05-12"); // reviewed before today at the desk
        return Files.writeString(file, exported.substring(0, drill) + edited);
    }
}
