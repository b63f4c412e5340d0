package org.drillsheaf.desk.drill;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drillsheaf.desk.words.Words;

/** A place in a drill's file in the words of the form: {@code Steps, 2, English}. */
public final class PlaceName {
    private PlaceName() {}

    /** @param steps keys and numbers from the file's top down, for example {@code action}, {@code 2}, {@code en} */
    public static String of(List<String> steps, Words words) {
        return IntStream.range(0, steps.size())
                .mapToObj(i -> name(steps.get(i), (i == 0 ? "field." : "language.") + steps.get(i), words))
                .collect(Collectors.joining(", "));
    }

    private static String name(String step, String key, Words words) {
        return words.has(key) ? words.text(key) : step;
    }
}
