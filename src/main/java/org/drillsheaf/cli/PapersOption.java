package org.drillsheaf.cli;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.handout.page.DocumentKind;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which papers a command prints, and who has signed the program they are of. */
final class PapersOption {
    @Option(
            names = "--document",
            paramLabel = "<document>",
            split = ",",
            defaultValue = "client-handout",
            converter = DocumentKindConverter.class,
            description = "What to print: client-handout (default), reminder-card, practice-log, coach-sheet, "
                    + "progress-report. May be given several times.")
    private List<DocumentKind> documents = List.of();

    @Option(
            names = "--signed-by",
            paramLabel = "<coach>",
            description = "The coach who has checked the program; without it the papers say that nobody has yet. With "
                    + "--store they then count as handed out, and are kept.")
    private @Nullable String signedBy;

    List<DocumentKind> documents() {
        return documents;
    }

    Optional<String> signedBy() {
        return Optional.ofNullable(signedBy);
    }
}
