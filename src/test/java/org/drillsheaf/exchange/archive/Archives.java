package org.drillsheaf.exchange.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.exchange.Incoming;
import org.drillsheaf.exchange.SmallClinic;

/** Archives as a person or an attacker would make them with any zip program. */
final class Archives {
    private Archives() {}

    static Path export(SmallClinic clinic, Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            CatalogueArchive.write(clinic.layers(), SmallClinic.TODAY, Optional.empty(), out, done -> {});
        }
        return file;
    }

    static Incoming read(Path file) {
        Problems problems = new Problems();
        Optional<Incoming> incoming = ArchiveReader.read(file, problems);
        assertThat(problems.all()).isEmpty();
        return incoming.orElseThrow();
    }

    /** The one reason why a whole file is refused. */
    static Problem refusal(Path file) {
        Problems problems = new Problems();
        assertThat(ArchiveReader.read(file, problems)).isEmpty();
        assertThat(problems.all()).hasSize(1);
        return problems.all().get(0);
    }

    static Map<String, String> unpack(Path file) throws IOException {
        Map<String, String> entries = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                zip.transferTo(bytes);
                entries.put(entry.getName(), bytes.toString(StandardCharsets.UTF_8));
            }
        }
        return entries;
    }

    static void pack(Map<String, String> entries, Path file) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (Map.Entry<String, String> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue().getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        }
    }

    /** The archive with one text of one entry changed. */
    static void edit(Path file, String entry, String old, String fresh) throws IOException {
        Map<String, String> entries = unpack(file);
        assertThat(entries.get(entry)).contains(old);
        entries.computeIfPresent(entry, (name, text) -> text.replace(old, fresh));
        pack(entries, file);
    }

    static List<String> messages(List<Problem> problems) {
        return problems.stream().map(Problem::message).toList();
    }
}
