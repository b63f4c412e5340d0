package org.drillsheaf.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.upkeep.BackupFolder;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which record a command works on, how it is opened, and in whose name. */
final class StoreOption {
    @Option(
            names = "--store",
            arity = "0..1",
            fallbackValue = "",
            paramLabel = "<record>",
            description = "The record: a file, or the address of a PostgreSQL database, for example"
                    + " jdbc:postgresql://db.clinic.example/drillsheaf?sslmode=verify-full&user=desk; the file of"
                    + " this user by default.")
    private @Nullable String store;

    @Option(
            names = "--passphrase-file",
            paramLabel = "<file>",
            description =
                    "File whose first line is the passphrase (or the server's password); nobody else may read it. "
                            + "/dev/fd/3 takes it from an open descriptor. Without it you are asked.")
    private @Nullable Path passphraseFile;

    @Option(names = "--coach", paramLabel = "<name>", description = "Who works on the record; your login by default.")
    private @Nullable String coach;

    /** Whether the command is to work on a record at all. */
    boolean isNamed() {
        return store != null;
    }

    StoreAddress address() {
        return store == null || store.isEmpty() ? StoreAddress.File.ofUser() : StoreAddress.of(store);
    }

    /** The address of a file; a server is refused. */
    StoreAddress.File file(String what) {
        if (address() instanceof StoreAddress.File file) {
            return file;
        }
        throw BadInput.because(
                address().shown(),
                what + " is for a record in a file",
                "Ask whoever runs the server, or use “store copy”");
    }

    String who() {
        return coach == null ? System.getProperty("user.name", "command line") : coach;
    }

    Passphrase passphrase() {
        return passphrase(address(), Optional.ofNullable(passphraseFile));
    }

    /** The secret of an address, from a file or asked for. A server's may also stand in the user's pgpass file. */
    static Passphrase passphrase(StoreAddress address, Optional<Path> file) {
        if (file.isPresent()) {
            return PassphraseSource.read(file.get());
        }
        if (address instanceof StoreAddress.Server && hasPgpass()) {
            return Passphrase.none();
        }
        return PassphraseSource.ask("Passphrase of " + address.shown());
    }

    private static boolean hasPgpass() {
        String named = System.getenv("PGPASSFILE");
        Path home = Path.of(System.getProperty("user.home", ""));
        return named != null
                || Files.exists(home.resolve(".pgpass"))
                || Files.exists(home.resolve("AppData/Roaming/postgresql/pgpass.conf"));
    }

    /** Opens the record; close it. Nobody is asked for the passphrase of a file that is not there. */
    Store open() {
        if (address() instanceof StoreAddress.File file && !Files.exists(file.file())) {
            throw BadInput.because(
                    file.shown(),
                    "There is no record here",
                    "Check the path, or make a new record there: drillsheaf store create"
                            + (store == null || store.isEmpty() ? "" : " " + store));
        }
        try (Passphrase passphrase = passphrase()) {
            if (address() instanceof StoreAddress.File file && BackupFolder.isBackup(file)) {
                return Store.look(file, passphrase, Clock.systemUTC()); // a backup stays as it is
            }
            return Store.open(address(), passphrase, Clock.systemUTC());
        }
    }
}
