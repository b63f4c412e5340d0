package org.drillsheaf.drill.safety;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What is known about a drill, or a changed version of it, when rules are read. A measure that is missing is not known.
 *
 * @param labels the drill's names as {@code drill:id}, {@code family:id}, {@code position:id}, {@code uses:equipment},
 *     {@code kind:id}
 */
public record Facts(Map<Measure, Double> numbers, Map<Measure, Truth> truths, Set<String> labels) {

    public Facts {
        numbers = Map.copyOf(numbers);
        truths = Map.copyOf(truths);
        labels = Set.copyOf(labels);
    }

    public OptionalDouble number(Measure measure) {
        Double value = numbers.get(measure);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    public Truth truth(Measure measure) {
        return truths.getOrDefault(measure, Truth.UNKNOWN);
    }

    public Facts with(Measure measure, double value) {
        Map<Measure, Double> changed = new EnumMap<>(Measure.class);
        changed.putAll(numbers);
        changed.put(measure, value);
        return new Facts(changed, truths, labels);
    }

    public Facts with(Measure measure, Truth value) {
        Map<Measure, Truth> changed = new EnumMap<>(Measure.class);
        changed.putAll(truths);
        changed.put(measure, value);
        return new Facts(numbers, changed, labels);
    }
}
