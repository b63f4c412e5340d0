package org.drillsheaf.desk.house;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.course.Documents;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.handout.DocumentMaker;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.House;

/** The clinic's house style in the record; until somebody saves one, that of the program's folder holds. Blocks. */
public final class HouseStyleSetting {
    private static final String NAME = "house-style";

    private HouseStyleSetting() {}

    static Optional<House.Setting> kept(Store store) {
        return Optional.ofNullable(store.house().settings().get(NAME));
    }

    static Content content(Folders folders, Optional<House.Setting> kept) {
        return YamlNode.parse(NAME, text(folders, kept), new Problems())
                .map(node -> Content.of(node.json()))
                .orElse(Content.emptyMap());
    }

    private static String text(Folders folders, Optional<House.Setting> kept) {
        if (kept.isPresent()) {
            return kept.get().text();
        }
        try {
            return Files.readString(folders.house());
        } catch (IOException e) {
            throw new UncheckedIOException(folders.house().toString(), e);
        }
    }

    /** @return empty when another desk saved first */
    static Optional<House.Setting> save(Store store, Content style, Optional<House.Setting> before, String who) {
        long version = before.map(House.Setting::version).orElse(0L);
        return store.house().save(new House.Setting(NAME, style.yaml(), version), who);
    }

    /** Makes the papers of this clinic; empty when {@code problems} got an error. */
    public static Optional<DocumentMaker> maker(Store store, Folders folders, Knowledge knowledge, Problems problems) {
        return Documents.maker(folders, knowledge, NAME, text(folders, kept(store)), problems);
    }
}
