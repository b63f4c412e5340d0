package org.drillsheaf.cli;

import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.program.DrillHash;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.PhasePlan;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.ProgramReader;

/** A program that was built before, taken only when the catalogue still has the very drills it was built from. */
final class ProgramFile {
    private ProgramFile() {}

    /** @param name of the file or the version, for messages */
    static Program read(String name, String text, Catalogue catalogue) {
        Problems problems = new Problems();
        Optional<Program> program =
                YamlNode.parse(name, text, problems).flatMap(node -> ProgramReader.read(node, problems));
        BadInput.stopAtErrors(problems);
        for (PhasePlan phase : program.orElseThrow().phases()) {
            for (Entry entry : phase.entries()) {
                check(name, entry, catalogue);
            }
        }
        return program.orElseThrow();
    }

    private static void check(String name, Entry entry, Catalogue catalogue) {
        Optional<Drill> drill = catalogue.drill(entry.drill());
        if (drill.isEmpty()) {
            throw BadInput.because(
                    name,
                    "The drill “" + entry.drill() + "” is not in the catalogue any more",
                    "Build the program again");
        }
        if (!DrillHash.of(drill.get()).equals(entry.hash())) {
            throw BadInput.because(
                    name,
                    "The drill “" + entry.drill() + "” has changed since the program was built",
                    "Build the program again, or put back revision " + entry.revision());
        }
    }
}
