package org.drillsheaf.desk.handout;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.drillsheaf.course.FrozenPaper;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.house.HouseStyleSetting;
import org.drillsheaf.handout.DocumentSetting;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.store.record.HandedOut;

/**
 * A paper that leaves the house, with everything it was drawn from.
 *
 * @param program key of the signed program; empty for a paper that needs none
 * @param clientYaml the client's file
 * @param programYaml the program's
 */
record HandingOut(
        UUID client,
        Optional<UUID> program,
        DocumentKind kind,
        LocalDate visit,
        DocumentSetting setting,
        String clientYaml,
        Optional<String> programYaml,
        byte[] pdf) {

    /** Keeps it in the record; blocks. */
    void keep(Workplace workplace) {
        FrozenPaper frozen = FrozenPaper.of(
                workplace.folders(),
                Optional.of(HouseStyleSetting.style(workplace.store(), workplace.folders())),
                kind,
                visit,
                setting,
                clientYaml,
                programYaml);
        String version = HandingOut.class.getPackage().getImplementationVersion();
        workplace
                .store()
                .documents()
                .handOut(
                        new HandedOut.Draft(
                                client,
                                program,
                                kind.id(),
                                visit,
                                setting.language().orElse("client"),
                                setting.paper().name(),
                                version == null ? "development" : version,
                                frozen.inputs(),
                                pdf),
                        workplace.coach());
    }
}
