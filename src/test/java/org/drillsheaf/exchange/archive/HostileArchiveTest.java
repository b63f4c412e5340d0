package org.drillsheaf.exchange.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.exchange.ImportPlan;
import org.drillsheaf.exchange.Incoming;
import org.drillsheaf.exchange.SmallClinic;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Archives that were damaged, or made to do harm. What can be read apart from the harm is still shown. */
class HostileArchiveTest {
    private static final String DRILL = "drills/sit-hum.yaml";

    @TempDir
    private Path folder;

    private SmallClinic clinic;
    private Path file;

    @BeforeEach
    void anArchive() throws IOException {
        clinic = SmallClinic.in(folder);
        file = Archives.export(clinic, folder.resolve("in.zip"));
    }

    @Test
    void aZipInTheZipIsNotOpened() throws IOException {
        byte[] inner = Files.readAllBytes(file);
        put("drills/more.zip", inner);

        assertThat(Archives.refusal(file).message())
                .isEqualTo(file + "!drills/more.zip: This does not belong into a catalogue. "
                        + "Take it out of the zip file; drills lie in drills/, one YAML file each.");
    }

    @Test
    void aZipOfAnythingElseHasNoManifest() throws IOException {
        Archives.pack(Map.of("letter.txt", "Dear all"), file);

        assertThat(Archives.refusal(file).what()).isEqualTo("The zip file has no manifest of a catalogue");
    }

    @Test
    void whatADrillWasMayNotBeRewritten() throws IOException {
        Archives.edit(file, "as-exported/sit-hum.json", "\"level\":1", "\"level\":2");

        assertThat(Archives.refusal(file).what())
                .isEqualTo("This tells what a drill was when it was exported, and was changed since");
    }

    @Test
    void aDrillThatTheManifestListsMustBeThere() throws IOException {
        Map<String, String> entries = Archives.unpack(file);
        entries.remove(DRILL);
        Archives.pack(entries, file);

        assertThat(Archives.refusal(file).what()).isEqualTo("The manifest lists this, and it is not there");
    }

    @Test
    void brokenYamlIsToldWithEntryAndLine() throws IOException {
        Archives.edit(file, DRILL, "level: 1", "level: [1");

        assertThat(rejected()).startsWith(file + "!" + DRILL + ":").contains("This is not valid YAML");
    }

    @Test
    void manyAliasesAreRefusedBeforeTheyGrow() throws IOException {
        StringBuilder bomb = new StringBuilder("id: sit-hum\na0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 9; i++) {
            bomb.append("a").append(i).append(": &a").append(i).append(" [");
            bomb.append(("*a" + (i - 1) + ", ").repeat(8))
                    .append("*a")
                    .append(i - 1)
                    .append("]\n");
        }
        put(DRILL, bomb.toString().getBytes(StandardCharsets.UTF_8));

        Incoming incoming = Archives.read(file);
        assertThat(incoming.drills()).hasSize(6);
        assertThat(incoming.rejected().get(0).message()).contains(DRILL + ":3: “*a0” points at another place");
    }

    @Test
    void anUnknownKeyIsToldWithEntryAndLine() throws IOException {
        Archives.edit(file, DRILL, "level: 1\n", "level: 1\nscript: rm\n");

        ImportPlan plan = clinic.plan(Archives.read(file), Optional.empty());

        assertThat(Archives.messages(plan.rejected()))
                .singleElement()
                .asString()
                .matches("(?s).*" + DRILL + ":\\d+: “script” is not known here.*");
        assertThat(plan.changes()).isEmpty();
    }

    @Test
    void anotherEncodingIsToldAndNothingGuessed() throws IOException {
        put(DRILL, Archives.unpack(file).get(DRILL).getBytes(StandardCharsets.UTF_16));
        assertThat(rejected()).contains("The file is not UTF-8 text. Save it again as UTF-8.");

        put(DRILL, Archives.unpack(file).get("drills/sit-straw.yaml").getBytes(StandardCharsets.ISO_8859_1));
        assertThat(rejected()).contains("The file is not UTF-8 text. Save it again as UTF-8.");
    }

    @Test
    void aDrillThatNamesARejectedOneIsRejectedToo() throws IOException {
        Map<String, String> entries = Archives.unpack(file);
        String own =
                entries.get(DRILL).replaceAll("(?m)^family: .*$", "family: own").replaceAll("(?m)^harder: .*\\R", "");
        entries.put(
                "drills/own-one.yaml",
                own.replaceAll("(?m)^id: .*$", "id: own-one").replace("level: 1", "level: 99"));
        entries.put(
                "drills/own-two.yaml",
                own.replaceAll("(?m)^id: .*$", "id: own-two").replace("prerequisites: []", "prerequisites: [own-one]"));
        Archives.pack(entries, file);

        ImportPlan plan = clinic.plan(Archives.read(file), Optional.empty());

        assertThat(plan.changes()).isEmpty();
        assertThat(Archives.messages(plan.rejected()))
                .anyMatch(m -> m.contains("drills/own-one.yaml") && m.contains("level"))
                .anyMatch(m -> m.contains("drills/own-two.yaml") && m.contains("There is no drill “own-one”"));
    }

    @Test
    void whatTheCatalogueCheckCallsAnErrorIsRejected() throws IOException {
        Archives.edit(file, DRILL, "reviewed-on: 2026-10-12", "reviewed-on: 2030-01-01");

        ImportPlan plan = clinic.plan(Archives.read(file), Optional.empty());

        assertThat(plan.changes()).isEmpty();
        assertThat(Archives.messages(plan.rejected()))
                .singleElement()
                .asString()
                .contains(DRILL + ":", "The review day 2030-01-01 lies in the future. Write the real day.");
    }

    private String rejected() {
        return Archives.messages(Archives.read(file).rejected()).get(0);
    }

    private void put(String name, byte[] bytes) throws IOException {
        try (FileSystem zip = FileSystems.newFileSystem(file)) {
            Files.write(zip.getPath("/", name), bytes);
        }
    }
}
