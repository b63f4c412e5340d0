package org.drillsheaf.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Which papers of a folder were finished from which input, so that a run that was broken off goes on where it stopped. One
 * line is added for each finished paper, after the paper itself is there; a line that was cut off counts for nothing. Safe for
 * several threads.
 */
final class PrintRecord {
    private static final String NAME = ".printed";

    private final Path folder;
    private final Map<String, String> finished = new ConcurrentHashMap<>();

    PrintRecord(Path folder) {
        this.folder = folder;
        Path file = folder.resolve(NAME);
        if (Files.exists(file)) {
            TextFile.read(file).lines().forEach(line -> {
                String[] parts = line.split(" ", 3);
                if (parts.length == 3 && parts[0].length() == 64 && parts[1].length() == 64) {
                    finished.put(parts[2], parts[0] + " " + parts[1]);
                }
            });
        }
    }

    /** Whether the paper lies there, whole, made from just this input. */
    boolean isFinished(String paper, String input) {
        String line = finished.get(paper);
        if (line == null || !line.startsWith(input + " ")) {
            return false;
        }
        try {
            return line.endsWith(" " + sum(Files.readAllBytes(folder.resolve(paper))));
        } catch (IOException e) {
            return false; // gone or unreadable: it is printed again
        }
    }

    /** Writes the paper, then notes that it is finished. */
    void finish(String paper, String input, byte[] pdf) {
        TextFile.write(folder.resolve(paper), pdf);
        String line = input + " " + sum(pdf) + " " + paper + "\n";
        synchronized (this) {
            try {
                Files.writeString(
                        folder.resolve(NAME),
                        line,
                        StandardCharsets.UTF_8,
                        StandardOpenOption.CREATE,
                        StandardOpenOption.APPEND);
            } catch (IOException e) {
                throw BadInput.because(
                        folder.resolve(NAME).toString(),
                        "The record of finished papers cannot be written",
                        "Free some space or choose another folder with --out");
            }
        }
        finished.put(paper, input + " " + sum(pdf));
    }

    /** SHA-256, 64 hexadecimal digits, over the lengths and contents of the parts. */
    static String sum(byte[]... parts) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (byte[] part : parts) {
                digest.update((part.length + ":").getBytes(StandardCharsets.US_ASCII));
                digest.update(part);
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
