package org.drillsheaf.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Which packages of the system the toolkit needs and cannot find, on Linux. */
final class MissingPackages {
    /** Library to the package of Debian and Ubuntu that holds it; measured on a bare Debian. */
    private static final Map<String, String> NEEDED = new LinkedHashMap<>();

    static {
        NEEDED.put("libgtk-3.so.0", "libgtk-3-0");
        NEEDED.put("libXtst.so.6", "libxtst6");
    }

    private MissingPackages() {}

    static List<String> onThisMachine() {
        return in(List.of(
                Path.of("/lib"),
                Path.of("/usr/lib"),
                Path.of("/lib64"),
                Path.of("/usr/lib64"),
                Path.of("/usr/local/lib")));
    }

    /** @param places folders of libraries, with those one level below */
    static List<String> in(List<Path> places) {
        List<Path> folders = new ArrayList<>();
        for (Path place : places) {
            folders.add(place);
            try (Stream<Path> below = Files.list(place)) {
                below.filter(Files::isDirectory).forEach(folders::add);
            } catch (IOException e) {
                // A folder that is not there holds no library.
                folders.remove(place);
            }
        }
        return NEEDED.entrySet().stream()
                .filter(needed -> folders.stream().noneMatch(f -> Files.exists(f.resolve(needed.getKey()))))
                .map(Map.Entry::getValue)
                .toList();
    }
}
