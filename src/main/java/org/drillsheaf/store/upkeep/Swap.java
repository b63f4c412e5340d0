package org.drillsheaf.store.upkeep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.function.Function;
import org.drillsheaf.store.change.Audit;
import org.drillsheaf.store.sql.Complaints;
import org.drillsheaf.store.sql.Database;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.sql.StoreFailure;

/**
 * Puts another file in a record's place: the new one is made beside it and proved by opening it, then the old one is set aside
 * under a name of its own, then the new one gets the name. Broken off anywhere, both are there.
 */
final class Swap {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss").withZone(ZoneOffset.UTC);

    private Swap() {}

    /**
     * @param passphrase opens the new file
     * @param make makes the new file at the address that it is given
     * @return where the old file lies now; empty when there was none
     */
    static Optional<Path> replace(
            StoreAddress.File record, Passphrase passphrase, Clock clock, Function<StoreAddress.File, Boolean> make) {
        StoreAddress.File fresh = record.beside("new");
        String time = TIME.format(clock.instant());
        StoreAddress.File aside = record.beside("aside-" + time);
        for (int n = 2; Files.exists(aside.file()); n++) {
            aside = record.beside("aside-" + time + "-" + n);
        }
        try {
            Files.deleteIfExists(fresh.file()); // left behind by an attempt that was broken off
            if (!make.apply(fresh)) {
                throw new IllegalStateException("a new file is made or a failure thrown");
            }
            try (Database opened = Database.openToRead(fresh, passphrase)) {
                Verification.of(opened, new Audit(opened, clock), Watcher.NONE).orElseThrow(fresh.shown());
            }
            new Mark(new BackupFolder(record)).remove();
            boolean there = Files.exists(record.file());
            if (there) {
                Files.move(record.file(), aside.file(), StandardCopyOption.ATOMIC_MOVE);
            }
            Files.move(fresh.file(), record.file(), StandardCopyOption.ATOMIC_MOVE);
            return there ? Optional.of(aside.file()) : Optional.empty();
        } catch (IOException e) {
            throw Complaints.of(e, record);
        } catch (StoreFailure e) {
            deleteQuietly(fresh.file());
            throw e;
        }
    }

    private static void deleteQuietly(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // The failure before is worth telling; the next attempt removes the file.
        }
    }
}
