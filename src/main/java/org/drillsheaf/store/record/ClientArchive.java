package org.drillsheaf.store.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.drillsheaf.store.change.Audit;
import org.drillsheaf.store.change.AuditEntry;
import org.drillsheaf.store.sql.StoreFailure;

/**
 * Everything that is kept about one client as one archive that anybody can read: a zip with a page to start from, the client's
 * file, every version of every part, programs, readings, what was handed out with its PDFs, and the audit.
 */
public final class ClientArchive {
    /** The same on every entry, so that the archive says the same when nothing has changed. */
    private static final LocalDateTime ENTRY_TIME = LocalDateTime.of(2000, 1, 1, 0, 0);

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Clients clients;
    private final Programs programs;
    private final Documents documents;
    private final Audit audit;

    public ClientArchive(Clients clients, Programs programs, Documents documents, Audit audit) {
        this.clients = clients;
        this.programs = programs;
        this.documents = documents;
        this.audit = audit;
    }

    /**
     * Writes the archive and notes in the audit that it was made.
     *
     * @param out is left open
     * @throws IOException when {@code out} cannot be written to
     */
    public void write(UUID client, OutputStream out, String who) throws IOException {
        ClientRecord record = clients.load(client)
                .orElseThrow(() -> new StoreFailure(
                        StoreFailure.Kind.REFUSED,
                        client.toString(),
                        "There is no such client in the record",
                        "Look at the audit; the client may have been erased"));
        ArchivePage page = new ArchivePage(record);
        ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        page.section("Now");
        add(zip, "client.yaml", record.yaml(), page, "The client's file as it is now");
        Set<PartKey> parts = new TreeSet<>(record.parts().keySet());
        audit.of(client.toString()).stream()
                .filter(entry ->
                        entry.kind() == AuditEntry.Kind.CLIENT && !entry.part().isEmpty())
                .forEach(entry -> parts.add(new PartKey(entry.part()))); // removed ones too
        versions(record, parts, zip, page);
        programs(client, zip, page);
        readings(client, parts, zip, page);
        documents(client, zip, page);
        page.section("What was done with this record");
        add(zip, "audit.json", audit(client), page, "Who did what when, without values");
        put(zip, "index.html", page.html().getBytes(StandardCharsets.UTF_8));
        zip.finish();
        audit.noteOfClient(AuditEntry.Deed.EXPORTED, client, who);
    }

    private void versions(ClientRecord record, Set<PartKey> parts, ZipOutputStream zip, ArchivePage page)
            throws IOException {
        page.section("Every version");
        for (PartKey part : parts) {
            for (Part version : clients.versions(record.key(), part)) {
                String name = "versions/" + part.text().replace(':', '-') + "-v" + version.version() + ".yaml";
                String words = part.text() + ", version " + version.version() + ", saved by " + version.savedBy() + ", "
                        + version.savedAt();
                if (version.content().isPresent()) {
                    add(zip, name, version.content().get().yaml(), page, words);
                } else {
                    page.line(words + ": removed");
                }
            }
        }
        for (PartClash clash : clients.openClashes(record.key())) {
            String name = "versions/" + clash.part().text().replace(':', '-') + "-clash-" + clash.key() + ".yaml";
            add(
                    zip,
                    name,
                    clash.mine().map(Content::yaml).orElse(""),
                    page,
                    clash.part() + ", saved second by " + clash.mineBy() + ", " + clash.mineAt() + ", not settled yet");
        }
    }

    private void programs(UUID client, ZipOutputStream zip, ArchivePage page) throws IOException {
        page.section("Programs");
        for (KeptProgram program : programs.list(client)) {
            add(
                    zip,
                    "programs/" + program.visit() + "-v" + program.version() + ".yaml",
                    program.yaml(),
                    page,
                    "Visit " + program.visit() + ", version " + program.version() + ", " + program.savedAt()
                            + program.signedBy().map(by -> ", checked by " + by).orElse(", not checked"));
        }
    }

    private void readings(UUID client, Set<PartKey> parts, ZipOutputStream zip, ArchivePage page) throws IOException {
        page.section("Readings");
        for (LocalDate visit : parts.stream().flatMap(p -> p.date().stream()).toList()) {
            List<String> readings = programs.readings(client, visit);
            for (int i = 0; i < readings.size(); i++) {
                String name = "readings/" + visit + "-v" + (i + 1) + ".txt";
                add(zip, name, readings.get(i), page, "Visit " + visit + ", version " + (i + 1));
            }
        }
    }

    private void documents(UUID client, ZipOutputStream zip, ArchivePage page) throws IOException {
        page.section("Handed out");
        Set<String> written = new HashSet<>();
        List<HandedOut> all = documents.list(client);
        for (int i = all.size(); i > 0; i--) {
            HandedOut document = all.get(i - 1);
            String name = "handed-out/" + document.date() + "-" + document.kind() + "-" + (all.size() - i + 1);
            put(zip, name + ".pdf", documents.pdf(document));
            page.link(
                    name + ".pdf",
                    document.kind() + " of " + document.date() + ", handed out by " + document.by() + ", "
                            + document.at());
            Map<String, String> inputs = new java.util.TreeMap<>();
            for (Map.Entry<String, byte[]> input : documents.inputs(document).entrySet()) {
                String hash = Documents.hash(input.getValue());
                String file = "handed-out/inputs/" + hash.substring(0, 16) + "-"
                        + input.getKey().replace('/', '-');
                inputs.put(input.getKey(), file);
                if (written.add(file)) {
                    put(zip, file, input.getValue());
                }
            }
            add(zip, name + ".json", json(document, inputs), page, "What it was made from");
        }
    }

    private static String json(HandedOut document, Map<String, String> inputs) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("kind", document.kind());
        json.put("date", document.date().toString());
        json.put("language", document.language());
        json.put("paper", document.paper());
        json.put("drawn-by", document.drawnBy());
        json.put("sha-256", document.pdfHash());
        json.put("handed-out-by", document.by());
        json.put("handed-out-at", document.at().toString());
        document.program().ifPresent(program -> json.put("program", program.toString()));
        ObjectNode files = json.putObject("inputs");
        inputs.forEach(files::put);
        return pretty(json);
    }

    private String audit(UUID client) {
        ArrayNode json = JsonNodeFactory.instance.arrayNode();
        for (AuditEntry entry : audit.of(client.toString())) {
            ObjectNode line = json.addObject();
            line.put("number", entry.number());
            line.put("time", entry.time().toString());
            line.put("who", entry.who());
            line.put("deed", entry.deed().name());
            line.put("kind", entry.kind().name());
            line.put("part", entry.part());
            line.put("version", entry.version());
            ArrayNode fields = line.putArray("fields");
            entry.fields().forEach(fields::add);
        }
        return pretty(json);
    }

    private static String pretty(com.fasterxml.jackson.databind.JsonNode json) {
        try {
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("values in memory cannot fail to be written", e);
        }
    }

    private static void add(ZipOutputStream zip, String name, String text, ArchivePage page, String words)
            throws IOException {
        put(zip, name, text.getBytes(StandardCharsets.UTF_8));
        page.link(name, words);
    }

    private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(ENTRY_TIME);
        zip.putNextEntry(entry);
        zip.write(bytes);
        zip.closeEntry();
    }
}
