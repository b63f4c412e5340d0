package org.drillsheaf.saying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drillsheaf.LocalText;

/**
 * A sentence, a clause or a part of one that is not yet worded: the key of a phrase and what stands in it, ids and numbers as they
 * are. The same in every language; {@link Speech} words it. Immutable.
 */
public sealed interface Saying {

    /** Nothing at all; worded as an empty text. */
    Saying NOTHING = new Joined(Joint.COMMA, List.of());

    /**
     * A phrase of the files in {@code shared/sayings}.
     *
     * @param with what stands in it, by the name of its place
     */
    record Phrase(String key, Map<String, Saying> with) implements Saying {
        public Phrase {
            with = Collections.unmodifiableMap(new TreeMap<>(with));
        }

        public Phrase with(String place, Saying part) {
            Map<String, Saying> more = new TreeMap<>(with);
            more.put(place, part);
            return new Phrase(key, more);
        }

        @Override
        public Stream<Name> names() {
            return with.values().stream().flatMap(Saying::names);
        }

        /** A number that the phrase itself writes, with the right form of a word beside it. */
        public Phrase with(String place, double number) {
            return with(place, new Figure(number));
        }
    }

    /**
     * Words that the house's own data, or a person, wrote down, in the languages that are there.
     *
     * @param with what takes the place of each {@code {name}} in the text
     */
    record Own(LocalText text, Map<String, Saying> with) implements Saying {
        public Own {
            with = Collections.unmodifiableMap(new TreeMap<>(with));
        }

        @Override
        public Stream<Name> names() {
            return with.values().stream().flatMap(Saying::names);
        }
    }

    /** The name of a thing. */
    record Name(Kind kind, String id) implements Saying {
        @Override
        public Stream<Name> names() {
            return Stream.of(this);
        }

        /** What has names. */
        public enum Kind {
            TEST,
            /** One of two values of a test. */
            PART,
            /** A yes-or-no mark of a test. */
            MARK,
            /** How a test is limited or beyond, for example {@code wide}. */
            WORD,
            /** What a coach has seen. */
            OBSERVED,
            PRESENTATION,
            SIDE,
            GOAL,
            PHASE,
            CONDITION,
            POSITION,
            EQUIPMENT,
            DRILL,
            LANGUAGE;

            public String id() {
                return name().toLowerCase(Locale.ROOT);
            }
        }
    }

    /**
     * A number with its unit.
     *
     * @param unit {@code deg}, {@code cm}, {@code s} or {@code points}; empty for a bare number
     * @param signed whether a plus is written too
     */
    record Amount(double number, String unit, boolean signed) implements Saying {}

    /** A number that its phrase writes. */
    record Figure(double number) implements Saying {}

    /** Parts in a row. */
    record Joined(Joint joint, List<Saying> parts) implements Saying {
        public Joined {
            parts = List.copyOf(parts);
        }

        @Override
        public boolean isEmpty() {
            return parts.stream().allMatch(Saying::isEmpty);
        }

        @Override
        public Stream<Name> names() {
            return parts.stream().flatMap(Saying::names);
        }
    }

    /** The same with a capital letter where the language has them: it begins a sentence. */
    record Opening(Saying saying) implements Saying {
        @Override
        public boolean isEmpty() {
            return saying.isEmpty();
        }

        @Override
        public Stream<Name> names() {
            return saying.names();
        }
    }

    /** What stands between the parts of a row. */
    enum Joint {
        AND,
        OR,
        COMMA,
        SEMICOLON;

        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    default boolean isEmpty() {
        return false;
    }

    /** Everything that is named in it. */
    default Stream<Name> names() {
        return Stream.empty();
    }

    static Phrase phrase(String key) {
        return new Phrase(key, Map.of());
    }

    static Saying own(LocalText text) {
        return new Own(text, Map.of());
    }

    /** Words of a person, or of a file without languages, which are said as they are in every language. */
    static Saying written(String text) {
        return text.isEmpty() ? NOTHING : own(new LocalText(Map.of(UNDETERMINED, text)));
    }

    /** The language of {@link #written} words. */
    String UNDETERMINED = "und";

    static Name name(Name.Kind kind, String id) {
        return new Name(kind, id);
    }

    static Amount amount(double number, String unit) {
        return new Amount(number, unit, false);
    }

    /** The parts that are there; a single one stands for itself. */
    static Saying joined(Joint joint, List<? extends Saying> parts) {
        List<Saying> there = new ArrayList<>(parts);
        there.removeIf(Saying::isEmpty);
        return there.size() == 1 ? there.get(0) : new Joined(joint, there);
    }

    static Saying joined(Joint joint, Saying... parts) {
        return joined(joint, Arrays.asList(parts));
    }
}
