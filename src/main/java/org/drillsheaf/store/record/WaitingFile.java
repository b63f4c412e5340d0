package org.drillsheaf.store.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javax.crypto.Cipher;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;
import org.drillsheaf.store.sql.StoreFailure;

/**
 * Saves that wait, a line each, enciphered with AES-GCM under a key that only the server's record holds: a stolen machine gives
 * nothing away, and nobody can reorder or change a line unnoticed. Not safe for several threads.
 */
final class WaitingFile implements AutoCloseable {
    private static final int NONCE_BYTES = 12;
    private static final int TAG_BITS = 128;
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Path path;
    private final FileChannel channel;
    private final SecretKeySpec key;
    private final SecureRandom random = new SecureRandom();
    private int lines;

    private WaitingFile(Path path, FileChannel channel, UUID storeKey) {
        this.path = path;
        this.channel = channel;
        this.key = new SecretKeySpec(sha256("org.drillsheaf.waiting " + storeKey), "AES");
    }

    /** Opens or makes the file; empty when another process has it. */
    static Optional<WaitingFile> open(Path path, UUID storeKey) throws IOException {
        FileChannel channel =
                FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
        try {
            if (channel.tryLock() == null) {
                channel.close();
                return Optional.empty();
            }
        } catch (java.nio.channels.OverlappingFileLockException e) {
            channel.close();
            return Optional.empty();
        }
        return Optional.of(new WaitingFile(path, channel, storeKey));
    }

    /** What waits, in order. A last line that was cut off was never promised to anybody and is left out. */
    List<PartSave> read() throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(Math.toIntExact(channel.size()));
        for (int at = 0; bytes.hasRemaining(); ) {
            int count = channel.read(bytes, at);
            if (count < 0) {
                break;
            }
            at += count;
        }
        List<String> found = new String(bytes.array(), StandardCharsets.US_ASCII)
                .lines()
                .filter(line -> !line.isBlank())
                .toList();
        List<PartSave> saves = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            try {
                saves.add(save(decipher(found.get(i), i)));
            } catch (GeneralSecurityException | IllegalArgumentException e) {
                if (i < found.size() - 1) {
                    throw new StoreFailure(
                            StoreFailure.Kind.DAMAGED,
                            path.toString(),
                            "What waits here for the server cannot be read",
                            "Leave the file as it is; look at the visits of its day and enter again what is missing");
                }
            }
        }
        lines = saves.size();
        return saves;
    }

    /** Adds a save; it is on the disk when this returns. */
    void add(PartSave save) throws IOException {
        write(channel.size(), encipher(text(save), lines) + "\n");
        lines++;
    }

    /** Leaves only these. */
    void replace(List<PartSave> saves) throws IOException {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < saves.size(); i++) {
            text.append(encipher(text(saves.get(i)), i)).append('\n');
        }
        channel.truncate(0);
        write(0, text.toString());
        lines = saves.size();
    }

    private void write(long at, String text) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.US_ASCII));
        long place = at;
        while (bytes.hasRemaining()) {
            place += channel.write(bytes, place);
        }
        channel.force(true);
    }

    private String encipher(String text, int line) {
        try {
            byte[] nonce = new byte[NONCE_BYTES];
            random.nextBytes(nonce);
            byte[] secret = cipher(Cipher.ENCRYPT_MODE, nonce, line).doFinal(text.getBytes(StandardCharsets.UTF_8));
            ByteBuffer both = ByteBuffer.allocate(NONCE_BYTES + secret.length);
            return Base64.getEncoder()
                    .encodeToString(both.put(nonce).put(secret).array());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has AES-GCM", e);
        }
    }

    private String decipher(String line, int number) throws GeneralSecurityException {
        byte[] bytes = Base64.getDecoder().decode(line);
        if (bytes.length < NONCE_BYTES) {
            throw new IllegalArgumentException("too short");
        }
        byte[] nonce = java.util.Arrays.copyOf(bytes, NONCE_BYTES);
        byte[] text =
                cipher(Cipher.DECRYPT_MODE, nonce, number).doFinal(bytes, NONCE_BYTES, bytes.length - NONCE_BYTES);
        return new String(text, StandardCharsets.UTF_8);
    }

    private Cipher cipher(int mode, byte[] nonce, int line) throws GeneralSecurityException {
        Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
        cipher.init(mode, key, new GCMParameterSpec(TAG_BITS, nonce));
        cipher.updateAAD(("line " + line).getBytes(StandardCharsets.US_ASCII));
        return cipher;
    }

    private static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String text(PartSave save) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("client", save.client().toString());
        json.put("part", save.part().text());
        json.put("base", save.base());
        save.content().ifPresent(content -> json.set("content", content.json()));
        json.put("who", save.who());
        json.put("at", save.at().toString());
        return json.toString();
    }

    private static PartSave save(String text) {
        try {
            JsonNode json = JSON.readTree(text);
            return new PartSave(
                    UUID.fromString(json.path("client").asText()),
                    new PartKey(json.path("part").asText()),
                    json.path("base").asLong(),
                    Optional.ofNullable(json.get("content")).map(Content::of),
                    json.path("who").asText(),
                    Instant.parse(json.path("at").asText()));
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("no save", e);
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
