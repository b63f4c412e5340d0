package org.drillsheaf.desk.house;

import java.util.Base64;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.course.Documents;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.handout.DocumentMaker;
import org.drillsheaf.handout.HandoutFiles;
import org.drillsheaf.handout.StyleText;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.House;

/**
 * The clinic's house style and its logo in the record; until somebody saves them, those of the program's folder hold. Blocks.
 */
public final class HouseStyleSetting {
    private static final String NAME = "house-style";
    private static final String LOGO = "house-logo";

    private HouseStyleSetting() {}

    static Optional<House.Setting> kept(Store store) {
        return Optional.ofNullable(store.house().settings().get(NAME));
    }

    static Content content(StyleText style) {
        return YamlNode.parse(style.name(), style.yaml(), new Problems())
                .map(node -> Content.of(node.json()))
                .orElse(Content.emptyMap());
    }

    /** The style that every paper is printed with. */
    public static StyleText style(Store store, Folders folders) {
        Optional<House.Setting> own = kept(store);
        Optional<StyleText> ours = HandoutFiles.style(folders.house(), new Problems());
        Optional<byte[]> logo = Optional.ofNullable(store.house().settings().get(LOGO))
                .map(setting -> Base64.getDecoder().decode(setting.text()))
                .or(() -> ours.flatMap(StyleText::logo));
        return own.map(setting -> new StyleText(NAME, setting.text(), logo))
                .or(() -> ours)
                .orElseThrow(() -> new IllegalStateException("no house style in " + folders.house()));
    }

    /** @return empty when another desk saved first */
    static Optional<House.Setting> save(Store store, Content style, Optional<House.Setting> before, String who) {
        long version = before.map(House.Setting::version).orElse(0L);
        return store.house().save(new House.Setting(NAME, style.yaml(), version), who);
    }

    /** @return false when another desk saved first */
    static boolean saveLogo(Store store, byte[] logo, String who) {
        long version = Optional.ofNullable(store.house().settings().get(LOGO))
                .map(House.Setting::version)
                .orElse(0L);
        return store.house()
                .save(new House.Setting(LOGO, Base64.getEncoder().encodeToString(logo), version), who)
                .isPresent();
    }

    /** Makes the papers of this clinic; empty when {@code problems} got an error. */
    public static Optional<DocumentMaker> maker(Store store, Folders folders, Knowledge knowledge, Problems problems) {
        return Documents.maker(folders, knowledge, style(store, folders), problems);
    }
}
