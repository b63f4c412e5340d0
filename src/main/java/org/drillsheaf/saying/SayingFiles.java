package org.drillsheaf.saying;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;

/** Reads the phrases of all languages from their folder, one file a language. */
public final class SayingFiles {
    private SayingFiles() {}

    /** @return empty when a file cannot be read, or English is missing; the reasons then stand in {@code problems} */
    public static Optional<Sayings> read(Path folder, Problems problems) {
        Problems found = new Problems();
        Map<String, Messages> byLanguage = new TreeMap<>();
        for (Path file : files(folder, found)) {
            text(file, found)
                    .flatMap(text -> YamlNode.parse(file.toString(), text, found))
                    .flatMap(node -> MessagesReader.read(node, found))
                    .ifPresent(messages -> byLanguage.put(messages.language(), messages));
        }
        if (!found.hasErrors() && !byLanguage.containsKey(Sayings.FALLBACK)) {
            found.error(folder.toString(), 0, "The English phrases are missing", "Put back en.yaml");
        }
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : Optional.of(new Sayings(byLanguage));
    }

    private static List<Path> files(Path folder, Problems problems) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        } catch (IOException e) {
            problems.error(folder.toString(), 0, "The folder cannot be read", "Put the folder shared back as it was");
            return List.of();
        }
    }

    private static Optional<String> text(Path file, Problems problems) {
        try {
            return Optional.of(Files.readString(file));
        } catch (IOException e) {
            problems.error(file.toString(), 0, "The file cannot be read", "Check its name and that it is UTF-8 text");
            return Optional.empty();
        }
    }
}
