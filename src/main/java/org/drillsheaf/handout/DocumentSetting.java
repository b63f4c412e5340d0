package org.drillsheaf.handout;

import java.util.Optional;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.Paper;
import org.drillsheaf.client.Print;

/**
 * How a document is wanted.
 *
 * @param language tag; empty for the reader's own: the client's first language that has phrases, the house's for the clinic
 * @param large whether it is set for eyes that need large print
 * @param signedBy the coach who checked the program; empty when nobody did, and then the paper says so
 */
public record DocumentSetting(Optional<String> language, Paper paper, boolean large, Optional<String> signedBy) {

    /** What the client's file asks for. */
    public static DocumentSetting of(Client client) {
        return new DocumentSetting(Optional.empty(), client.paper(), client.print() == Print.LARGE, Optional.empty());
    }

    public DocumentSetting inLanguage(Optional<String> wanted) {
        return new DocumentSetting(wanted, paper, large, signedBy);
    }

    public DocumentSetting on(Paper other) {
        return new DocumentSetting(language, other, large, signedBy);
    }

    public DocumentSetting large(boolean wanted) {
        return new DocumentSetting(language, paper, wanted, signedBy);
    }

    public DocumentSetting signedBy(Optional<String> coach) {
        return new DocumentSetting(language, paper, large, coach);
    }
}
