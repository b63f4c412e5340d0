package org.drillsheaf.exchange.archive;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The list of what an archive holds.
 *
 * @param hashes name of each other entry to its SHA-256
 */
record Manifest(LocalDate exportedOn, Map<String, String> hashes) {
    static final String NAME = "manifest.json";
    private static final String FORMAT = "drillsheaf-catalogue";
    private static final int VERSION = 1;
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    Manifest {
        hashes = java.util.Collections.unmodifiableMap(new TreeMap<>(hashes));
    }

    byte[] write() {
        ObjectNode json = MAPPER.createObjectNode();
        json.put("format", FORMAT);
        json.put("version", VERSION);
        json.put("exported-on", exportedOn.toString());
        ObjectNode entries = json.putObject("sha-256");
        hashes.forEach(entries::put);
        try {
            return (MAPPER.writeValueAsString(json) + "\n").getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("texts and numbers can always be written", e);
        }
    }

    /** Empty when these bytes are no manifest of this version. */
    static Optional<Manifest> read(byte[] bytes) {
        try {
            JsonNode json = MAPPER.readTree(bytes);
            if (!json.path("format").asText().equals(FORMAT)
                    || json.path("version").asInt() != VERSION) {
                return Optional.empty();
            }
            Map<String, String> hashes = new TreeMap<>();
            json.path("sha-256")
                    .properties()
                    .forEach(e -> hashes.put(e.getKey(), e.getValue().asText()));
            return Optional.of(
                    new Manifest(LocalDate.parse(json.path("exported-on").asText()), hashes));
        } catch (java.io.IOException | java.time.format.DateTimeParseException e) {
            return Optional.empty();
        }
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
