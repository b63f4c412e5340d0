package org.drillsheaf.store.record;

import java.io.ByteArrayOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Collection;
import java.util.HexFormat;
import org.drillsheaf.store.sql.StoreFailure;
import org.jdbi.v3.core.Handle;

/** Bytes by their hash, each kept once however many documents use it, in pieces that both engines take without effort. */
final class Contents {
    private static final int CHUNK_BYTES = 256 * 1024;

    private Contents() {}

    /** SHA-256 as 64 hexadecimal digits. */
    static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Keeps the bytes and gives their hash. */
    static String keep(Handle handle, byte[] bytes) {
        String hash = hash(bytes);
        int rows = handle.createUpdate(
                        "INSERT INTO content (sha256, byte_count) VALUES (:hash, :count) ON CONFLICT DO NOTHING")
                .bind("hash", hash)
                .bind("count", bytes.length)
                .execute();
        if (rows == 1) {
            for (int chunk = 0; chunk * CHUNK_BYTES < bytes.length; chunk++) {
                int from = chunk * CHUNK_BYTES;
                handle.createUpdate("INSERT INTO content_chunk (sha256, chunk, bytes) VALUES (:hash, :chunk, :bytes)")
                        .bind("hash", hash)
                        .bind("chunk", chunk)
                        .bind("bytes", Arrays.copyOfRange(bytes, from, Math.min(from + CHUNK_BYTES, bytes.length)))
                        .execute();
            }
        }
        return hash;
    }

    /** Whether the bytes of a hash are there and fit it. */
    static boolean isWhole(Handle handle, String hash) {
        return hash(bytes(handle, hash)).equals(hash);
    }

    private static byte[] bytes(Handle handle, String hash) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        handle.createQuery("SELECT bytes FROM content_chunk WHERE sha256 = :hash ORDER BY chunk")
                .bind("hash", hash)
                .mapTo(byte[].class)
                .forEach(bytes::writeBytes);
        return bytes.toByteArray();
    }

    /** The bytes of a hash, checked against it. */
    static byte[] load(Handle handle, String hash) {
        byte[] whole = bytes(handle, hash);
        if (!hash(whole).equals(hash)) {
            throw new StoreFailure(
                    StoreFailure.Kind.DAMAGED,
                    "the record",
                    "A document in the record is not what was put there",
                    "Leave the record as it is, and look for this document in a copy from before");
        }
        return whole;
    }

    /** Removes those of the hashes that no document uses any more. */
    static void removeUnused(Handle handle, Collection<String> hashes) {
        for (String hash : hashes) {
            boolean used = handle.createQuery("SELECT (SELECT COUNT(*) FROM document WHERE pdf_sha256 = :hash)"
                                    + " + (SELECT COUNT(*) FROM document_input WHERE sha256 = :hash)")
                            .bind("hash", hash)
                            .mapTo(Long.class)
                            .one()
                    > 0;
            if (!used) {
                handle.createUpdate("DELETE FROM content_chunk WHERE sha256 = :hash")
                        .bind("hash", hash)
                        .execute();
                handle.createUpdate("DELETE FROM content WHERE sha256 = :hash")
                        .bind("hash", hash)
                        .execute();
            }
        }
    }
}
