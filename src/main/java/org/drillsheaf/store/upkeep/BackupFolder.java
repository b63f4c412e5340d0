package org.drillsheaf.store.upkeep;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drillsheaf.store.record.Erasure;
import org.drillsheaf.store.sql.Complaints;
import org.drillsheaf.store.sql.StoreAddress;

/**
 * The folder beside a record's file where its backups lie, with the list of who was erased. The list holds keys that name
 * nobody, and is there so that a restore can repeat the erasures even when the record itself cannot be read any more.
 */
public final class BackupFolder {
    private static final String FOLDER = "-backups";
    private static final String ERASED = "erased.txt";
    private static final Pattern ERASURE = Pattern.compile("([0-9a-f-]{36}) (\\S+Z)");
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss.SSS'Z'").withZone(ZoneOffset.UTC);

    private final StoreAddress.File record;
    private final Path folder;

    public BackupFolder(StoreAddress.File record) {
        this.record = record;
        this.folder = record.file().resolveSibling(stem(record) + FOLDER);
    }

    private static String stem(StoreAddress.File record) {
        String name = record.file().getFileName().toString();
        return name.substring(0, name.length() - StoreAddress.File.SUFFIX.length());
    }

    public Path path() {
        return folder;
    }

    StoreAddress.File record() {
        return record;
    }

    /** The backups, newest first. One that is only half made has another name and is not among them. */
    public List<Backup> list() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.flatMap(file -> backup(file).stream())
                    .sorted(Comparator.comparing(Backup::made).reversed())
                    .toList();
        } catch (IOException e) {
            throw Complaints.of(e, record);
        }
    }

    private Optional<Backup> backup(Path file) {
        String name = file.getFileName().toString();
        String start = stem(record) + "-";
        if (!name.startsWith(start) || !name.endsWith(StoreAddress.File.SUFFIX)) {
            return Optional.empty();
        }
        try {
            Instant made = Instant.from(
                    TIME.parse(name.substring(start.length(), name.length() - StoreAddress.File.SUFFIX.length())));
            return Optional.of(new Backup(new StoreAddress.File(file), made, Files.size(file)));
        } catch (DateTimeParseException | IOException e) {
            return Optional.empty(); // some other file, or one that was just rotated out
        }
    }

    /** Where a backup of this moment goes. */
    StoreAddress.File place(Instant made) {
        makeFolder();
        return new StoreAddress.File(folder.resolve(stem(record) + "-" + TIME.format(made)));
    }

    /** Where a backup is while it is made; always the same place, so that one that was broken off is replaced by the next. */
    StoreAddress.File unfinished() {
        makeFolder();
        return new StoreAddress.File(folder.resolve(stem(record) + "-part"));
    }

    /** Whether the file is one of the backups of a record. */
    public static boolean isBackup(StoreAddress.File file) {
        Path folder = file.folder();
        String name = folder.getFileName() == null ? "" : folder.getFileName().toString();
        return name.endsWith(FOLDER)
                && new BackupFolder(new StoreAddress.File(
                                folder.resolveSibling(name.substring(0, name.length() - FOLDER.length()))))
                        .backup(file.file())
                        .isPresent();
    }

    void makeFolder() {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw Complaints.of(e, record);
        }
    }

    /** Adds to the list of erased clients. */
    public void note(Erasure erasure) {
        makeFolder();
        String line = erasure.client() + " " + erasure.at() + "\n";
        try {
            Files.writeString(
                    folder.resolve(ERASED),
                    line,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND,
                    StandardOpenOption.SYNC);
        } catch (IOException e) {
            throw Complaints.of(e, record);
        }
    }

    /**
     * Who was erased, as far as the list goes; a line that was cut off is left out.
     *
     * @param by in whose name it is repeated: the list, which anybody can read, names no coach either
     */
    List<Erasure> erased(String by) {
        Path list = folder.resolve(ERASED);
        if (!Files.exists(list)) {
            return List.of();
        }
        List<Erasure> erased = new ArrayList<>();
        try {
            for (String line : Files.readAllLines(list, StandardCharsets.UTF_8)) {
                Matcher erasure = ERASURE.matcher(line);
                if (erasure.lookingAt()) {
                    erased.add(new Erasure(UUID.fromString(erasure.group(1)), by, Instant.parse(erasure.group(2))));
                }
            }
            return erased;
        } catch (IOException | IllegalArgumentException | DateTimeParseException e) {
            throw Complaints.of(e, record);
        }
    }
}
