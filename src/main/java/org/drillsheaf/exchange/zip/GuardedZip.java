package org.drillsheaf.exchange.zip;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.zip.ZipException;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.drillsheaf.Problems;

/**
 * Unpacks a zip file into memory, or refuses it with one problem. Nothing is ever unpacked onto the disk, and what is counted
 * is what really came out, never what the file says of itself.
 */
public final class GuardedZip {
    private static final String NO_ARCHIVE_REMEDY = "Export it again, and bring that file unchanged";
    private static final String NAMES_REMEDY = "Do not use this file; ask where it comes from";

    private final String file;
    private final ZipLimits limits;
    private final Problems problems;
    private final Map<String, String> folded = new HashMap<>();
    private long total;

    private GuardedZip(String file, ZipLimits limits, Problems problems) {
        this.file = file;
        this.limits = limits;
        this.problems = problems;
    }

    /**
     * All entries by name, in the order of the file; folders, and what a Mac or a Windows desktop leaves in a zip, are left out.
     *
     * @param wanted names of entries to unpack; the others come without content
     * @return empty when the file is refused; the reason then stands in {@code problems}
     */
    public static Optional<Map<String, byte[]>> read(
            Path path, ZipLimits limits, Predicate<String> wanted, Problems problems) {
        return new GuardedZip(String.valueOf(path), limits, problems).entries(path, wanted);
    }

    private Optional<Map<String, byte[]>> entries(Path path, Predicate<String> wanted) {
        Map<String, byte[]> contents = new LinkedHashMap<>();
        try (ZipFile zip =
                ZipFile.builder().setPath(path).setIgnoreLocalFileHeader(true).get()) {
            List<ZipArchiveEntry> entries = Collections.list(zip.getEntries());
            if (entries.size() > limits.mostEntries()) {
                return refuse(
                        file,
                        "The zip file holds " + entries.size() + " entries, and " + limits.mostEntries()
                                + " are the most",
                        NO_ARCHIVE_REMEDY);
            }
            for (ZipArchiveEntry entry : entries) {
                if (!isFair(entry)) {
                    return Optional.empty();
                }
                if (entry.isDirectory() || isLeftByADesktop(entry.getName())) {
                    continue;
                }
                Optional<byte[]> bytes = wanted.test(entry.getName()) ? unpack(zip, entry) : Optional.of(new byte[0]);
                if (bytes.isEmpty()) {
                    return Optional.empty();
                }
                contents.put(entry.getName(), bytes.get());
            }
            return Optional.of(contents);
        } catch (IOException | IllegalArgumentException e) {
            return refuse(file, "This is not a zip file, or it is damaged", NO_ARCHIVE_REMEDY);
        }
    }

    /** Names and kinds that no file of ours has. */
    private boolean isFair(ZipArchiveEntry entry) {
        String name = entry.getName();
        String shown = file + "!" + shortened(name);
        if (name.startsWith("/") || name.contains("\\") || name.contains(":") || hasControls(name)) {
            refuse(shown, "The zip file has an entry with a name that leads out of it", NAMES_REMEDY);
            return false;
        }
        if (List.of(name.split("/")).contains("..")) {
            refuse(shown, "The zip file has an entry that climbs out of its folder", NAMES_REMEDY);
            return false;
        }
        if (entry.isUnixSymlink()) {
            refuse(shown, "The zip file holds a link instead of a file", NAMES_REMEDY);
            return false;
        }
        if (entry.getGeneralPurposeBit().usesEncryption()) {
            refuse(shown, "The entry is locked with a password", "Pack the files again without one");
            return false;
        }
        String twin = folded.putIfAbsent(name.toLowerCase(Locale.ROOT), name);
        if (twin != null) {
            refuse(
                    shown,
                    twin.equals(name)
                            ? "The zip file holds this name twice"
                            : "The zip file also holds “" + shortened(twin) + "”, which is the same name on many disks",
                    "Keep one of the two");
            return false;
        }
        return true;
    }

    private Optional<byte[]> unpack(ZipFile zip, ZipArchiveEntry entry) throws IOException {
        String shown = file + "!" + entry.getName();
        if (!zip.canReadEntryData(entry)) {
            return refuse(
                    shown, "The entry is packed in a way that is not read here", "Pack the files again as a usual zip");
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (InputStream in = zip.getInputStream(entry)) {
            byte[] buffer = new byte[1 << 14];
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                bytes.write(buffer, 0, read);
                total += read;
                if (bytes.size() > limits.largestEntry() || total > limits.largestTotal()) {
                    return refuse(
                            shown,
                            "The zip file becomes larger than " + limits.largestTotal() / 1_000_000
                                    + " MB, or one entry larger than " + limits.largestEntry() / 1_000_000 + " MB",
                            NO_ARCHIVE_REMEDY);
                }
                if (bytes.size() > ZipLimits.RATIO_COUNTS_FROM
                        && bytes.size() > ZipLimits.MOST_RATIO * Math.max(1, entry.getCompressedSize())) {
                    return refuse(
                            shown,
                            "The entry becomes more than " + ZipLimits.MOST_RATIO + " times larger when it is unpacked",
                            NAMES_REMEDY);
                }
            }
        } catch (ZipException e) {
            return refuse(shown, "The entry is damaged", NO_ARCHIVE_REMEDY);
        }
        if (entry.getCrc() >= 0 && entry.getCrc() != crc(bytes.toByteArray())) {
            return refuse(shown, "The entry is damaged", NO_ARCHIVE_REMEDY);
        }
        return Optional.of(bytes.toByteArray());
    }

    private static long crc(byte[] bytes) {
        java.util.zip.CRC32 crc = new java.util.zip.CRC32();
        crc.update(bytes);
        return crc.getValue();
    }

    private static boolean isLeftByADesktop(String name) {
        String plain = name.substring(name.lastIndexOf('/') + 1);
        return name.startsWith("__MACOSX/")
                || List.of(".DS_Store", "Thumbs.db", "desktop.ini").contains(plain);
    }

    private static boolean hasControls(String name) {
        return name.isEmpty() || name.length() > 300 || name.chars().anyMatch(Character::isISOControl);
    }

    private static String shortened(String name) {
        String plain = name.replaceAll("\\p{Cntrl}", "?");
        return plain.length() > 80 ? plain.substring(0, 80) + "…" : plain;
    }

    private <T> Optional<T> refuse(String place, String what, String remedy) {
        problems.error(place, 0, what, remedy);
        return Optional.empty();
    }
}
