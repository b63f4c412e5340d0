package org.drillsheaf.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.program.Needs;
import org.drillsheaf.program.Program;

final class Papers {
    Papers(Folders folders, Knowledge knowledge, ClientVisit read, Path out) {}

    Path referralNote() {
        return Path.of("x");
    }

    List<Path> program(Needs needs, Program program, Optional<String> signedBy) {
        return List.of();
    }
}
