package org.drillsheaf.course;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.handout.HandoutFiles;
import org.drillsheaf.handout.StyleText;

/**
 * The program's own data and the clinic's as one block of bytes: vocabularies, catalogue, templates, house style. The same
 * folders give the same bytes, so that a record keeps them once for all papers drawn from them. Holds nothing of any client.
 */
final class FrozenHouse {
    private static final LocalDateTime ENTRY_TIME = LocalDateTime.of(2000, 1, 1, 0, 0);
    private static final String CLINIC = "clinic";

    private FrozenHouse() {}

    /**
     * @param style the house style where it lies in no file; empty for the file's
     * @throws UncheckedIOException when a folder cannot be read
     */
    static byte[] pack(Folders folders, Optional<StyleText> style) {
        Map<String, Path> files = new TreeMap<>();
        for (Path part : List.of(folders.vocabularies(), folders.catalogue(), folders.templates())) {
            collect(part, folders.home().relativize(part).toString(), files);
        }
        Map<String, byte[]> kept = new TreeMap<>();
        style.or(() -> HandoutFiles.style(
                        folders.house(), new Problems())) // one that cannot be read is told when it is used
                .ifPresent(found -> keep(folders, found, kept));
        kept.keySet().forEach(name -> files.put(name, folders.house()));
        collect(folders.clinic(), CLINIC, files);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            for (Map.Entry<String, Path> file : files.entrySet()) {
                byte[] content = kept.get(file.getKey());
                put(zip, file.getKey(), content == null ? Files.readAllBytes(file.getValue()) : content);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own data cannot be read", e);
        }
        return bytes.toByteArray();
    }

    private static void keep(Folders folders, StyleText style, Map<String, byte[]> kept) {
        Path place = folders.home().relativize(folders.house());
        kept.put(place.toString(), style.yaml().getBytes(StandardCharsets.UTF_8));
        style.logo().ifPresent(logo -> YamlNode.parse(style.name(), style.yaml(), new Problems())
                .flatMap(node -> node.text("logo"))
                .ifPresent(name -> kept.put(place.resolveSibling(name).toString(), logo)));
    }

    private static void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
        ZipEntry entry = new ZipEntry(name.replace('\\', '/'));
        entry.setTimeLocal(ENTRY_TIME);
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }

    private static void collect(Path folder, String name, Map<String, Path> files) {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> found = Files.walk(folder)) {
            found.filter(Files::isRegularFile).forEach(file -> files.put(name + "/" + folder.relativize(file), file));
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own data cannot be listed", e);
        }
    }

    /**
     * Lays the data out again.
     *
     * @param into an empty folder
     * @throws IOException when it cannot be written there, or the bytes are none of {@link #pack}
     */
    static Folders unpack(byte[] packed, Path into) throws IOException {
        Path home = into.toAbsolutePath().normalize();
        List<Path> written = new ArrayList<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(packed), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                Path file = home.resolve(entry.getName()).normalize();
                if (!file.startsWith(home)) {
                    throw new IOException("an entry that leads out of the folder");
                }
                Files.createDirectories(file.getParent());
                Files.copy(zip, file);
                written.add(file);
            }
        }
        if (written.isEmpty()) {
            throw new IOException("nothing was packed");
        }
        return new Folders(home, home.resolve(CLINIC));
    }
}
