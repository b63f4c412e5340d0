package org.drillsheaf.store.sql;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Arrays;
import org.h2.jdbcx.JdbcDataSource;

/** What H2 enciphers a file with, for tests that look into one. */
public final class FileKey {
    private FileKey() {}

    /** The file's password as H2 hands it to its cipher: two bytes a letter. */
    public static byte[] of(Passphrase passphrase) {
        char[] letters = passphrase.fileKey();
        byte[] key = new byte[letters.length * 2];
        for (int i = 0; i < letters.length; i++) {
            key[2 * i] = (byte) (letters[i] >>> 8);
            key[2 * i + 1] = (byte) letters[i];
        }
        return key;
    }

    /** A plain connection to a record's file; this process may have the record open at the same time. */
    public static Connection connect(StoreAddress.File file, Passphrase passphrase) throws SQLException {
        JdbcDataSource source = new JdbcDataSource();
        source.setURL("jdbc:h2:file:" + file.base() + Database.H2_SETTINGS);
        source.setUser("record");
        char[] key = passphrase.fileKey();
        char[] both = Arrays.copyOf(key, key.length + 2);
        both[key.length] = ' ';
        both[key.length + 1] = 'r';
        source.setPasswordChars(both);
        return source.getConnection();
    }
}
