package org.drillsheaf.cli;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.drillsheaf.handout.page.DocumentKind;
import picocli.CommandLine;

/** Reads the name of a document on the command line. */
final class DocumentKindConverter implements CommandLine.ITypeConverter<DocumentKind> {
    @Override
    public DocumentKind convert(String word) {
        return DocumentKind.of(word)
                .orElseThrow(() -> new CommandLine.TypeConversionException("there is no document “" + word
                        + "”; there are "
                        + Arrays.stream(DocumentKind.values())
                                .map(DocumentKind::id)
                                .collect(Collectors.joining(", "))));
    }
}
