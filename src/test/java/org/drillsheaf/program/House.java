package org.drillsheaf.program;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.client.ClientFile;
import org.drillsheaf.client.ClientReader;
import org.drillsheaf.client.KnownIds;
import org.drillsheaf.client.Visit;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.drill.safety.ClientSafety;
import org.drillsheaf.drill.safety.Measuring;
import org.drillsheaf.drill.safety.PoseMeasuring;
import org.drillsheaf.drill.safety.Safety;
import org.drillsheaf.drill.safety.SafetyRules;
import org.drillsheaf.screen.GateResult;
import org.drillsheaf.screen.GateRules;
import org.drillsheaf.screen.Reading;
import org.drillsheaf.screen.Screen;
import org.drillsheaf.screen.ScreenCondition;
import org.drillsheaf.screen.ScreenReader;

/** The real house: its vocabularies, drills and sample clients, read once for all tests. */
final class House {
    private static final Path FOLDER = Path.of("");
    private static final House HOUSE = new House();

    final Vocabulary vocabulary;
    final Catalogue catalogue;
    final Safety safety;
    final Builder builder;
    final NeedsMaker needsMaker;
    private final YamlSchema clientSchema;

    private House() {
        Problems problems = new Problems();
        vocabulary = VocabularyReader.read(FOLDER, problems)
                .orElseThrow(() -> new IllegalStateException(messages(problems)));
        catalogue = vocabulary.library().catalogue();
        Measuring measuring = new PoseMeasuring();
        Map<String, org.drillsheaf.drill.safety.Facts> measured = new ConcurrentHashMap<>();
        Measuring remembered = drill -> measured.computeIfAbsent(
                drill.id() + drill.pose() + drill.dose() + drill.breathing() + drill.tags(),
                k -> measuring.facts(drill));
        safety = new Safety(
                vocabulary.library().safetyRules(),
                LibraryFiles.drillReader(FOLDER, problems).orElseThrow(),
                remembered);
        builder = new Builder(catalogue, safety, vocabulary.phases(), vocabulary.builder());
        needsMaker = new NeedsMaker(vocabulary.phases(), vocabulary.builder());
        clientSchema = YamlSchema.of(text(Path.of("shared/schemas/client.schema.json")));
    }

    static House open() {
        return HOUSE;
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<String> samples() {
        try (Stream<Path> files = Files.list(Path.of("samples/clients"))) {
            return files.map(f -> f.getFileName().toString().replace(".yaml", ""))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String messages(Problems problems) {
        return String.join("\n", problems.all().stream().map(Problem::message).toList());
    }

    ClientFile client(String yaml) {
        Problems problems = new Problems();
        SafetyRules rules = vocabulary.library().safetyRules();
        Map<String, Set<String>> conditions = new HashMap<>();
        rules.conditions().forEach((id, c) -> conditions.put(id, c.settings().keySet()));
        Set<String> questions = new HashSet<>();
        vocabulary.reading().safetyGate().questions().forEach(q -> questions.add(q.id()));
        Set<String> things = new TreeSet<>(catalogue.words().equipment().keySet());
        catalogue.words().equipment().values().forEach(e -> e.standIns().forEach(s -> things.add(s.id())));
        KnownIds known = new KnownIds(
                conditions,
                things,
                catalogue.words().positions().keySet(),
                catalogue.words().goals().keySet(),
                questions);
        return YamlNode.parse("client.yaml", yaml, problems)
                .flatMap(node -> new ClientReader(clientSchema, known).read(node, problems))
                .orElseThrow(() -> new IllegalStateException(messages(problems)));
    }

    ClientFile sample(String id) {
        return client(text(Path.of("samples/clients", id + ".yaml")));
    }

    /** The reading of one visit of a file. */
    Reading reading(ClientFile file, int visit) {
        Problems problems = new Problems();
        List<Screen> screens = new ScreenReader(vocabulary.reading().battery()).read(file, problems);
        if (problems.hasErrors()) {
            throw new IllegalStateException(messages(problems));
        }
        Optional<Reading> before = visit == 0 ? Optional.empty() : Optional.of(reading(file, visit - 1));
        return vocabulary
                .reading()
                .read(file.client(), file.conditions(), file.visits().get(visit), screens.get(visit), before);
    }

    ClientSafety safety(ClientFile file, Reading reading, Visit visit) {
        List<ClientCondition> told = new ArrayList<>(file.conditions());
        reading.conditions().stream()
                .filter(ScreenCondition::holds)
                .map(ScreenCondition::id)
                .filter(id -> told.stream().noneMatch(c -> c.id().equals(id)))
                .forEach(id -> told.add(ClientCondition.of(id)));
        Set<String> seen = new HashSet<>();
        visit.observed().forEach((key, yes) -> {
            if (yes) {
                seen.add(key);
            }
        });
        return ClientSafety.of(vocabulary.library().safetyRules(), told, visit.date(), reading.age(), seen);
    }

    CoachWishes wishes(Visit visit) {
        Problems problems = new Problems();
        Set<String> drills = new HashSet<>();
        catalogue.drills().stream().map(Drill::id).forEach(drills::add);
        CoachWishes wishes = visit.coach()
                .map(node -> new CoachWishesReader(catalogue.words().goals().keySet(), drills, problems).read(node))
                .orElse(CoachWishes.NONE);
        if (problems.hasErrors()) {
            throw new IllegalStateException(messages(problems));
        }
        return wishes;
    }

    /** Needs for the first visit of a file. */
    Needs needs(ClientFile file) {
        return needs(file, 0);
    }

    /** Needs for a first program at this visit. */
    Needs needs(ClientFile file, int number) {
        Visit visit = file.visits().get(number);
        Reading reading = reading(file, number);
        return needsMaker.first(
                file.client(), reading, safety(file, reading, visit), wishes(visit), gates(file, number));
    }

    List<GateResult> gates(ClientFile file, int number) {
        Optional<Reading> before = number == 0 ? Optional.empty() : Optional.of(reading(file, number - 1));
        GateRules rules = new GateRules(vocabulary.reading());
        GateRules.Asked asked = new GateRules.Asked(
                file.client(), file.conditions(), file.visits().get(number), reading(file, number), before, Map.of());
        return vocabulary.gates().stream()
                .map(g -> rules.measuredLinesOnly(g, asked))
                .toList();
    }
}
