package org.drillsheaf.store.upkeep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.store.change.Audit;
import org.drillsheaf.store.change.AuditEntry.Deed;
import org.drillsheaf.store.record.Erasure;
import org.drillsheaf.store.record.Erasures;
import org.drillsheaf.store.sql.Complaints;
import org.drillsheaf.store.sql.Database;
import org.drillsheaf.store.sql.Migrations;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.sql.StoreFailure;

/** Jobs on a record's file that nobody has open: taking a backup back, and giving the file another passphrase. */
public final class Restoring {
    private final StoreAddress.File record;
    private final Clock clock;

    public Restoring(StoreAddress.File record, Clock clock) {
        this.record = record;
        this.clock = clock;
    }

    /**
     * What was done.
     *
     * @param aside where the file before lies now; empty when there was none
     * @param erasedAgain clients that the backup still held and that were erased since
     */
    public record Outcome(Optional<Path> aside, int erasedAgain) {}

    /**
     * Puts a backup in the record's place. What was erased since is erased again. The passphrase afterwards is the backup's.
     *
     * @param passphrase of the backup
     */
    public Outcome restore(StoreAddress.File backup, Passphrase passphrase, String who) {
        List<Erasure> erased = erasedSince(passphrase, who);
        int[] back = {0};
        Optional<Path> aside = Swap.replace(record, passphrase, clock, fresh -> {
            copy(backup, fresh);
            try (Database database = Database.open(fresh, passphrase)) {
                Audit audit = new Audit(database, clock);
                if (Migrations.isNeeded(database)) {
                    Migrations.run(database);
                }
                back[0] = new Erasures(database, audit, clock).repeat(erased);
                audit.noteOfStore(Deed.RESTORED, who);
            }
            return true;
        });
        return new Outcome(aside, back[0]);
    }

    private static void copy(StoreAddress.File from, StoreAddress.File to) {
        try {
            Files.copy(from.file(), to.file());
        } catch (java.nio.file.NoSuchFileException e) {
            throw new StoreFailure(
                    StoreFailure.Kind.NOT_THERE, from.shown(), "There is no backup here", "Check the path");
        } catch (IOException e) {
            throw Complaints.of(e, to);
        }
    }

    /** From the record itself, if it opens, and from the list beside its backups. */
    private List<Erasure> erasedSince(Passphrase passphrase, String who) {
        List<Erasure> erased = new ArrayList<>();
        if (Files.exists(record.file())) {
            try (Database now = Database.openToRead(record, passphrase)) {
                erased.addAll(new Erasures(now, new Audit(now, clock), clock).list());
            } catch (StoreFailure e) {
                if (e.kind() == StoreFailure.Kind.IN_USE) {
                    throw e;
                }
                // Damaged, or under another passphrase: that is why somebody restores. The list beside the backups
                // remains.
            }
        }
        erased.addAll(new BackupFolder(record).erased(who)); // after those whose own coach is known
        return erased;
    }

    /**
     * Writes the whole record anew under another passphrase. Backups made before keep the old one.
     *
     * @return where the file under the old passphrase lies now
     */
    public Path changePassphrase(Passphrase old, Passphrase fresh, String who) {
        return Swap.replace(record, fresh, clock, file -> {
                    try (Database from = Database.open(record, old);
                            Database to = Database.create(file, fresh)) {
                        Migrations.run(from);
                        Migrations.run(to);
                        RecordCopy.copy(from, to, Watcher.NONE);
                        new Audit(to, clock).noteOfStore(Deed.CHANGED, who);
                    }
                    return true;
                })
                .orElseThrow();
    }
}
