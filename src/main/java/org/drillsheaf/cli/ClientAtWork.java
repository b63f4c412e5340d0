package org.drillsheaf.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.store.record.ClientRecord;

/**
 * The client that a command works on.
 *
 * @param name of the file or of the record, for messages
 * @param yaml the client's file
 * @param record empty when it is a file
 */
record ClientAtWork(String name, String yaml, Optional<OpenRecord> record) implements AutoCloseable {

    static ClientAtWork of(OpenRecord record) {
        ClientRecord client = record.store().clients().load(record.client()).orElseThrow();
        return new ClientAtWork(client.id() + " in the record", client.yaml(), Optional.of(record));
    }

    /**
     * The client's visits.
     *
     * @param date the last one to read; empty for the last there is
     */
    List<ClientVisit> visits(Optional<LocalDate> date, Knowledge knowledge) {
        Problems problems = new Problems();
        Optional<List<ClientVisit>> visits = YamlNode.parse(name, yaml, problems)
                .flatMap(root -> ClientVisit.readAll(root, date, knowledge, problems));
        BadInput.stopAtErrors(problems);
        return visits.orElseThrow();
    }

    @Override
    public void close() {
        record.ifPresent(open -> open.store().close());
    }
}
