package org.drillsheaf.handout;

import java.util.Optional;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.Paper;

/**
 * How a document is wanted.
 *
 * @param language tag; empty for the reader's own: the client's first language that has phrases, the house's for the clinic
 * @param large whether it is set for eyes that need large print; empty for the reader's own: the client's for what the client
 *     reads, standard for what the coach and the clinic read
 * @param signedBy the coach who checked the program; empty when nobody did, and then the paper says so
 */
public record DocumentSetting(
        Optional<String> language, Paper paper, Optional<Boolean> large, Optional<String> signedBy) {

    /** What the client's file asks for. */
    public static DocumentSetting of(Client client) {
        return new DocumentSetting(Optional.empty(), client.paper(), Optional.empty(), Optional.empty());
    }

    public DocumentSetting inLanguage(Optional<String> wanted) {
        return new DocumentSetting(wanted, paper, large, signedBy);
    }

    public DocumentSetting on(Paper other) {
        return new DocumentSetting(language, other, large, signedBy);
    }

    public DocumentSetting large(Optional<Boolean> wanted) {
        return new DocumentSetting(language, paper, wanted, signedBy);
    }

    public DocumentSetting signedBy(Optional<String> coach) {
        return new DocumentSetting(language, paper, large, coach);
    }
}
