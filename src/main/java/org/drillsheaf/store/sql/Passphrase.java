package org.drillsheaf.store.sql;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Arrays;
import java.util.HexFormat;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;
import org.jspecify.annotations.Nullable;

/**
 * The secret of one store: the passphrase of a file, or the password at a server. Never printed. Close it to overwrite what
 * it holds. Safe for several threads.
 */
public final class Passphrase implements AutoCloseable {
    /** Guesses against a stolen file cost this many rounds each; H2's own derivation has ten. */
    private static final int ROUNDS = 600_000;
    // One file holds the whole record, so there is no place for a salt before it is open; H2 adds a random one of its
    // own.
    private static final byte[] SALT = "org.drillsheaf.store/1".getBytes(StandardCharsets.UTF_8);

    private final char[] secret;
    private char @Nullable [] fileKey;

    private Passphrase(char[] secret) {
        this.secret = secret;
    }

    /** Copies the letters; the caller may overwrite its own. */
    public static Passphrase of(char[] secret) {
        return new Passphrase(secret.clone());
    }

    /** For a server that asks for none. */
    public static Passphrase none() {
        return new Passphrase(new char[0]);
    }

    /** One that lives on when this is closed. */
    public synchronized Passphrase copy() {
        Passphrase copy = new Passphrase(secret.clone());
        copy.fileKey = fileKey == null ? null : fileKey.clone();
        return copy;
    }

    /** Whether both are made of the same letters. */
    public synchronized boolean says(Passphrase other) {
        char[] letters = other.secret();
        boolean same = Arrays.equals(secret, letters);
        Arrays.fill(letters, '\0');
        return same;
    }

    public boolean isEmpty() {
        return secret.length == 0;
    }

    public int length() {
        return secret.length;
    }

    /** The letters themselves, for a server; overwrite them after use. */
    synchronized char[] secret() {
        return secret.clone();
    }

    /** 64 hexadecimal digits made from the passphrase (PBKDF2-HMAC-SHA-256); overwrite them after use. Slow the first time. */
    synchronized char[] fileKey() {
        if (fileKey == null) {
            fileKey = stretch(secret);
        }
        return fileKey.clone();
    }

    private static char[] stretch(char[] secret) {
        PBEKeySpec spec = new PBEKeySpec(secret, SALT, ROUNDS, 256);
        try {
            byte[] key = SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256")
                    .generateSecret(spec)
                    .getEncoded();
            char[] digits = new char[key.length * 2];
            for (int i = 0; i < key.length; i++) {
                digits[2 * i] = HexFormat.of().toHighHexDigit(key[i]);
                digits[2 * i + 1] = HexFormat.of().toLowHexDigit(key[i]);
            }
            Arrays.fill(key, (byte) 0);
            return digits;
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has PBKDF2 with SHA-256", e);
        } finally {
            spec.clearPassword();
        }
    }

    @Override
    public synchronized void close() {
        Arrays.fill(secret, '\0');
        if (fileKey != null) {
            Arrays.fill(fileKey, '\0');
        }
    }

    @Override
    public String toString() {
        return "Passphrase";
    }
}
