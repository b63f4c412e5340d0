package org.drillsheaf.exchange.archive;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.exchange.Incoming;
import org.drillsheaf.exchange.IncomingDrill;
import org.drillsheaf.exchange.Origin;
import org.drillsheaf.exchange.zip.GuardedZip;
import org.drillsheaf.exchange.zip.ZipLimits;

/**
 * Reads an archive that somebody may have edited. A drill that differs from the manifest counts as edited since it was
 * exported; what it was then must be there unchanged. Pictures are not read: they are drawn from the pose.
 */
public final class ArchiveReader {
    /** Own settings: room for ten thousand drills with their pictures, which are never unpacked. */
    private static final ZipLimits LIMITS = new ZipLimits(100_000, 4_000_000, 400_000_000);

    private static final Pattern NAME = Pattern.compile(
            "drills/([a-z0-9-]{1,60})\\.yaml|(?:as-exported|starter)/[a-z0-9-]{1,60}\\.json|pictures/[a-z0-9-]{1,80}\\.svg");
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String EXPORT_AGAIN = "Export the catalogue again, and bring that file";

    private final String file;
    private final Map<String, byte[]> entries;
    private final Manifest manifest;
    private final Problems problems;
    private final List<IncomingDrill> drills = new ArrayList<>();
    private final List<Problem> rejected = new ArrayList<>();
    private int edited;

    private ArchiveReader(String file, Map<String, byte[]> entries, Manifest manifest, Problems problems) {
        this.file = file;
        this.entries = entries;
        this.manifest = manifest;
        this.problems = problems;
    }

    /** @return empty when the whole file is refused; the reason then stands in {@code problems} */
    public static Optional<Incoming> read(Path path, Problems problems) {
        Optional<Map<String, byte[]>> entries = GuardedZip.read(path, LIMITS, ArchiveReader::isRead, problems);
        if (entries.isEmpty()) {
            return Optional.empty();
        }
        byte[] bytes = entries.get().get(Manifest.NAME);
        Optional<Manifest> manifest = bytes == null ? Optional.empty() : Manifest.read(bytes);
        if (manifest.isEmpty()) {
            problems.error(
                    path + "!" + Manifest.NAME,
                    0,
                    "The zip file has no manifest of a catalogue",
                    "Bring a file made by “drillsheaf catalogue export”; pack the files themselves, not the folder"
                            + " around them");
            return Optional.empty();
        }
        return new ArchiveReader(String.valueOf(path), entries.get(), manifest.get(), problems).incoming();
    }

    private static boolean isRead(String name) {
        return name.equals(Manifest.NAME)
                || (NAME.matcher(name).matches() && !name.startsWith(CatalogueArchive.PICTURES));
    }

    private Optional<Incoming> incoming() {
        Problems own = new Problems();
        entries.keySet().stream()
                .filter(name ->
                        !name.equals(Manifest.NAME) && !NAME.matcher(name).matches())
                .forEach(name -> own.error(
                        file + "!" + name,
                        0,
                        "This does not belong into a catalogue",
                        "Take it out of the zip file; drills lie in drills/, one YAML file each"));
        manifest.hashes().forEach((name, hash) -> hold(name, hash, own));
        problems.addAll(own.all());
        if (own.hasErrors()) {
            return Optional.empty();
        }
        new TreeMap<>(entries).forEach((name, bytes) -> {
            Matcher matcher = NAME.matcher(name);
            if (matcher.matches() && matcher.group(1) != null) {
                drill(name, matcher.group(1), bytes);
            }
        });
        List<Problem> notes = edited == 0
                ? List.of()
                : List.of(Problem.advice(
                        file,
                        0,
                        edited + (edited == 1 ? " drill was" : " drills were") + " edited since the export on "
                                + manifest.exportedOn(),
                        "See below what they would change"));
        return Optional.of(new Incoming(drills, rejected, notes));
    }

    private void hold(String name, String hash, Problems own) {
        byte[] bytes = entries.get(name);
        boolean isPicture = name.startsWith(CatalogueArchive.PICTURES);
        if (bytes == null && !isPicture) {
            own.error(
                    file + "!" + name,
                    0,
                    "The manifest lists this, and it is not there",
                    EXPORT_AGAIN + "; to withdraw a drill write “status: withdrawn” in it");
        } else if (bytes != null
                && !isPicture
                && !name.startsWith(CatalogueArchive.DRILLS)
                && !Manifest.sha256(bytes).equals(hash)) {
            own.error(
                    file + "!" + name,
                    0,
                    "This tells what a drill was when it was exported, and was changed since",
                    "Edit the files in drills/ only. " + EXPORT_AGAIN);
        }
    }

    private void drill(String name, String id, byte[] bytes) {
        String place = file + "!" + name;
        Problems own = new Problems();
        Optional<YamlNode> node = text(place, bytes, own).flatMap(text -> YamlNode.parse(place, text, own));
        node.filter(n -> !n.text("id").equals(Optional.of(id))).ifPresent(n -> n.nearest("/id")
                .error(own, "The drill is not called like its file", "Write “id: " + id + "”"));
        if (own.hasErrors()) {
            rejected.addAll(own.all());
            return;
        }
        boolean isEdited = !Manifest.sha256(bytes).equals(manifest.hashes().get(name));
        edited += isEdited ? 1 : 0;
        drills.add(new IncomingDrill(
                id,
                ancestors(id),
                node.orElseThrow().json(),
                Optional.of(new String(bytes, StandardCharsets.UTF_8)),
                new EntryOrigin(node.orElseThrow())));
    }

    /** As exported, then the starter drill below it; one alone when they are the same, none for a drill put in by hand. */
    private List<JsonNode> ancestors(String id) {
        Optional<JsonNode> exported = json(CatalogueArchive.AS_EXPORTED + id + ".json");
        if (exported.isEmpty()) {
            return List.of();
        }
        return json(CatalogueArchive.STARTER + id + ".json")
                .map(starter -> List.of(exported.get(), starter.isNull() ? MissingNode.getInstance() : starter))
                .orElseGet(() -> List.of(exported.get()));
    }

    private Optional<JsonNode> json(String name) {
        byte[] bytes = entries.get(name);
        if (bytes == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(MAPPER.readTree(bytes));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static Optional<String> text(String place, byte[] bytes, Problems problems) {
        try {
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException e) {
            problems.error(place, 0, "The file is not UTF-8 text", "Save it again as UTF-8");
            return Optional.empty();
        }
    }

    /** Places of a YAML file in the archive. */
    private record EntryOrigin(YamlNode written) implements Origin {
        @Override
        public String name() {
            return written.file();
        }

        @Override
        public int line(String pointer) {
            return written.nearest(pointer).line();
        }

        @Override
        public Problem told(Problem problem) {
            return problem;
        }
    }
}
