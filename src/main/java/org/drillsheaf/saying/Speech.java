package org.drillsheaf.saying;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.drillsheaf.LocalText;

/**
 * Words sayings in one language. A phrase that is missing there is said in English; a name that nobody wrote down is said as its
 * id. Immutable and safe for several threads.
 */
public final class Speech {
    /** A name of place {@code test} stands as it is under {@code {test}}, and as inside a sentence under {@code {test_inside}}. */
    private static final String INSIDE = "_inside";
    /** Keeps sign, digits and unit together on a line from right to left. */
    private static final String LEFT_TO_RIGHT = "\u200E";

    private final Messages phrases;
    private final Names names;
    private final List<String> languages;

    /** The names of things, in the languages that are there. */
    @FunctionalInterface
    public interface Names {
        Optional<LocalText> of(Saying.Name.Kind kind, String id);
    }

    /** @param phrases of the language, complete by those of English */
    public Speech(Messages phrases, Names names) {
        this.phrases = phrases;
        this.names = names;
        this.languages = List.of(phrases.language(), "en");
    }

    public String language() {
        return phrases.language();
    }

    public String say(Saying saying) {
        if (saying instanceof Saying.Phrase phrase) {
            return phrases.say(phrase.key(), values(phrase.with()));
        } else if (saying instanceof Saying.Own own) {
            return own(own);
        } else if (saying instanceof Saying.Name name) {
            return name(name);
        } else if (saying instanceof Saying.Amount amount) {
            return amount(amount);
        } else if (saying instanceof Saying.Figure figure) {
            return number(figure.number());
        } else if (saying instanceof Saying.Joined joined) {
            String between =
                    phrases.phrases().getOrDefault("join." + joined.joint().id(), ", ");
            return String.join(between, say(joined.parts()));
        } else if (saying instanceof Saying.Opening opening) {
            return upperFirst(say(opening.saying()));
        }
        throw new IllegalStateException("nobody knows how to say " + saying);
    }

    public List<String> say(List<? extends Saying> sayings) {
        return sayings.stream().map(this::say).toList();
    }

    /** The saying as a sentence begins. */
    public String opening(Saying saying) {
        return upperFirst(say(saying));
    }

    private Map<String, Object> values(Map<String, Saying> with) {
        Map<String, Object> values = new TreeMap<>();
        with.forEach((place, part) -> {
            if (part instanceof Saying.Figure figure) {
                values.put(place, figure.number());
            } else {
                String text = say(part);
                values.put(place, text);
                values.put(place + INSIDE, lowerFirst(text));
            }
        });
        return values;
    }

    private String own(Saying.Own own) {
        String text = own.text().best(languages);
        for (Map.Entry<String, Saying> part : own.with().entrySet()) {
            text = text.replace("{" + part.getKey() + "}", say(part.getValue()));
        }
        return text;
    }

    private String name(Saying.Name name) {
        String key = name.kind().id() + "." + name.id();
        return names.of(name.kind(), name.id())
                .map(text -> text.best(languages))
                .orElseGet(() -> phrases.has(key)
                        ? phrases.say(key, Map.of())
                        : name.id().replace('-', ' '));
    }

    private String amount(Saying.Amount amount) {
        String number = (amount.signed() && amount.number() > 0 ? "+" : "") + number(amount.number());
        String text = amount.unit().isEmpty()
                ? number
                : phrases.say("unit." + amount.unit(), Map.of("number", number, "count", amount.number()));
        return phrases.rightToLeft() ? LEFT_TO_RIGHT + text + LEFT_TO_RIGHT : text;
    }

    /** A true minus, no superfluous zeros. */
    private String number(double value) {
        String digits = BigDecimal.valueOf(StrictMath.abs(value))
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString()
                .replace(".", phrases.phrases().getOrDefault("number.point", "."));
        return value < 0 ? "−" + digits : digits;
    }

    private static String lowerFirst(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }

    private static String upperFirst(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
