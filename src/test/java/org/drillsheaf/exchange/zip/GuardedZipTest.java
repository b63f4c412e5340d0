package org.drillsheaf.exchange.zip;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a stranger may have put into a zip file. */
class GuardedZipTest {
    private static final ZipLimits LIMITS = new ZipLimits(5, 1_000_000, 2_000_000);

    @TempDir
    private Path folder;

    private Path file;
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private ZipArchiveOutputStream zip;

    @BeforeEach
    void aZipFile() {
        file = folder.resolve("in.zip");
        zip = new ZipArchiveOutputStream(bytes);
    }

    @Test
    void aFairFileComesWithItsContentAndWithoutWhatADesktopLeaves() throws IOException {
        put("drills/", "");
        put("drills/a.yaml", "id: a");
        put("__MACOSX/drills/._a.yaml", "x");
        put(".DS_Store", "x");

        Map<String, byte[]> entries = read(new Problems()).orElseThrow();

        assertThat(entries).containsOnlyKeys("drills/a.yaml");
        assertThat(entries.get("drills/a.yaml"))
                .asString(StandardCharsets.UTF_8)
                .isEqualTo("id: a");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/etc/passwd", "C:/autoexec.bat", "drills/a\u0000.yaml", "drills\\..\\..\\a.yaml"})
    void aNameThatLeadsOutIsRefused(String name) throws IOException {
        put(name, "x");

        assertThat(refusal())
                .isIn(
                        "The zip file has an entry with a name that leads out of it",
                        "The zip file has an entry that climbs out of its folder");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../a.yaml", "drills/../../a.yaml", "drills/.."})
    void aNameThatClimbsOutIsRefused(String name) throws IOException {
        put(name, "x");

        assertThat(refusal()).isEqualTo("The zip file has an entry that climbs out of its folder");
    }

    @Test
    void aLinkIsRefused() throws IOException {
        ZipArchiveEntry entry = new ZipArchiveEntry("drills/a.yaml");
        entry.setUnixMode(0120777);
        put(entry, "/etc/passwd".getBytes(StandardCharsets.UTF_8));

        assertThat(refusal()).isEqualTo("The zip file holds a link instead of a file");
    }

    @Test
    void aNameThatIsThereTwiceIsRefused() throws IOException {
        put("drills/a.yaml", "id: a");
        put("drills/a.yaml", "id: b");

        assertThat(refusal()).isEqualTo("The zip file holds this name twice");
    }

    @Test
    void namesThatAreOneOnManyDisksAreRefused() throws IOException {
        put("drills/a.yaml", "id: a");
        put("drills/A.yaml", "id: b");

        assertThat(refusal())
                .isEqualTo("The zip file also holds “drills/a.yaml”, which is the same name on many disks");
    }

    @Test
    void whatUnpacksManyTimesLargerIsRefused() throws IOException {
        put(new ZipArchiveEntry("drills/a.yaml"), new byte[900_000]);

        assertThat(refusal()).isEqualTo("The entry becomes more than 100 times larger when it is unpacked");
    }

    @Test
    void anEntryThatIsTooLargeIsRefused() throws IOException {
        put(new ZipArchiveEntry("drills/a.yaml"), noise(1_100_000));

        assertThat(refusal()).contains("one entry larger than 1 MB");
    }

    @Test
    void entriesThatAreTooLargeTogetherAreRefused() throws IOException {
        for (int i = 0; i < 3; i++) {
            put(new ZipArchiveEntry("drills/" + i + ".yaml"), noise(900_000));
        }

        assertThat(refusal()).startsWith("The zip file becomes larger than 2 MB");
    }

    @Test
    void tooManyEntriesAreRefused() throws IOException {
        for (int i = 0; i < 6; i++) {
            put("drills/" + i + ".yaml", "x");
        }

        assertThat(refusal()).isEqualTo("The zip file holds 6 entries, and 5 are the most");
    }

    @Test
    void aSizeThatLiesIsCountedAsWhatComesOut() throws IOException {
        put(new ZipArchiveEntry("drills/a.yaml"), noise(1_100_000));
        zip.close();
        byte[] all = bytes.toByteArray();
        int central = lastIndexOf(all, new byte[] {'P', 'K', 1, 2});
        all[central + 24] = 1;
        all[central + 25] = 0;
        all[central + 26] = 0;
        Files.write(file, all);

        assertThat(refusalOfFile()).contains("one entry larger than 1 MB");
    }

    @Test
    void aPasswordIsToldAndADamagedEntryToo() throws IOException {
        put("drills/a.yaml", "id: a, and some words so that there is something to damage");
        zip.close();
        byte[] all = bytes.toByteArray();
        byte[] locked = all.clone();
        locked[lastIndexOf(all, new byte[] {'P', 'K', 1, 2}) + 8] |= 1;
        Files.write(file, locked);
        assertThat(refusalOfFile()).isEqualTo("The entry is locked with a password");

        byte[] damaged = all.clone();
        damaged[lastIndexOf(all, new byte[] {'P', 'K', 1, 2}) + 16] ^= 1;
        Files.write(file, damaged);
        assertThat(refusalOfFile()).isEqualTo("The entry is damaged");

        Files.write(file, java.util.Arrays.copyOf(all, all.length / 2));
        assertThat(refusalOfFile()).isEqualTo("This is not a zip file, or it is damaged");
    }

    private static int lastIndexOf(byte[] all, byte[] mark) {
        for (int i = all.length - mark.length; i >= 0; i--) {
            if (java.util.Arrays.equals(all, i, i + mark.length, mark, 0, mark.length)) {
                return i;
            }
        }
        throw new IllegalArgumentException();
    }

    private static byte[] noise(int length) {
        byte[] noise = new byte[length];
        new Random(7).nextBytes(noise);
        return noise;
    }

    private void put(String name, String text) throws IOException {
        put(new ZipArchiveEntry(name), text.getBytes(StandardCharsets.UTF_8));
    }

    private void put(ZipArchiveEntry entry, byte[] content) throws IOException {
        zip.putArchiveEntry(entry);
        zip.write(content);
        zip.closeArchiveEntry();
    }

    private String refusal() throws IOException {
        zip.close();
        Files.write(file, bytes.toByteArray());
        return refusalOfFile();
    }

    private String refusalOfFile() {
        Problems problems = new Problems();
        assertThat(GuardedZip.read(file, LIMITS, name -> true, problems)).isEmpty();
        assertThat(problems.all()).hasSize(1);
        Problem problem = problems.all().get(0);
        assertThat(problem.file()).startsWith(file.toString());
        assertThat(problem.remedy()).isNotBlank();
        return problem.what();
    }

    private Optional<Map<String, byte[]>> read(Problems problems) throws IOException {
        zip.close();
        Files.write(file, bytes.toByteArray());
        return GuardedZip.read(file, LIMITS, name -> true, problems);
    }
}
