package org.drillsheaf.handout;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.drillsheaf.LocalText;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.client.Appointment;
import org.drillsheaf.client.Born;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.Paper;
import org.drillsheaf.client.Print;
import org.drillsheaf.drill.Action;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.library.Library;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.drill.safety.DoseLimits;
import org.drillsheaf.drill.safety.Judgement;
import org.drillsheaf.program.AssignedDose;
import org.drillsheaf.program.Cost;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.PhasePlan;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.Proof;

/** Orders for handouts of drills from the real library, for an invented client. */
final class SamplePrograms {
    static final Library LIBRARY = library();
    private static final LocalDate DATE = LocalDate.of(2026, 3, 5);

    private SamplePrograms() {}

    private static Library library() {
        Problems problems = new Problems();
        return LibraryFiles.read(Path.of(""), problems).orElseThrow(() -> new AssertionError(problems.all()));
    }

    /** @param drills ids, with {@code @left} or {@code @right} behind those with a side */
    static HandoutOrder order(String language, Paper paper, boolean large, List<String> drills) {
        List<Entry> entries = new ArrayList<>();
        Map<String, Judgement> judgements = new HashMap<>();
        for (String written : drills) {
            String id = written.replaceAll("@.*", "");
            Optional<Side> side = written.contains("@")
                    ? Optional.of(written.endsWith("left") ? Side.LEFT : Side.RIGHT)
                    : Optional.empty();
            Drill drill = LIBRARY.catalogue().drill(id).orElseThrow(() -> new AssertionError(id));
            entries.add(entry(drill, side));
            judgements.put(
                    id,
                    new Judgement(
                            Action.CAUTION,
                            drill,
                            List.of(),
                            DoseLimits.NONE,
                            Optional.empty(),
                            List.of(),
                            List.of(LocalText.english(
                                    "Your blood pressure: do not hold a full breath. Let it flow out."))));
        }
        int minutes = entries.stream().mapToInt(Entry::minutes).sum();
        List<PhasePlan> phases = new ArrayList<>();
        for (Phase phase : Phase.values()) {
            phases.add(new PhasePlan(
                    phase,
                    phase == Phase.SETTLE ? PhasePlan.Standing.NOW : PhasePlan.Standing.AHEAD,
                    phase == Phase.SETTLE ? entries : List.of(),
                    minutes,
                    6,
                    List.of(),
                    List.of()));
        }
        Client client = new Client(
                "odile-farrant",
                "Odile Farrant",
                "Odile",
                Born.in(1979),
                Optional.empty(),
                168,
                OptionalDouble.empty(),
                List.of(language, "en"),
                paper,
                large ? Print.LARGE : Print.STANDARD,
                "Tamsin Rook",
                Set.of("wall", "chair"),
                Set.of(),
                20,
                6,
                Optional.empty());
        return new HandoutOrder(
                client,
                new Program(
                        "odile-farrant",
                        DATE,
                        Phase.SETTLE,
                        List.of(),
                        phases,
                        new Proof(Cost.NONE, Cost.NONE, 1, 1, 0, false, true),
                        List.of(),
                        List.of(),
                        List.of()),
                judgements,
                List.of(
                        words("Settle", "First we help your back to rest and your breath to slow down."),
                        words("Restore", "Now your hips and the backs of your thighs start to work again."),
                        words("Reference", "Now your body learns where straight over the foot is."),
                        words("Integrate", "Now we put it into standing, turning and walking.")),
                Optional.of(new Appointment(LocalDate.of(2026, 4, 23), Optional.of(LocalTime.of(9, 30)))),
                Set.of(),
                List.of(),
                List.of(LocalText.english("Use a chair with four legs, without wheels.")),
                List.of(LocalText.english("Wait an hour after a big meal.")),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.of("Tamsin Rook"),
                paper,
                large);
    }

    static HandoutOrder withNote(HandoutOrder o, Optional<String> note) {
        return new HandoutOrder(
                o.client(),
                o.program(),
                o.judgements(),
                o.phases(),
                o.next(),
                o.conditions(),
                o.conditionTexts(),
                o.setUp(),
                o.whileTraining(),
                note,
                o.breathOutSeconds(),
                o.signedBy(),
                o.paper(),
                o.large());
    }

    private static HandoutOrder.PhaseWords words(String name, String purpose) {
        return new HandoutOrder.PhaseWords(
                LocalText.english(name), LocalText.english(purpose), LocalText.english("The drills feel easy."));
    }

    private static Entry entry(Drill drill, Optional<Side> side) {
        return new Entry(
                drill.id(),
                drill.edition().revision(),
                "0".repeat(64),
                List.of(),
                side,
                AssignedDose.usual(drill),
                drill.minutes(drill.dose().usual()),
                false,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of());
    }
}
