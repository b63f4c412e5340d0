package org.drillsheaf.store.sql;

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
}
