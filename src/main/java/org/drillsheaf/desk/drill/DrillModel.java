package org.drillsheaf.desk.drill;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.awt.image.BufferedImage;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlDocument;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.Background;
import org.drillsheaf.desk.work.Lane;
import org.drillsheaf.drill.Drill;

/**
 * The form of one drill: its fields over the draft, what the check finds in them a moment after the last key, its printed block,
 * and keeping a version. For the window's thread; check and printing run beside it, the newest wins.
 */
public final class DrillModel {
    /** From the last key to the check. */
    private static final Duration REST = Duration.ofMillis(250);

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private final Draft draft;
    private final DrillFolder folder;
    private final DrillCheck check;
    private final BlockPrinter printer;
    private final Optional<RevisionShelf> shelf;
    private final Words words;
    private final Clock clock;
    private final Background background;
    private final Lane checking;
    private final Lane printing;
    private final ReadOnlyObjectWrapper<List<Finding>> findings = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Optional<BufferedImage>> block = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<String> status = new ReadOnlyObjectWrapper<>("");
    private final ReadOnlyBooleanWrapper looking = new ReadOnlyBooleanWrapper();
    private final ObjectProperty<String> language = new SimpleObjectProperty<>("en");
    private Optional<Drill> drill = Optional.empty();
    private DrillFolder.Opened opened;
    private int generation;

    /** @param shelf keeps every version in the record; empty while no record is open */
    public DrillModel(
            DrillFolder.Opened opened,
            DrillFolder folder,
            DrillCheck check,
            BlockPrinter printer,
            Optional<RevisionShelf> shelf,
            Words words,
            Clock clock,
            Background background) {
        this.opened = opened;
        this.folder = folder;
        this.check = check;
        this.printer = printer;
        this.shelf = shelf;
        this.words = words;
        this.clock = clock;
        this.background = background;
        this.checking = new Lane(background);
        this.printing = new Lane(background);
        this.draft = new Draft(opened.document());
        draft.document().addListener((of, before, now) -> changed());
        language.addListener((of, before, now) -> print());
        look();
    }

    public Draft draft() {
        return draft;
    }

    public String id() {
        return opened.id();
    }

    /** What the check finds, in the order of the file. */
    public ReadOnlyObjectProperty<List<Finding>> findings() {
        return findings.getReadOnlyProperty();
    }

    /** Whether the findings are older than the text. */
    public ReadOnlyBooleanProperty looking() {
        return looking.getReadOnlyProperty();
    }

    /** The block as it will be printed; the last good one while the text is no drill. */
    public ReadOnlyObjectProperty<Optional<BufferedImage>> block() {
        return block.getReadOnlyProperty();
    }

    /** Language of the printed block. */
    public ObjectProperty<String> language() {
        return language;
    }

    /** Languages a block can be printed in. */
    public List<String> languages() {
        return printer.languages().stream()
                .sorted(java.util.Comparator.comparing((String tag) -> !tag.equals("en"))
                        .thenComparing(java.util.Comparator.reverseOrder()))
                .toList();
    }

    /** What became of the last thing the coach did, for the status line. */
    public ReadOnlyObjectProperty<String> status() {
        return status.getReadOnlyProperty();
    }

    public List<Finding> findings(String field) {
        return findings.get().stream().filter(f -> f.field().equals(field)).toList();
    }

    private void changed() {
        status.set(words.text(draft.changed().get() ? "drill.changed" : "drill.as-kept"));
        looking.set(true);
        int asked = ++generation;
        background.later(REST, () -> {
            if (asked == generation) {
                look();
            }
        });
    }

    private void look() {
        YamlDocument now = draft.now();
        looking.set(true);
        checking.run(
                () -> check.look(now),
                result -> {
                    if (now == draft.now()) {
                        findings.set(result.findings());
                        looking.set(false);
                    }
                    if (result.drill().isPresent()) {
                        drill = result.drill();
                        print();
                    }
                },
                e -> {
                    looking.set(false);
                    status.set(words.text("drill.check-failed", String.valueOf(e.getMessage())));
                });
    }

    private void print() {
        if (drill.isEmpty()) {
            return;
        }
        Drill printed = drill.get();
        String in = language.get();
        printing.run(
                () -> printer.print(printed, in, LocalDate.now(clock), new Problems()),
                picture -> picture.ifPresent(p -> block.set(Optional.of(p))),
                e -> status.set(words.text("drill.print-failed", String.valueOf(e.getMessage()))));
    }

    /** The value of a field as text. */
    public String text(String pointer) {
        JsonNode value = draft.now().at(pointer);
        return value.isValueNode() ? value.asText() : "";
    }

    /** A text of the client in one language. */
    public String text(String pointer, String tag) {
        return TextLines.text(draft.now().at(pointer), tag);
    }

    public void setText(String pointer, String tag, String text) {
        JsonNode item = draft.now().at(pointer);
        write(pointer + "/" + tag, pointer, TextLines.with(item, tag, text.strip()));
    }

    /** Lines of a list of texts. */
    public String lines(String field, String tag) {
        return TextLines.lines(draft.now().at("/" + field), tag);
    }

    public void setLines(String field, String tag, String lines) {
        ArrayNode changed = TextLines.changed(draft.now().at("/" + field), tag, lines);
        // Items are written one by one where their number stays, so that the rest of the file keeps its lines.
        JsonNode before = draft.now().at("/" + field);
        if (before.size() != changed.size()) {
            write(field, "/" + field, changed);
            return;
        }
        YamlDocument next = draft.now();
        for (int i = 0; i < changed.size(); i++) {
            next = next.with("/" + field + "/" + i, changed.get(i));
        }
        draft.change(name(field), field, next);
    }

    /** Another word or number in a field; a blank one takes the field away. */
    public void set(String pointer, String value) {
        String text = value.strip();
        if (text.isEmpty()) {
            draft.change(name(field(pointer)), pointer, draft.now().without(pointer));
        } else {
            write(
                    pointer,
                    pointer,
                    text.matches("-?\\d{1,6}") ? JSON.numberNode(Integer.parseInt(text)) : JSON.textNode(text));
        }
    }

    /** The ids in a list. */
    public List<String> ids(String field) {
        List<String> ids = new ArrayList<>();
        draft.now().at("/" + field).forEach(n -> ids.add(n.asText()));
        return ids;
    }

    public void setIds(String field, List<String> ids) {
        ArrayNode list = JSON.arrayNode();
        ids.forEach(list::add);
        write(field, "/" + field, list);
    }

    /** Goals with their strength, 1 to 3. */
    public Map<String, Integer> goals() {
        Map<String, Integer> goals = new java.util.LinkedHashMap<>();
        draft.now()
                .at("/goals")
                .properties()
                .forEach(g -> goals.put(g.getKey(), g.getValue().asInt()));
        return goals;
    }

    /** @param strength 1 to 3; 0 takes the goal away */
    public void setGoal(String goal, int strength) {
        ObjectNode goals = draft.now().at("/goals") instanceof ObjectNode g ? g.deepCopy() : JSON.objectNode();
        if (strength == 0) {
            goals.remove(goal);
        } else {
            goals.put(goal, strength);
        }
        write("goals", "/goals", goals);
    }

    /** The day of the review is today. */
    public void reviewedToday() {
        write("reviewed-on", "/reviewed-on", JSON.textNode(LocalDate.now(clock).toString()));
    }

    /** Takes the tag of a condition away. */
    public void removeCondition(String condition) {
        ArrayNode rest = JSON.arrayNode();
        draft.now().at("/conditions").forEach(c -> {
            if (!c.path("id").asText().equals(condition)) {
                rest.add(c);
            }
        });
        write("conditions", "/conditions", rest);
    }

    private void write(String place, String pointer, JsonNode value) {
        if (!value.isMissingNode()) {
            draft.change(name(field(pointer)), place, draft.now().with(pointer, value, DrillFolder.ORDER));
        }
    }

    private static String field(String pointer) {
        String plain = pointer.startsWith("/") ? pointer.substring(1) : pointer;
        return plain.contains("/") ? plain.substring(0, plain.indexOf('/')) : plain;
    }

    /** A field in words. */
    public String name(String field) {
        return words.has("field." + field) ? words.text("field." + field) : field;
    }

    /** Why the drill cannot be kept now; empty when it can. */
    public Optional<String> whyNotKept() {
        if (!draft.changed().get()) {
            return Optional.of(words.text("drill.nothing-changed"));
        }
        if (text("/reason").equals(draft.kept().at("/reason").asText())) {
            return Optional.of(words.text("drill.reason-needed"));
        }
        long stops = findings.get().stream().filter(Finding::stops).count();
        return stops > 0 ? Optional.of(words.count("drill.stops", (int) stops)) : Optional.empty();
    }

    /**
     * Keeps the draft as the next version: in the clinic's folder, and in the record when one is open.
     *
     * @return whether it was kept; if not, {@link #status()} tells why
     */
    public boolean keep() {
        DrillCheck.Result result = check.look(draft.now());
        findings.set(result.findings());
        Optional<String> why = whyNotKept();
        if (why.isPresent() || !result.canBeKept()) {
            status.set(why.orElse(words.text("drill.reason-needed")));
            return false;
        }
        YamlDocument next = DrillFolder.next(opened, draft.now());
        Problems problems = new Problems();
        Optional<DrillFolder.Opened> written = folder.write(opened, next, problems);
        if (written.isEmpty()) {
            status.set(told(problems.all()));
            return false;
        }
        opened = written.get();
        draft.keep(next);
        Optional<String> unkept = shelf.flatMap(s -> check.look(next).drill().flatMap(s::keep));
        status.set(unkept.orElse(words.text("drill.kept", next.at("/revision").asInt())));
        return true;
    }

    private static String told(List<Problem> problems) {
        Problem first = problems.get(0);
        return first.what() + ". " + first.remedy() + ".";
    }

    /** Editions to compare with: the one kept last first, then those of the record, the newest first. */
    public List<RevisionShelf.Edition> editions() {
        List<RevisionShelf.Edition> all = new ArrayList<>();
        all.add(new RevisionShelf.Edition(
                words.text("drill.edition.kept", draft.kept().at("/revision").asInt()), draft.kept()));
        shelf.ifPresent(s -> all.addAll(s.editions(id())));
        return all;
    }

    /** The first finding of a field of this item; for tests and for walking. */
    public Optional<Finding> finding(String field, OptionalInt item) {
        return findings(field).stream()
                .filter(f -> item.isEmpty() || f.item().equals(item))
                .findFirst();
    }
}
