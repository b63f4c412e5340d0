package org.drillsheaf.drill;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.LocalText;
import org.drillsheaf.YamlNode;

/**
 * One drill as it stands in the catalogue. A sided drill is written for the right side.
 *
 * @param goals goal id to strength 1 to 3
 * @param basedOn revision of the starter drill that a house version replaces
 * @param purpose one clause for the client
 * @param pose keyframes, views and distances as written
 * @param altText what a picture shows for those who cannot see it, where the author wrote it
 * @param written the whole file, from which a changed version is read again
 */
public record Drill(
        String id,
        LocalText name,
        String family,
        int level,
        Set<Phase> phases,
        Map<String, Integer> goals,
        List<String> positions,
        List<String> equipment,
        DrillStatus status,
        Edition edition,
        List<String> prerequisites,
        Optional<String> easier,
        Optional<String> harder,
        LocalText purpose,
        List<Step> setUpSteps,
        List<Step> actionSteps,
        Breathing breathing,
        List<LocalText> feel,
        List<LocalText> notFeel,
        List<Fault> faults,
        Dose dose,
        List<LocalText> stop,
        List<ConditionTag> conditions,
        Tags tags,
        List<Translation> translations,
        YamlNode pose,
        List<Variant> variants,
        Map<Keyframe, LocalText> altText,
        YamlNode written) {

    /**
     * Which edition of a drill this is.
     *
     * @param reason why this revision was made
     */
    public record Edition(
            int revision, Optional<Integer> basedOn, String author, LocalDate reviewedOn, String reason) {}

    public Drill {
        phases = java.util.Collections.unmodifiableSet(new java.util.TreeSet<>(phases));
        goals = java.util.Collections.unmodifiableMap(new java.util.TreeMap<>(goals));
        positions = List.copyOf(positions);
        equipment = List.copyOf(equipment);
        prerequisites = List.copyOf(prerequisites);
        setUpSteps = List.copyOf(setUpSteps);
        actionSteps = List.copyOf(actionSteps);
        feel = List.copyOf(feel);
        notFeel = List.copyOf(notFeel);
        faults = List.copyOf(faults);
        stop = List.copyOf(stop);
        conditions = List.copyOf(conditions);
        translations = List.copyOf(translations);
        variants = List.copyOf(variants);
        altText = Map.copyOf(altText);
    }

    public int strength(String goal) {
        return goals.getOrDefault(goal, 0);
    }

    public Optional<Variant> variant(String id) {
        return variants.stream().filter(v -> v.id().equals(id)).findFirst();
    }

    /** Whether name, purpose and every step, feeling and fault is there in this language. */
    public boolean speaks(String language) {
        return texts().stream().allMatch(t -> t.has(language));
    }

    /** Every text that the client reads, in reading order. */
    public List<LocalText> texts() {
        java.util.ArrayList<LocalText> all = new java.util.ArrayList<>(List.of(name, purpose));
        setUpSteps.forEach(s -> all.add(s.text()));
        actionSteps.forEach(s -> all.add(s.text()));
        breathing.cue().ifPresent(all::add);
        all.addAll(feel);
        all.addAll(notFeel);
        faults.forEach(f -> {
            all.add(f.fault());
            all.add(f.fix());
        });
        all.addAll(stop);
        return List.copyOf(all);
    }

    /** Whole minutes at this dose. */
    public int minutes(Dose.Chosen chosen) {
        return DoseTime.minutes(dose, breathing, chosen);
    }

    /** This drill with another dose and breathing. */
    public Drill with(Dose otherDose, Breathing otherBreathing) {
        return new Drill(
                id,
                name,
                family,
                level,
                phases,
                goals,
                positions,
                equipment,
                status,
                edition,
                prerequisites,
                easier,
                harder,
                purpose,
                setUpSteps,
                actionSteps,
                otherBreathing,
                feel,
                notFeel,
                faults,
                otherDose,
                stop,
                conditions,
                tags,
                translations,
                pose,
                variants,
                altText,
                written);
    }
}
