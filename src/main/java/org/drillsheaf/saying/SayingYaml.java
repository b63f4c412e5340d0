package org.drillsheaf.saying;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillsheaf.LocalText;
import org.drillsheaf.QuotedText;
import org.drillsheaf.YamlNode;

/**
 * A saying in one line of YAML, and back. A name is {@code {goal: full-exhale}}, a number {@code 3}, an amount
 * {@code {amount: 9, unit: deg}}, a row {@code {and: […]}}, a phrase {@code {say: key, place: …}}, and a bare text what a person
 * wrote, or a program before it had phrases.
 */
public final class SayingYaml {
    private static final String PHRASE = "say";
    private static final String OWN = "text";
    private static final String AMOUNT = "amount";
    private static final String OPENING = "opening";

    private SayingYaml() {}

    public static String write(Saying saying) {
        if (saying instanceof Saying.Phrase phrase) {
            return "{" + PHRASE + ": " + phrase.key() + places(phrase.with()) + "}";
        } else if (saying instanceof Saying.Own own) {
            return own(own);
        } else if (saying instanceof Saying.Name name) {
            return "{" + name.kind().id() + ": " + QuotedText.quoted(name.id()) + "}";
        } else if (saying instanceof Saying.Amount amount) {
            return "{" + AMOUNT + ": " + number(amount.number()) + ", unit: " + QuotedText.quoted(amount.unit())
                    + (amount.signed() ? ", signed: true" : "") + "}";
        } else if (saying instanceof Saying.Figure figure) {
            return number(figure.number());
        } else if (saying instanceof Saying.Joined joined) {
            return "{" + joined.joint().id()
                    + joined.parts().stream().map(SayingYaml::write).collect(Collectors.joining(", ", ": [", "]}"));
        } else if (saying instanceof Saying.Opening opening) {
            return "{" + OPENING + ": " + write(opening.saying()) + "}";
        }
        throw new IllegalStateException("nobody knows how to write " + saying);
    }

    private static String own(Saying.Own own) {
        Map<String, String> texts = own.text().byLanguage();
        if (texts.keySet().equals(java.util.Set.of(Saying.UNDETERMINED))
                && own.with().isEmpty()) {
            return QuotedText.quoted(own.text().english());
        }
        String text = texts.entrySet().stream()
                .map(e -> QuotedText.quoted(e.getKey()) + ": " + QuotedText.quoted(e.getValue()))
                .collect(Collectors.joining(", ", "{", "}"));
        return "{" + OWN + ": " + text + places(own.with()) + "}";
    }

    private static String places(Map<String, Saying> with) {
        return with.entrySet().stream()
                .map(e -> ", " + e.getKey() + ": " + write(e.getValue()))
                .collect(Collectors.joining());
    }

    private static String number(double number) {
        return number == StrictMath.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }

    /** Empty when this is no saying. */
    public static Optional<Saying> read(YamlNode node) {
        if (node.isMap()) {
            return map(node);
        }
        return node.json().isNumber()
                ? node.number().map(Saying.Figure::new)
                : node.text().map(Saying::written);
    }

    private static Optional<Saying> map(YamlNode node) {
        if (node.has(PHRASE)) {
            return node.text(PHRASE).flatMap(key -> places(node, PHRASE).map(with -> new Saying.Phrase(key, with)));
        }
        if (node.has(OWN)) {
            return node.localText(OWN)
                    .flatMap((LocalText text) -> places(node, OWN).map(with -> new Saying.Own(text, with)));
        }
        if (node.has(AMOUNT)) {
            return node.number(AMOUNT)
                    .map(n -> new Saying.Amount(
                            n,
                            node.text("unit").orElse(""),
                            node.truth("signed").orElse(false)));
        }
        if (node.has(OPENING)) {
            return node.get(OPENING).flatMap(SayingYaml::read).map(Saying.Opening::new);
        }
        return named(node);
    }

    /** A name or a row: the one key says which. */
    private static Optional<Saying> named(YamlNode node) {
        if (node.keys().size() != 1) {
            return Optional.empty();
        }
        String key = node.keys().iterator().next().toUpperCase(Locale.ROOT);
        for (Saying.Joint joint : Saying.Joint.values()) {
            if (joint.name().equals(key)) {
                return row(joint, node.get(joint.id()).orElseThrow());
            }
        }
        for (Saying.Name.Kind kind : Saying.Name.Kind.values()) {
            if (kind.name().equals(key)) {
                return node.text(kind.id()).map(id -> Saying.name(kind, id));
            }
        }
        return Optional.empty();
    }

    private static Optional<Saying> row(Saying.Joint joint, YamlNode node) {
        List<Saying> parts = new ArrayList<>();
        for (YamlNode item : node.items()) {
            Optional<Saying> part = read(item);
            if (part.isEmpty()) {
                return Optional.empty();
            }
            parts.add(part.get());
        }
        return Optional.of(new Saying.Joined(joint, parts));
    }

    /** What stands in a phrase: everything but the key of the phrase itself. */
    private static Optional<Map<String, Saying>> places(YamlNode node, String besides) {
        Map<String, Saying> with = new LinkedHashMap<>();
        for (Map.Entry<String, YamlNode> entry : node.entries().entrySet()) {
            if (!entry.getKey().equals(besides)) {
                Optional<Saying> part = read(entry.getValue());
                if (part.isEmpty()) {
                    return Optional.empty();
                }
                with.put(entry.getKey(), part.get());
            }
        }
        return Optional.of(with);
    }
}
