package org.drillsheaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A clinic's own folder lies over the starter catalogue in every command. */
class HouseFolderTest {
    private static final String ID = "wall-lean-breath";

    @TempDir
    private Path folder;

    private Path house;
    private Path drills;
    private String starter;

    @BeforeEach
    void aClinicsFolder() throws IOException {
        house = folder.resolve("clinic");
        drills = Files.createDirectories(house.resolve("exercise-library"));
        starter = Files.readString(Path.of("exercise-library", ID + ".yaml"));
    }

    @Test
    void checkCountsWhatTheClinicReplacedAddedAndWithdrew() throws IOException {
        put(
                ID,
                starter.replace("revision: 1", "revision: 4\nbased-on: 1")
                        .replace("en: Bend your knees a little.", "en: Bend both knees a little."));
        put("our-lean", ownDrill());
        put("sit-hum", withdrawal("sit-hum"));

        CommandRun run = CommandRun.of("check", "--today", "2026-11-25", "--house", house.toString());

        assertThat(run.out()).contains("The clinic's own folder: 1 drills replaced, 1 added, 1 withdrawn.");
        assertThat(run.code()).as(run.out()).isZero();
    }

    @Test
    void aMistakeIsToldWithTheClinicsFileAndLine() throws IOException {
        put(ID, starter);

        CommandRun run = CommandRun.of("read", "samples/clients/odile-farrant.yaml", "--house", house.toString());

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .contains("clinic/exercise-library/wall-lean-breath.yaml:2: “wall-lean-breath” is a starter");
    }

    @Test
    void theClinicsPictureIsDrawnAndAWithdrawnDrillCanStillBeDrawn() throws IOException {
        put("our-lean", ownDrill());
        put("sit-hum", withdrawal("sit-hum"));

        assertThat(draw("our-lean").code()).isZero();
        assertThat(draw("sit-hum").code()).isZero();
        assertThat(draw("nobody-knows").code()).isEqualTo(2);
    }

    @Test
    void aWithdrawnDrillIsNotGiven() throws IOException {
        String before = build();
        assertThat(before).contains(" drill: ");
        String given = before.replaceAll("(?s)^.*? drill: (\\S+).*$", "$1");
        put(given, withdrawal(given));

        assertThat(build()).doesNotContain(" drill: " + given + "\n");
    }

    @Test
    void aFolderThatIsNotThereIsBadInput() {
        CommandRun run =
                CommandRun.of("check", "--house", folder.resolve("nowhere").toString());

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("There is no such folder");
    }

    private CommandRun draw(String id) {
        return CommandRun.of(
                "draw",
                id,
                "--house",
                house.toString(),
                "--out",
                folder.resolve(id).toString());
    }

    private String build() throws IOException {
        CommandRun run = CommandRun.of(
                "build", "samples/clients/odile-farrant.yaml", "--house", house.toString(), "--out", folder.toString());
        assertThat(run.code()).as(run.err()).isZero();
        return Files.readString(folder.resolve("odile-farrant-program.yaml"));
    }

    private String ownDrill() {
        return starter.replaceAll("(?m)^id: .*$", "id: our-lean")
                .replaceAll("(?m)^name: .*$", "name: {en: Our lean, es: Nuestro apoyo}")
                .replaceAll("(?m)^family: .*$", "family: our-lean")
                .replaceAll("(?m)^(harder|easier): .*\\R", "");
    }

    private static String withdrawal(String id) {
        return "id: " + id + "\nwithdrawn: true\nbased-on: 1\nrevision: 1\nauthor: Tamsin Rook\n"
                + "reviewed-on: 2026-11-20\nreason: We no longer give it.\n";
    }

    private void put(String id, String text) throws IOException {
        Files.writeString(drills.resolve(id + ".yaml"), text);
    }
}
