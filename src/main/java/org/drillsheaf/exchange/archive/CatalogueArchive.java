package org.drillsheaf.exchange.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.drillsheaf.drill.library.HouseLayer.Laid;
import org.drillsheaf.drill.library.HouseLayer.Standing;
import org.drillsheaf.drill.library.Layers;
import org.drillsheaf.exchange.DrillYaml;

/**
 * Packs the catalogue as it counts, the clinic's own drills over the starter catalogue: {@code drills/} holds one YAML file a
 * drill, {@code pictures/} what they look like, {@code as-exported/} what each was at that moment, and {@code starter/} the
 * starter drill below one of the clinic's, {@code null} where there is none. The same catalogue on the same day gives the same bytes.
 */
public final class CatalogueArchive {
    static final String DRILLS = "drills/";
    static final String PICTURES = "pictures/";
    static final String AS_EXPORTED = "as-exported/";
    static final String STARTER = "starter/";
    /** The earliest time that a zip file can hold, so that the hour of packing leaves no trace. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final ZipOutputStream zip;
    private final Map<String, String> hashes = new LinkedHashMap<>();

    private CatalogueArchive(ZipOutputStream zip) {
        this.zip = zip;
    }

    /**
     * Writes the archive and leaves the stream open.
     *
     * @param pictures empty for an archive without pictures
     * @param progress is told how many drills are packed
     */
    public static void write(
            Layers layers,
            LocalDate exportedOn,
            Optional<ArchivePictures> pictures,
            OutputStream out,
            IntConsumer progress)
            throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        CatalogueArchive archive = new CatalogueArchive(zip);
        int done = 0;
        for (Map.Entry<String, Laid> drill : layers.drills().entrySet()) {
            archive.drill(drill.getKey(), drill.getValue(), layers, pictures);
            progress.accept(++done);
        }
        archive.put(Manifest.NAME, new Manifest(exportedOn, archive.hashes).write());
        zip.finish();
    }

    private void drill(String id, Laid drill, Layers layers, Optional<ArchivePictures> pictures) throws IOException {
        String json = drill.node().json().toString();
        // A withdrawn drill is made from two files, so no text of it was ever written.
        String text = drill.standing() == Standing.WITHDRAWN
                ? DrillYaml.write(drill.node().json())
                : layers.text(drill.node());
        put(DRILLS + id + ".yaml", text);
        put(AS_EXPORTED + id + ".json", json);
        if (drill.standing() != Standing.STARTER) {
            put(
                    STARTER + id + ".json",
                    drill.starter().map(s -> s.json().toString()).orElse("null"));
        }
        if (pictures.isPresent()) {
            for (var picture : pictures.get().of(drill.node()).entrySet()) {
                put(PICTURES + id + "-" + picture.getKey().id() + ".svg", picture.getValue());
            }
        }
    }

    private void put(String name, String text) throws IOException {
        put(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private void put(String name, byte[] bytes) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
        hashes.put(name, Manifest.sha256(bytes));
    }
}
