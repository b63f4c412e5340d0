package org.drillsheaf.store.sql;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermission;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipInputStream;
import javax.sql.DataSource;
import org.h2.engine.SessionLocal;
import org.h2.jdbc.JdbcConnection;
import org.h2.jdbcx.JdbcDataSource;
import org.h2.mvstore.FileStore;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.HandleCallback;
import org.jdbi.v3.core.HandleConsumer;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;
import org.postgresql.ds.PGSimpleDataSource;

/**
 * An open database: a pool of connections, reading, and transactions whose commit is on the disk when the call returns. Safe
 * for several threads.
 */
public final class Database implements AutoCloseable {
    private static final int MOST_CONNECTIONS = 6;
    private static final int PATIENCE_SECONDS = 10;
    private static final int TRIES = 8;

    /** No statement waits longer for a lock: its transaction lets go of all it holds, and is tried again. */
    private static final int LOCK_MILLISECONDS = 1_000;

    /**
     * H2 in the ways of PostgreSQL, so that one SQL serves both; each commit written at once; no trace file, because it would
     * hold statements in clear.
     */
    static final String H2_SETTINGS = ";CIPHER=AES;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE"
            + ";DEFAULT_NULL_ORDERING=HIGH;WRITE_DELAY=0;MAX_COMPACT_TIME=0;TRACE_LEVEL_FILE=0"
            + ";TRACE_LEVEL_SYSTEM_OUT=0;LOCK_TIMEOUT=" + LOCK_MILLISECONDS;

    /** A server may be set up to answer before its disk has a commit; ours waits for the disk all the same. */
    private static final String SERVER_SETTINGS = "SET lock_timeout = " + LOCK_MILLISECONDS
            + "; SELECT set_config('synchronous_commit', 'on', false) WHERE current_setting('synchronous_commit') = 'off'";

    /** A file in which less than this is in use, in percent, is written anew when it is closed, if it is worth it. */
    private static final int FULL_ENOUGH = 50;

    private static final long WORTH_IT_BYTES = 4L << 20;

    private final StoreAddress address;
    private final Engine engine;
    private final Passphrase passphrase;
    private final HikariDataSource pool;
    private final Jdbi jdbi;
    private volatile boolean holdsErased;
    private volatile boolean isBroken;

    private Database(StoreAddress address, Engine engine, Passphrase passphrase, HikariDataSource pool) {
        this.address = address;
        this.engine = engine;
        this.passphrase = passphrase;
        this.pool = pool;
        this.jdbi = Jdbi.create(pool);
    }

    /** Makes a new, empty database file, or takes the server's database as it is. */
    public static Database create(StoreAddress address, Passphrase passphrase) {
        if (address instanceof StoreAddress.File file && Files.exists(file.file())) {
            throw new StoreFailure(
                    StoreFailure.Kind.ALREADY_THERE,
                    file.shown(),
                    "There is already a record here",
                    "Open it, or name another file for the new one");
        }
        Database database = connect(address, passphrase, "");
        if (address instanceof StoreAddress.File file) {
            try {
                FileRights.ownerOnly(file.file());
            } catch (IOException e) {
                database.close();
                throw Complaints.of(e, file);
            }
        }
        return database;
    }

    /** Opens what is there. */
    public static Database open(StoreAddress address, Passphrase passphrase) {
        if (address instanceof StoreAddress.File file && !Files.exists(file.file())) {
            throw new StoreFailure(
                    StoreFailure.Kind.NOT_THERE,
                    file.shown(),
                    "There is no record here",
                    "Check the path, or make a new record there");
        }
        return connect(address, passphrase, ";IFEXISTS=TRUE");
    }

    /** Opens a file that nobody will write to; for looking into a backup. */
    public static Database openToRead(StoreAddress.File file, Passphrase passphrase) {
        return connect(file, passphrase, ";IFEXISTS=TRUE;ACCESS_MODE_DATA=r");
    }

    private static Database connect(StoreAddress address, Passphrase passphrase, String more) {
        HikariConfig config = new HikariConfig();
        config.setDataSource(source(address, passphrase, more));
        config.setMaximumPoolSize(MOST_CONNECTIONS);
        config.setMinimumIdle(1);
        config.setConnectionTimeout(PATIENCE_SECONDS * 1000L);
        config.setInitializationFailTimeout(1);
        config.setPoolName("record");
        if (address instanceof StoreAddress.Server) {
            config.setConnectionInitSql(SERVER_SETTINGS);
        }
        try {
            Engine engine = address instanceof StoreAddress.File ? Engine.H2 : Engine.POSTGRESQL;
            Database database = new Database(address, engine, passphrase.copy(), new HikariDataSource(config));
            if (engine == Engine.H2) {
                database.appendOnly();
            }
            return database;
        } catch (RuntimeException e) {
            StoreFailure failure = Complaints.whileReadingAll(Complaints.of(e, address), address);
            letGo(failure);
            throw failure;
        }
    }

    /**
     * H2 leaves a file open that it stumbled over while opening it, and nobody in this process could open the restored one.
     * What it left lying about is closed when it is collected.
     */
    private static void letGo(StoreFailure failure) {
        if (failure.kind() == StoreFailure.Kind.DAMAGED || failure.kind() == StoreFailure.Kind.WRONG_PASSPHRASE) {
            System.gc();
        }
    }

    private static DataSource source(StoreAddress address, Passphrase passphrase, String more) {
        if (address instanceof StoreAddress.Server server) {
            PGSimpleDataSource source = new PGSimpleDataSource();
            source.setURL(server.url());
            source.setUser(server.user());
            if (!passphrase.isEmpty()) {
                source.setPassword(new String(passphrase.secret()));
            }
            return source;
        }
        JdbcDataSource source = new JdbcDataSource();
        source.setURL("jdbc:h2:file:" + ((StoreAddress.File) address).base() + H2_SETTINGS + more);
        source.setUser("record");
        char[] key = passphrase.fileKey();
        char[] both = Arrays.copyOf(key, key.length + 2); // H2 asks for the file's password, a space, the user's
        both[key.length] = ' ';
        both[key.length + 1] = 'r';
        source.setPasswordChars(both);
        Arrays.fill(key, '\0');
        return source;
    }

    public Engine engine() {
        return engine;
    }

    public StoreAddress address() {
        return address;
    }

    /** What it was opened with; closed with the database. */
    public Passphrase passphrase() {
        return passphrase;
    }

    /** The pool, for the migrations. */
    DataSource pool() {
        return pool;
    }

    /** One or more questions that change nothing. */
    public <T> T read(HandleCallback<T, RuntimeException> question) {
        try {
            return jdbi.withHandle(question);
        } catch (StoreFailure e) {
            throw e;
        } catch (RuntimeException e) {
            throw complain(e);
        }
    }

    /**
     * One transaction: all of it or nothing, and on the disk when this returns. Run again from the beginning when another
     * desk was in the way, so it must have no effect outside the database.
     */
    public <T> T write(HandleCallback<T, RuntimeException> work) {
        for (int attempt = 1; ; attempt++) {
            try (Handle handle = jdbi.open()) {
                T result = handle.inTransaction(work);
                if (engine == Engine.H2) {
                    handle.execute("CHECKPOINT SYNC"); // the commit was written; this waits until the disk has it
                }
                return result;
            } catch (StoreFailure e) {
                throw e;
            } catch (JdbiException e) {
                if (attempt == TRIES || !Complaints.isInTheWay(e)) {
                    throw complain(e);
                }
            }
        }
    }

    /** As {@link #write}, without a result. */
    public void writeOnly(HandleConsumer<RuntimeException> work) {
        write(handle -> {
            work.useHandle(handle);
            return true;
        });
    }

    /** Questions that all see the record as it is at the first of them, whatever others write meanwhile. */
    public <T> T snapshot(HandleCallback<T, RuntimeException> questions) {
        try {
            return jdbi.inTransaction(TransactionIsolationLevel.REPEATABLE_READ, handle -> {
                setLazy(handle, 1);
                T answer = questions.withHandle(handle);
                setLazy(handle, 0);
                return answer;
            });
        } catch (StoreFailure e) {
            throw e;
        } catch (RuntimeException e) {
            throw complain(e);
        }
    }

    /** H2 otherwise puts a whole answer into memory before it gives the first row; PostgreSQL goes by the fetch size. */
    private void setLazy(Handle handle, int lazy) {
        if (engine == Engine.H2) {
            handle.execute("SET LAZY_QUERY_EXECUTION " + lazy);
        }
    }

    /**
     * Copies the open file, with all that is committed, into a new one while others go on writing.
     *
     * @param copy must not be there yet
     */
    public void copyFile(StoreAddress.File copy) {
        Path zip = copy.file().resolveSibling(copy.file().getFileName() + ".zip");
        try {
            try {
                execute("BACKUP TO ?", zip.toString()); // the pages as they lie in the file, encrypted
                try (ZipInputStream packed = new ZipInputStream(Files.newInputStream(zip))) {
                    packed.getNextEntry();
                    Files.copy(packed, copy.file());
                    FileRights.ownerOnly(copy.file());
                }
            } finally {
                Files.deleteIfExists(zip); // on a full disk most of all
            }
            try (FileChannel written = FileChannel.open(copy.file(), StandardOpenOption.WRITE)) {
                written.force(true);
            }
        } catch (IOException e) {
            throw Complaints.of(e, copy);
        }
    }

    /**
     * From now on something lies in the file that was erased: rows are gone at once, but the engine overwrites their place
     * later. The file is written anew when it is closed; a server clears up on its own, and is asked to begin.
     */
    public void clearUpErased() {
        if (engine == Engine.H2) {
            holdsErased = true;
        } else {
            execute("VACUUM");
        }
    }

    /** A statement of its own outside any transaction. */
    public void execute(String sql, Object... values) {
        try (Handle handle = jdbi.open()) {
            handle.execute(sql, values);
        } catch (RuntimeException e) {
            throw complain(e);
        }
    }

    /**
     * Lets the engine write only behind the end of its file. In a gap further in, its last piece could not be found again after
     * a crash: the engine (2.5.252, and 2.3.232 too) then writes into the file's head where the piece before lies, and that one
     * names another place for the next. At the end it looks for the last piece itself. {@code RecordFileTest} kills processes.
     */
    private void appendOnly() {
        try (Handle handle = jdbi.open()) {
            engineFile(handle).setReuseSpace(false);
        }
    }

    /** Nothing fills the gaps while the file is open, so they are taken out when there are many. */
    private boolean isMostlyGaps() {
        try (Handle handle = jdbi.open()) {
            FileStore<?> file = engineFile(handle);
            return file.size() > WORTH_IT_BYTES && Math.min(file.getFillRate(), file.getChunksFillRate()) < FULL_ENOUGH;
        }
    }

    private static FileStore<?> engineFile(Handle handle) {
        try {
            JdbcConnection connection = handle.getConnection().unwrap(JdbcConnection.class);
            return ((SessionLocal) connection.getSession())
                    .getDatabase()
                    .getStore()
                    .getMvStore()
                    .getFileStore();
        } catch (SQLException e) {
            throw new IllegalStateException("the pool holds other connections than the engine's", e);
        }
    }

    /** A file that cannot be trusted any more is let go at once; an orderly close would try to write to it. */
    private StoreFailure complain(RuntimeException e) {
        StoreFailure failure = Complaints.of(e, address);
        isBroken |= failure.kind() == StoreFailure.Kind.DAMAGED || failure.kind() == StoreFailure.Kind.UNEXPECTED;
        return failure;
    }

    @Override
    public void close() {
        try {
            if (isBroken && engine == Engine.H2) {
                execute("SHUTDOWN IMMEDIATELY");
            } else if (holdsErased || engine == Engine.H2 && isMostlyGaps()) {
                compact();
            }
        } catch (StoreFailure e) {
            if (!isBroken && e.kind() != StoreFailure.Kind.CLOSED) { // its own connection is closed with all others
                throw e;
            }
        } finally {
            pool.close();
            passphrase.close();
        }
    }

    /** Writes the file anew, as it is closed; whoever might read it before, and nobody else, may read the new one. */
    private void compact() {
        StoreAddress.File kept = (StoreAddress.File) address;
        try {
            Optional<Set<PosixFilePermission>> rights = FileRights.of(kept.file());
            execute("SHUTDOWN COMPACT");
            if (rights.isPresent()) {
                FileRights.give(kept.file(), rights.get());
            }
        } catch (IOException e) {
            throw Complaints.of(e, kept);
        }
    }
}
