package org.drillsheaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillsheaf.client.Client;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.DrillWords;
import org.drillsheaf.program.Explainer;
import org.drillsheaf.program.WhatIf;
import org.drillsheaf.program.WhyNot;
import org.drillsheaf.program.Without;

/**
 * What a coach asks about a program on the command line.
 *
 * @param drills ids
 * @param items equipment that the client might get
 * @param everyItem every piece of equipment that the client lacks
 * @param minutes that a session might have more
 */
record ProgramQuestions(List<String> drills, List<String> items, boolean everyItem, List<Integer> minutes) {
    private static final Pattern MINUTES = Pattern.compile("minutes=\\+([1-9]\\d?)");
    private static final Pattern EQUIPMENT = Pattern.compile("equipment=([a-z-]+)");

    /**
     * The answer about one drill.
     *
     * @param without what the program would lose without it; empty when it is not in
     */
    record AboutDrill(WhyNot whyNot, Optional<Without> without) {
        boolean isIn() {
            return without.isPresent();
        }
    }

    /** What was asked, answered in the order of the questions. */
    record Answers(List<AboutDrill> drills, List<WhatIf> whatIf) {}

    ProgramQuestions {
        drills = List.copyOf(drills);
        items = List.copyOf(items);
        minutes = List.copyOf(minutes);
    }

    /** Ends the command when a drill or a piece of equipment is not known. */
    static ProgramQuestions of(List<String> whyNot, List<String> whatIf, Catalogue catalogue, Client client) {
        for (String drill : whyNot) {
            if (catalogue.drill(drill).isEmpty()) {
                throw BadInput.because(
                        "--why-not",
                        "There is no drill “" + drill + "” in the catalogue",
                        "Ids are the file names of the exercise library");
            }
        }
        List<String> items = new ArrayList<>();
        List<Integer> minutes = new ArrayList<>();
        boolean everyItem = false;
        for (String change : whatIf) {
            Matcher more = MINUTES.matcher(change);
            Matcher item = EQUIPMENT.matcher(change);
            if (change.equals("equipment")) {
                everyItem = true;
            } else if (more.matches()) {
                minutes.add(Integer.valueOf(more.group(1)));
            } else if (item.matches()) {
                items.add(known(item.group(1), catalogue.words(), client));
            } else {
                throw BadInput.because(
                        "--what-if",
                        "“" + change + "” is not a change that can be tried",
                        "Write minutes=+5 (1 to 99), equipment=band, or equipment for every piece that is missing");
            }
        }
        return new ProgramQuestions(whyNot, items, everyItem, minutes);
    }

    private static String known(String item, DrillWords words, Client client) {
        if (!words.equipment().containsKey(item)) {
            throw BadInput.because(
                    "--what-if",
                    "There is no equipment “" + item + "”",
                    "Use one of: "
                            + String.join(
                                    ", ",
                                    words.equipment().keySet().stream().sorted().toList()));
        }
        if (client.equipment().contains(item)) {
            throw BadInput.because("--what-if", client.name() + " has “" + item + "” already", "Name another piece");
        }
        return item;
    }

    boolean any() {
        return everyItem || !drills.isEmpty() || !items.isEmpty() || !minutes.isEmpty();
    }

    Answers answer(Explainer explainer) {
        List<AboutDrill> about = new ArrayList<>();
        for (String drill : drills) {
            about.add(new AboutDrill(
                    explainer.whyNot(drill),
                    explainer.isIn(drill) ? Optional.of(explainer.without(drill)) : Optional.empty()));
        }
        List<WhatIf> changes = new ArrayList<>();
        minutes.forEach(m -> changes.add(explainer.moreMinutes(m)));
        items.forEach(item -> changes.add(explainer.with(item)));
        if (everyItem) {
            changes.addAll(explainer.moreEquipment());
        }
        return new Answers(about, changes);
    }
}
