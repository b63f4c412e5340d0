package org.drillsheaf.drill.safety;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.Breathing;
import org.drillsheaf.drill.Dose;
import org.drillsheaf.drill.DoseRange;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.drill.Variant;

/** A drill with changes in it and what was measured on that version. */
record ChangedDrill(Drill drill, List<Variant> variants, Facts facts) {

    /** Makes and measures changed drills; remembers what it made. Safe for several threads. */
    static final class Maker {
        private final DrillReader reader;
        private final Measuring measuring;
        private final Map<Key, Optional<ChangedDrill>> made = new ConcurrentHashMap<>();

        Maker(DrillReader reader, Measuring measuring) {
            this.reader = reader;
            this.measuring = measuring;
        }

        /** Empty when two changes contradict each other, or the dose has no room for a limit. */
        Optional<ChangedDrill> make(Drill drill, Changes changes) {
            Key key = new Key(drill.written(), Set.copyOf(changes.variants()), changes.limits());
            return made.computeIfAbsent(key, k -> makeNew(drill, changes));
        }

        /** One reading of a file (nodes are equal only to themselves) and the changes in it. */
        private record Key(YamlNode written, Set<String> variants, DoseLimits limits) {}

        private Optional<ChangedDrill> makeNew(Drill drill, Changes changes) {
            List<Variant> variants = changes.variants().stream()
                    .flatMap(id -> drill.variant(id).stream())
                    .toList();
            Optional<Drill> changed =
                    variants.isEmpty() ? Optional.of(drill) : reader.withVariants(drill, variants, new Problems());
            return changed.flatMap(d -> limited(d, changes.limits()))
                    .map(d -> new ChangedDrill(d, variants, measuring.facts(d)));
        }

        private static Optional<Drill> limited(Drill drill, DoseLimits limits) {
            if (limits.isNone()) {
                return Optional.of(drill);
            }
            Dose dose = drill.dose();
            Optional<DoseRange> effort = capped(dose.effort(), limits.effortAtMost());
            Optional<DoseRange> hold = capped(dose.holdSeconds(), limits.holdSecondsAtMost());
            if (effort.isEmpty() || hold.isEmpty()) {
                return Optional.empty();
            }
            Dose changed = new Dose(
                    dose.count(),
                    dose.noun(),
                    dose.sets(),
                    dose.each(),
                    dose.repetitionSeconds(),
                    hold.get(),
                    effort.get(),
                    dose.sides());
            return Optional.of(drill.with(changed, limited(drill.breathing(), limits)));
        }

        private static Optional<DoseRange> capped(DoseRange range, java.util.OptionalInt atMost) {
            if (atMost.isEmpty() || range.most() <= atMost.getAsInt()) {
                return Optional.of(range);
            }
            int most = atMost.getAsInt();
            return range.least() > most
                    ? Optional.empty()
                    : Optional.of(new DoseRange(Math.min(range.usual(), most), range.least(), most));
        }

        private static Breathing limited(Breathing breathing, DoseLimits limits) {
            Breathing.Seconds out = breathing.out();
            if (limits.breathOutSecondsAtMost().isPresent()) {
                double most = limits.breathOutSecondsAtMost().getAsInt();
                out = new Breathing.Seconds(Math.min(out.least(), most), Math.min(out.most(), most));
            }
            boolean free = limits.noCounts();
            return new Breathing(
                    breathing.in(),
                    out,
                    limits.noPause() || free ? Breathing.Seconds.of(0) : breathing.pause(),
                    breathing.inBy(),
                    breathing.outBy(),
                    free ? 0 : breathing.focus(),
                    !free
                            && breathing.fullExhale()
                            && limits.breathOutSecondsAtMost().isEmpty(),
                    breathing.resist(),
                    breathing.cue());
        }
    }
}
