package org.drillsheaf.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.course.Course;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.course.Planning;
import org.drillsheaf.drill.library.Library;
import org.drillsheaf.program.DrillHash;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.ProgramYaml;
import org.drillsheaf.store.record.Coach;
import org.drillsheaf.store.record.DrillRevision;
import org.drillsheaf.store.record.House;
import org.drillsheaf.store.record.KeptProgram;
import org.drillsheaf.store.sql.Passphrase;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the clinic keeps beside its clients, and the programs built from it. One suite for both databases. */
final class RecordOfTheHouseTest {
    private static final String WHO = "Tamsin Rook";
    private static Knowledge knowledge;
    private static Program program;

    @TempDir
    Path folder;

    @BeforeAll
    static void aProgramOverTheRealLibrary() {
        Problems problems = new Problems();
        knowledge = Knowledge.read(new Folders(Path.of(""), Path.of("house")), problems)
                .orElseThrow();
        List<ClientVisit> visits = YamlNode.parse("edwin-tarrow.yaml", Engines.sample("edwin-tarrow"), problems)
                .flatMap(root -> ClientVisit.readAll(root, Optional.empty(), knowledge, problems))
                .orElseThrow();
        program = (Program)
                Planning.along(Course.of(visits, knowledge), knowledge).result();
    }

    @ParameterizedTest
    @EnumSource
    void aCoachIsChangedByOneDeskAtATime(Engines engine) {
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(engine.address(folder), passphrase, Engines.CLOCK)) {
            House house = store.house();
            Coach tamsin = house.save(new Coach(WHO, false, true, 0), WHO).orElseThrow();
            assertThat(house.save(new Coach(WHO, true, true, 0), WHO))
                    .as("added twice")
                    .isEmpty();
            Coach lead = house.save(new Coach(WHO, true, true, tamsin.version()), WHO)
                    .orElseThrow();
            assertThat(house.save(new Coach(WHO, false, false, tamsin.version()), WHO))
                    .as("from an old version")
                    .isEmpty();
            assertThat(house.coaches()).containsExactly(lead);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aSettingIsChangedByOneDeskAtATime(Engines engine) {
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(engine.address(folder), passphrase, Engines.CLOCK)) {
            House house = store.house();
            House.Setting first =
                    house.save(new House.Setting("paper", "A4", 0), WHO).orElseThrow();
            House.Setting second = house.save(new House.Setting("paper", "Letter", first.version()), WHO)
                    .orElseThrow();
            assertThat(house.save(new House.Setting("paper", "A5", first.version()), WHO))
                    .isEmpty();
            assertThat(house.settings()).containsOnly(java.util.Map.entry("paper", second));
        }
    }

    @ParameterizedTest
    @EnumSource
    void theWholeLibraryIsTakenInOnce(Engines engine) {
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(engine.address(folder), passphrase, Engines.CLOCK)) {
            int drills = knowledge.catalogue().drills().size();
            Library library = knowledge.vocabulary().library();
            assertThat(store.drills().takeIn(library, WHO)).isEqualTo(drills);
            assertThat(store.drills().takeIn(library, WHO)).isZero();
            assertThat(store.drills().files()).hasSize(drills);
            assertThat(store.drills().list()).allSatisfy(line -> assertThat(line.sha256())
                    .isEqualTo(DrillHash.of(
                            knowledge.catalogue().drill(line.drill()).orElseThrow())));
        }
    }

    @ParameterizedTest
    @EnumSource
    void aProgramKeepsEveryVersionItsDrillsAndItsSignature(Engines engine) {
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(engine.address(folder), passphrase, Engines.CLOCK)) {
            UUID client = store.clients().add(Engines.client("edwin-tarrow"), WHO);
            KeptProgram first = store.programs().save(client, program, knowledge.catalogue(), WHO);
            KeptProgram second = store.programs().save(client, program, knowledge.catalogue(), WHO);
            KeptProgram signed = store.programs().sign(second.key(), WHO);
            assertThat(store.programs().sign(second.key(), "Joran Vale"))
                    .as("stays signed")
                    .isEqualTo(signed);
            assertThat(signed.signedBy()).contains(WHO);
            assertThat(store.programs().list(client)).containsExactly(signed, first);
            assertThat(List.of(first.version(), signed.version())).containsExactly(1, 2);
            assertThat(first.yaml()).isEqualTo(ProgramYaml.write(program));
            assertThat(store.programs().pinned(first.key()))
                    .extracting(DrillRevision::sha256)
                    .containsExactlyInAnyOrderElementsOf(program.phases().stream()
                            .flatMap(phase -> phase.entries().stream())
                            .map(entry -> entry.hash())
                            .distinct()
                            .toList());
        }
    }
}
