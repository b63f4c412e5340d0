package org.drillsheaf.store.upkeep;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * How much a table holds and a checksum over it; equal for the same rows on either engine.
 *
 * @param sum the SHA-256 of every row, added up, so that the order of the rows does not matter; 64 hexadecimal digits
 */
public record TableSum(String table, long rows, String sum) {

    /** Adds up rows. Not safe for several threads. */
    static final class Adder {
        private static final BigInteger ALL = BigInteger.ONE.shiftLeft(256);

        private final String table;
        private long rows;
        private BigInteger sum = BigInteger.ZERO;

        Adder(String table) {
            this.table = table;
        }

        void add(Tables.Row row) {
            rows++;
            sum = sum.add(new BigInteger(1, hash(row))).mod(ALL);
        }

        TableSum sum() {
            return new TableSum(table, rows, String.format(java.util.Locale.ROOT, "%064x", sum));
        }

        private static byte[] hash(Tables.Row row) {
            try {
                MessageDigest digest = MessageDigest.getInstance("SHA-256");
                for (Map.Entry<String, @Nullable Object> e : new TreeMap<>(row.values()).entrySet()) {
                    String text = text(e.getValue());
                    digest.update((e.getKey() + ":" + text.length() + ":" + text).getBytes(StandardCharsets.UTF_8));
                }
                return digest.digest();
            } catch (NoSuchAlgorithmException e) {
                throw new IllegalStateException("every Java has SHA-256", e);
            }
        }

        private static String text(@Nullable Object value) {
            return value == null
                    ? "-"
                    : value instanceof byte[] bytes ? "=" + HexFormat.of().formatHex(bytes) : "=" + value;
        }
    }
}
