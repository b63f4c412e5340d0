package org.drillsheaf.drill.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Keyframe;

/**
 * One text of a drill as it stands in its file.
 *
 * @param byLanguage language to text
 * @param variant id of the variant it belongs to; empty for the drill itself
 */
record TextPiece(Kind kind, Map<String, String> byLanguage, YamlNode place, String variant) {

    /** What a text is, which decides what is asked of it. */
    enum Kind {
        NAME,
        STEP,
        SENTENCE,
        FEELING,
        PICTURE
    }

    /** Every client text of the drill and its variants, in the order of the file. */
    static List<TextPiece> of(Drill drill) {
        List<TextPiece> pieces = new ArrayList<>();
        YamlNode file = drill.written();
        add(pieces, Kind.NAME, file, "name", "");
        add(pieces, Kind.SENTENCE, file, "purpose", "");
        steps(pieces, file, "");
        file.get("breathing").ifPresent(b -> add(pieces, Kind.SENTENCE, b, "cue", ""));
        each(file, "feel").forEach(n -> add(pieces, Kind.FEELING, n, ""));
        each(file, "not-feel").forEach(n -> add(pieces, Kind.FEELING, n, ""));
        each(file, "faults").forEach(n -> {
            add(pieces, Kind.SENTENCE, n, "fault", "");
            add(pieces, Kind.SENTENCE, n, "fix", "");
        });
        each(file, "stop").forEach(n -> add(pieces, Kind.SENTENCE, n, ""));
        pictures(pieces, file, "");
        for (YamlNode variant : each(file, "variants")) {
            String id = variant.text("id").orElse("");
            add(pieces, Kind.NAME, variant, "name", id);
            add(pieces, Kind.SENTENCE, variant, "change", id);
            steps(pieces, variant, id);
            pictures(pieces, variant, id);
            variant.get("breathing").ifPresent(b -> add(pieces, Kind.SENTENCE, b, "cue", id));
        }
        return pieces;
    }

    private static void steps(List<TextPiece> pieces, YamlNode node, String variant) {
        each(node, "set-up").forEach(n -> add(pieces, Kind.STEP, n, variant));
        each(node, "action").forEach(n -> add(pieces, Kind.STEP, n, variant));
    }

    private static void pictures(List<TextPiece> pieces, YamlNode node, String variant) {
        for (Keyframe keyframe : Keyframe.values()) {
            node.get("alt-text").ifPresent(texts -> add(pieces, Kind.PICTURE, texts, keyframe.id(), variant));
        }
    }

    private static List<YamlNode> each(YamlNode node, String key) {
        return node.get(key).map(YamlNode::items).orElse(List.of());
    }

    private static void add(List<TextPiece> pieces, Kind kind, YamlNode parent, String key, String variant) {
        parent.get(key).ifPresent(node -> add(pieces, kind, node, variant));
    }

    private static void add(List<TextPiece> pieces, Kind kind, YamlNode node, String variant) {
        Map<String, String> texts = new TreeMap<>();
        node.without("mark").without("picture").localText().ifPresent(t -> texts.putAll(t.byLanguage()));
        pieces.add(new TextPiece(kind, texts, node, variant));
    }
}
