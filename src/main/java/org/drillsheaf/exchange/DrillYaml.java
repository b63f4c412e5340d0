package org.drillsheaf.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.emitter.Emitter;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.resolver.Resolver;
import org.yaml.snakeyaml.serializer.Serializer;

/** Writes a drill as YAML the way the catalogue is written: small maps and lists on one line, everything else below. */
public final class DrillYaml {
    /** Longest map or list that stays on one line. Characters. */
    private static final int LONGEST_ON_ONE_LINE = 100;

    private DrillYaml() {}

    /** The text of a file; read again it gives exactly the same content. */
    public static String write(JsonNode drill) {
        DumperOptions options = new DumperOptions();
        options.setDefaultFlowStyle(FlowStyle.BLOCK);
        options.setIndicatorIndent(2);
        options.setIndentWithIndicator(true);
        options.setWidth(4 * YamlNode.LONGEST_TEXT);
        options.setSplitLines(false);
        options.setAllowUnicode(true);
        options.setLineBreak(DumperOptions.LineBreak.UNIX);
        StringWriter text = new StringWriter();
        try {
            Serializer serializer = new Serializer(new Emitter(text, options), new Resolver(), options, Tag.MAP);
            serializer.open();
            serializer.serialize(node(drill, true));
            serializer.close();
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory can always be written", e);
        }
        proveSame(drill, text.toString());
        return text.toString();
    }

    /** A file that would read differently must never reach a clinic's folder. */
    private static void proveSame(JsonNode drill, String text) {
        Problems problems = new Problems();
        if (!YamlNode.parse("written", text, problems)
                .map(YamlNode::json)
                .filter(drill::equals)
                .isPresent()) {
            throw new IllegalStateException("a drill was written that reads differently: "
                    + drill.path("id").asText() + " " + problems.all());
        }
    }

    private static Node node(JsonNode json, boolean isRoot) {
        FlowStyle style = !isRoot && json.toString().length() <= LONGEST_ON_ONE_LINE ? FlowStyle.FLOW : FlowStyle.BLOCK;
        if (json.isObject()) {
            List<NodeTuple> entries = new ArrayList<>();
            for (Map.Entry<String, JsonNode> entry : json.properties()) {
                entries.add(new NodeTuple(text(entry.getKey()), node(entry.getValue(), false)));
            }
            return new MappingNode(Tag.MAP, entries, json.isEmpty() ? FlowStyle.FLOW : style);
        }
        if (json.isArray()) {
            List<Node> items = new ArrayList<>();
            json.forEach(item -> items.add(node(item, false)));
            return new SequenceNode(Tag.SEQ, items, json.isEmpty() ? FlowStyle.FLOW : style);
        }
        if (json.isTextual()) {
            return text(json.asText());
        }
        return new ScalarNode(tag(json), json.asText(), null, null, ScalarStyle.PLAIN);
    }

    /** Quoted wherever it would read as anything but a text; a day is plain, as the catalogue writes it. */
    private static ScalarNode text(String text) {
        boolean isDay = text.matches("\\d{4}-\\d{2}-\\d{2}");
        boolean needsEscapes = text.chars().anyMatch(DrillYaml::isBreakOrControl);
        return new ScalarNode(
                isDay ? Tag.TIMESTAMP : Tag.STR,
                text,
                null,
                null,
                needsEscapes ? ScalarStyle.DOUBLE_QUOTED : ScalarStyle.PLAIN);
    }

    /** Every character YAML takes for a line's end, also those that are not one in Java: unescaped, they read as spaces. */
    private static boolean isBreakOrControl(int character) {
        return Character.isISOControl(character)
                || character == '\u2028'
                || character == '\u2029'
                || character == '\uFEFF';
    }

    private static Tag tag(JsonNode json) {
        if (json.isNull()) {
            return Tag.NULL;
        }
        if (json.isBoolean()) {
            return Tag.BOOL;
        }
        return json.isIntegralNumber() ? Tag.INT : Tag.FLOAT;
    }
}
