package org.drillsheaf.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;

/** Reads what a command needs from its folders and files; ends the command with every mistake that stands there. */
final class HouseData {
    private HouseData() {}

    static Folders folders() {
        Problems problems = new Problems();
        Optional<Folders> folders = Folders.ofThisProgram(problems);
        BadInput.stopAtErrors(problems);
        return folders.orElseThrow();
    }

    static Knowledge knowledge(Folders folders) {
        Problems problems = new Problems();
        Optional<Knowledge> knowledge = Knowledge.read(folders, problems);
        BadInput.stopAtErrors(problems);
        return knowledge.orElseThrow();
    }

    /**
     * The visits of a client's file.
     *
     * @param date the last one to read; empty for the last of the file
     */
    static List<ClientVisit> visits(Path file, Optional<LocalDate> date, Knowledge knowledge) {
        Problems problems = new Problems();
        Optional<List<ClientVisit>> visits = YamlNode.parse(file.toString(), TextFile.read(file), problems)
                .flatMap(root -> ClientVisit.readAll(root, date, knowledge, problems));
        BadInput.stopAtErrors(problems);
        return visits.orElseThrow();
    }
}
