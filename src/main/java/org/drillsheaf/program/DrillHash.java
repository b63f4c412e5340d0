package org.drillsheaf.program;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.drillsheaf.drill.Drill;

/** What makes one edition of a drill recognisable: SHA-256 over the content of its file, without comments and layout. */
public final class DrillHash {
    private DrillHash() {}

    /** 64 hexadecimal digits. */
    public static String of(Drill drill) {
        try {
            byte[] content = drill.written().json().toString().getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
