package org.drillsheaf.drill.library;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;

/** Reads the texts of drill files, and of any file of a project, and says why that did not work. */
final class DrillFolderFiles {
    private DrillFolderFiles() {}

    /**
     * The texts of all drill files in a folder.
     *
     * @param shown how the folder is called in messages
     * @param wanted which file names
     * @return the file's name, with the folder's before it, to its text
     */
    static Map<String, String> texts(Path folder, String shown, Predicate<String> wanted, Problems problems) {
        Map<String, String> texts = new TreeMap<>();
        for (Path file : files(folder, problems)) {
            String plain = String.valueOf(file.getFileName());
            String name = shown + "/" + plain;
            if (!wanted.test(plain)) {
                continue;
            }
            text(file, name, problems).ifPresent(text -> texts.put(name, text));
        }
        return texts;
    }

    private static List<Path> files(Path folder, Problems problems) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.getFileName().toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            problems.error(
                    folder.toString(), 0, "The folder of drills cannot be read", "Check that it is there and readable");
            return List.of();
        }
    }

    static Optional<String> text(Path file, String name, Problems problems) {
        try {
            if (Files.size(file) > YamlNode.LARGEST_FILE) {
                problems.error(name, 0, "The file is too large", "Keep it under " + YamlNode.LARGEST_FILE + " bytes");
                return Optional.empty();
            }
            return Optional.of(Files.readString(file));
        } catch (NoSuchFileException e) {
            problems.error(name, 0, "The file is not there", "Put it back, or start in the project folder");
        } catch (CharacterCodingException e) {
            problems.error(name, 0, "The file is not UTF-8 text", "Save it again as UTF-8");
        } catch (IOException e) {
            problems.error(name, 0, "The file cannot be read", "Check that you may read it");
        }
        return Optional.empty();
    }
}
