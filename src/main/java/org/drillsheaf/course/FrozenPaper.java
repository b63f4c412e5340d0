package org.drillsheaf.course;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.client.Paper;
import org.drillsheaf.handout.DocumentMaker;
import org.drillsheaf.handout.DocumentOrder;
import org.drillsheaf.handout.DocumentSetting;
import org.drillsheaf.handout.StyleText;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.ProgramReader;

/**
 * Everything that a client's paper is drawn from, as it is at this moment, so that the same version of this program draws the
 * same bytes again whatever happens to the folders.
 *
 * @param client the client's file
 * @param program the program's file; empty for a paper that needs none
 * @param house vocabularies, catalogue, templates and house style
 */
public record FrozenPaper(
        DocumentKind kind,
        LocalDate visit,
        DocumentSetting setting,
        String client,
        Optional<String> program,
        byte[] house) {
    private static final String CLIENT = "client.yaml";
    private static final String PROGRAM = "program.yaml";
    private static final String PAPER = "paper.yaml";
    private static final String HOUSE = "house.zip";

    /**
     * With the data as it lies in the folders now.
     *
     * @param style the house style where it lies in the record; empty for the file's
     */
    public static FrozenPaper of(
            Folders folders,
            Optional<StyleText> style,
            DocumentKind kind,
            LocalDate visit,
            DocumentSetting setting,
            String client,
            Optional<String> program) {
        return new FrozenPaper(kind, visit, setting, client, program, FrozenHouse.pack(folders, style));
    }

    /** By names, to be kept. */
    public Map<String, byte[]> inputs() {
        Map<String, byte[]> inputs = new TreeMap<>();
        inputs.put(CLIENT, bytes(client));
        program.ifPresent(text -> inputs.put(PROGRAM, bytes(text)));
        inputs.put(PAPER, bytes(paper()));
        inputs.put(HOUSE, house);
        return inputs;
    }

    private String paper() {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("kind", kind.id());
        json.put("visit", visit.toString());
        setting.language().ifPresent(tag -> json.put("language", tag));
        json.put("paper", setting.paper().name());
        setting.large().ifPresent(large -> json.put("large", large));
        setting.signedBy().ifPresent(name -> json.put("signed-by", name));
        return json.toPrettyString() + "\n";
    }

    /** What {@link #inputs} gave; empty when these are no inputs of a paper. */
    public static Optional<FrozenPaper> of(Map<String, byte[]> inputs) {
        byte[] client = inputs.get(CLIENT);
        byte[] paper = inputs.get(PAPER);
        byte[] house = inputs.get(HOUSE);
        if (client == null || paper == null || house == null) {
            return Optional.empty();
        }
        return YamlNode.parse(PAPER, text(paper), new Problems())
                .flatMap(node -> DocumentKind.of(node.text("kind").orElse(""))
                        .map(kind -> new FrozenPaper(
                                kind,
                                LocalDate.parse(node.text("visit").orElseThrow()),
                                setting(node),
                                text(client),
                                Optional.ofNullable(inputs.get(PROGRAM)).map(FrozenPaper::text),
                                house)));
    }

    private static DocumentSetting setting(YamlNode node) {
        return new DocumentSetting(
                node.text("language"),
                Paper.valueOf(node.text("paper").orElseThrow()),
                Optional.of(node.json().path("large"))
                        .filter(JsonNode::isBoolean)
                        .map(JsonNode::asBoolean),
                node.text("signed-by"));
    }

    /**
     * Draws the paper from what was frozen.
     *
     * @return the PDF; empty when {@code problems} got an error
     * @throws IOException when the data cannot be laid out in the folder for temporary files; nothing of a client goes there
     */
    public Optional<byte[]> draw(Problems problems) throws IOException {
        Path scratch = Files.createTempDirectory("drillsheaf");
        try {
            Folders folders = FrozenHouse.unpack(house, scratch);
            Optional<Knowledge> knowledge = Knowledge.read(folders, problems);
            Optional<DocumentMaker> maker = knowledge.flatMap(k -> Documents.maker(folders, k, problems));
            return maker.flatMap(
                    m -> order(knowledge.orElseThrow(), problems).flatMap(o -> m.print(kind, o, problems)));
        } finally {
            remove(scratch);
        }
    }

    private Optional<DocumentOrder> order(Knowledge knowledge, Problems problems) {
        Optional<List<ClientVisit>> visits = YamlNode.parse(CLIENT, client, problems)
                .flatMap(root -> ClientVisit.readAll(root, Optional.of(visit), knowledge, problems));
        Optional<Program> built = program.flatMap(text -> YamlNode.parse(PROGRAM, text, problems))
                .flatMap(root -> ProgramReader.read(root, problems));
        if (visits.isEmpty() || problems.hasErrors()) {
            return Optional.empty();
        }
        DocumentOrder order = Documents.order(Course.of(visits.get(), knowledge), Optional.empty(), built);
        return Optional.of(order.with(setting));
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
