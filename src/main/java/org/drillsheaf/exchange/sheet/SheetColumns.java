package org.drillsheaf.exchange.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.library.HouseLayer.Laid;

/** Which parts of a drill stand in the sheet. Pose, variants, tags and alternative texts do not fit a cell and stay as they are. */
final class SheetColumns {
    static final String ID = "id";
    static final String REVIEWED_ON = "reviewed-on";

    private static final List<SheetColumn> KINDS = kinds();

    private SheetColumns() {}

    /** The columns for these languages, in the order of the sheet. */
    static List<SheetColumn> of(Collection<String> languages) {
        List<SheetColumn> columns = new ArrayList<>();
        for (SheetColumn kind : KINDS) {
            if (kind.language().isEmpty()) {
                columns.add(kind);
            } else {
                languages.forEach(
                        language -> columns.add(new SheetColumn(kind.part(), kind.name(), kind.words(), language)));
            }
        }
        return List.copyOf(columns);
    }

    /** The column of a key of the first head row, {@code name} or {@code name.language}. */
    static Optional<SheetColumn> find(String key) {
        int dot = key.lastIndexOf('.');
        String name = dot < 0 ? key : key.substring(0, dot);
        String language = dot < 0 ? "" : key.substring(dot + 1);
        return KINDS.stream()
                .filter(kind -> kind.name().equals(name) && kind.language().isEmpty() == language.isEmpty())
                .filter(kind -> language.isEmpty() || language.matches("[a-z]{2,3}(-[A-Za-z0-9]{2,8})?"))
                .map(kind -> new SheetColumn(kind.part(), name, kind.words(), language))
                .findFirst();
    }

    /** Every language that a drill's name is written in; English and Spanish first. */
    static List<String> languages(Map<String, Laid> drills) {
        Set<String> others = new TreeSet<>();
        for (Laid drill : drills.values()) {
            others.addAll(drill.node().get("name").map(YamlNode::keys).orElse(Set.of()));
        }
        List<String> languages = new ArrayList<>(List.of("en", "es"));
        others.removeAll(languages);
        languages.addAll(others);
        return languages;
    }

    private static List<SheetColumn> kinds() {
        Map<String, SheetColumn> all = new LinkedHashMap<>();
        plain(all, ID, "/id", "Id; a new one makes a copy", PlainPart.Writing.TEXT);
        plain(all, "status", "/status", "Status: draft, in-review, in-use, withdrawn", PlainPart.Writing.TEXT);
        local(all, "name", "/name", "Name", LocalPart.Writing.TEXT);
        local(all, "purpose", "/purpose", "What it is for", LocalPart.Writing.TEXT);
        plain(all, "family", "/family", "Family", PlainPart.Writing.TEXT);
        plain(all, "level", "/level", "Level in the family", PlainPart.Writing.NUMBER);
        plain(all, "phases", "/phases", "Phases, one a line", PlainPart.Writing.WORDS);
        plain(all, "goals", "/goals", "Goals with strength 1 to 3", PlainPart.Writing.COUNTED_WORDS);
        plain(all, "positions", "/positions", "Body positions", PlainPart.Writing.WORDS);
        plain(all, "equipment", "/equipment", "Equipment", PlainPart.Writing.WORDS);
        list(all, "set-up", "/set-up", "Set-up steps, one a line", false);
        list(all, "action", "/action", "Action steps, one a line", false);
        local(all, "cue", "/breathing/cue", "Breathing cue", LocalPart.Writing.TEXT);
        list(all, "feel", "/feel", "Feel this", false);
        list(all, "not-feel", "/not-feel", "Do not feel this", false);
        list(all, "faults", "/faults", "Fault → fix, one a line", true);
        list(all, "stop", "/stop", "Stop when", false);
        all.put(
                "conditions",
                new SheetColumn(new ConditionsPart("/conditions"), "conditions", "Not, or changed, for", ""));
        plain(all, "count", "/dose/count", "Counted in", PlainPart.Writing.TEXT);
        local(all, "noun", "/dose/noun", "Noun of the count", LocalPart.Writing.FORMS);
        plain(all, "sets", "/dose/sets", "Sets: usual (least to most)", PlainPart.Writing.USUAL_AND_RANGE);
        plain(all, "each", "/dose/each", "In one set", PlainPart.Writing.USUAL_AND_RANGE);
        plain(all, "seconds", "/dose/seconds", "Seconds of one repetition", PlainPart.Writing.NUMBER);
        plain(all, "hold-seconds", "/dose/hold-seconds", "Seconds held", PlainPart.Writing.USUAL_AND_RANGE);
        plain(all, "effort", "/dose/effort", "Effort, 0 to 10", PlainPart.Writing.USUAL_AND_RANGE);
        plain(all, "sides", "/dose/sides", "Sides", PlainPart.Writing.TEXT);
        plain(all, "in-seconds", "/breathing/in-seconds", "Breath in, seconds", PlainPart.Writing.ONE_OR_RANGE);
        plain(all, "out-seconds", "/breathing/out-seconds", "Breath out, seconds", PlainPart.Writing.ONE_OR_RANGE);
        plain(all, "pause-seconds", "/breathing/pause-seconds", "Pause, seconds", PlainPart.Writing.ONE_OR_RANGE);
        plain(all, "in-by", "/breathing/in-by", "In by", PlainPart.Writing.TEXT);
        plain(all, "out-by", "/breathing/out-by", "Out by", PlainPart.Writing.TEXT);
        plain(all, "focus", "/breathing/focus", "Breath as a task, 0 to 2", PlainPart.Writing.NUMBER);
        plain(all, "full-exhale", "/breathing/full-exhale", "Full breath out", PlainPart.Writing.YES_OR_NO);
        plain(all, "resist", "/breathing/resist", "Against resistance", PlainPart.Writing.YES_OR_NO);
        plain(all, "prerequisites", "/prerequisites", "Drills that come first", PlainPart.Writing.WORDS);
        plain(all, "easier", "/easier", "Easier drill", PlainPart.Writing.TEXT);
        plain(all, "harder", "/harder", "Harder drill", PlainPart.Writing.TEXT);
        local(
                all,
                "translation",
                "/translations",
                "Translated by; reviewed on; by whom",
                LocalPart.Writing.TRANSLATION);
        plain(all, "revision", "/revision", "Revision; counts itself", PlainPart.Writing.NUMBER);
        plain(all, "author", "/author", "Author of this revision", PlainPart.Writing.TEXT);
        plain(all, REVIEWED_ON, "/reviewed-on", "Reviewed on", PlainPart.Writing.DAY);
        plain(all, "reason", "/reason", "Reason for this revision", PlainPart.Writing.TEXT);
        return List.copyOf(all.values());
    }

    private static void plain(
            Map<String, SheetColumn> all, String name, String pointer, String words, PlainPart.Writing writing) {
        all.put(name, new SheetColumn(new PlainPart(pointer, writing), name, words, ""));
    }

    private static void local(
            Map<String, SheetColumn> all, String name, String pointer, String words, LocalPart.Writing writing) {
        all.put(name, new SheetColumn(new LocalPart(pointer, writing), name, words, "en"));
    }

    private static void list(
            Map<String, SheetColumn> all, String name, String pointer, String words, boolean isOfPairs) {
        all.put(name, new SheetColumn(new LocalListPart(pointer, isOfPairs), name, words, "en"));
    }
}
