package org.drillsheaf.store.sql;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Files;
import java.util.Arrays;
import javax.sql.DataSource;
import org.h2.jdbcx.JdbcDataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.HandleCallback;
import org.jdbi.v3.core.HandleConsumer;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.postgresql.ds.PGSimpleDataSource;

/**
 * An open database: a pool of connections, reading, and transactions whose commit is on the disk when the call returns. Safe
 * for several threads.
 */
public final class Database implements AutoCloseable {
    private static final int MOST_CONNECTIONS = 6;
    private static final int PATIENCE_SECONDS = 10;
    private static final int TRIES = 8;

    /**
     * H2 in the ways of PostgreSQL, so that one SQL serves both; each commit written at once; no trace file, because it would
     * hold statements in clear.
     */
    private static final String H2_SETTINGS = ";CIPHER=AES;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE"
            + ";DEFAULT_NULL_ORDERING=HIGH;WRITE_DELAY=0;TRACE_LEVEL_FILE=0;TRACE_LEVEL_SYSTEM_OUT=0;LOCK_TIMEOUT=5000";

    private final StoreAddress address;
    private final Engine engine;
    private final HikariDataSource pool;
    private final Jdbi jdbi;

    private Database(StoreAddress address, Engine engine, HikariDataSource pool) {
        this.address = address;
        this.engine = engine;
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
        return connect(address, passphrase, "");
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
        try {
            Engine engine = address instanceof StoreAddress.File ? Engine.H2 : Engine.POSTGRESQL;
            return new Database(address, engine, new HikariDataSource(config));
        } catch (RuntimeException e) {
            throw Complaints.of(e, address);
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
            throw Complaints.of(e, address);
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
                    throw Complaints.of(e, address);
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

    /** A statement of its own outside any transaction. */
    public void execute(String sql, Object... values) {
        try (Handle handle = jdbi.open()) {
            handle.execute(sql, values);
        } catch (RuntimeException e) {
            throw Complaints.of(e, address);
        }
    }

    @Override
    public void close() {
        pool.close();
    }
}
