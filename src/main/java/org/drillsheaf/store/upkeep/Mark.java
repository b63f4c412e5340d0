package org.drillsheaf.store.upkeep;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.drillsheaf.store.change.Audit;
import org.drillsheaf.store.change.AuditEntry;
import org.drillsheaf.store.sql.Complaints;
import org.drillsheaf.store.sql.StoreFailure;

/**
 * How far a record's audit had come when it was last closed, kept beside the file. A file that was cut off may still open: the
 * engine falls back to the last state that it can read, and everything after it would be missing without a word.
 */
public final class Mark {
    private static final String NAME = "mark.txt";

    private final BackupFolder folder;
    private final Path file;

    public Mark(BackupFolder folder) {
        this.folder = folder;
        this.file = folder.path().resolve(NAME);
    }

    /** Notes how far the audit has come. */
    public void set(Audit audit) {
        try {
            List<AuditEntry> last = audit.after(audit.newest() - 1, 1);
            String line = last.isEmpty()
                    ? "0 -"
                    : last.get(0).number() + " " + last.get(0).chain();
            folder.makeFolder();
            Files.writeString(file, line + "\n");
        } catch (IOException | StoreFailure e) {
            // An old mark only promises less. Whatever is wrong here is told by the next save.
        }
    }

    /** Refuses a record that has lost what was there when it was last closed; no mark, no promise. */
    public void check(Audit audit) {
        String[] words = read().split("\\s+");
        if (words.length < 2 || !words[0].matches("\\d{1,18}") || words[0].equals("0")) {
            return;
        }
        long number = Long.parseLong(words[0]);
        List<AuditEntry> there = audit.after(number - 1, 1);
        if (there.isEmpty() || !there.get(0).chain().equals(words[1])) {
            throw new StoreFailure(
                    StoreFailure.Kind.DAMAGED,
                    folder.record().shown(),
                    "The record has lost what was in it when it was last closed, or is an older copy of itself",
                    "Restore the newest backup, or this very copy, with “store restore”: the file is set aside, not"
                            + " removed");
        }
    }

    private String read() {
        try {
            return Files.exists(file) ? Files.readString(file, StandardCharsets.UTF_8) : "";
        } catch (IOException e) {
            return "";
        }
    }

    /** Forgets; for another record in the same place. */
    public void remove() {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw Complaints.of(e, folder.record());
        }
    }
}
