package org.drillsheaf.desk.setting;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;

/** The file in which a desk keeps its settings. A file that is not there or cannot be read gives the first settings. */
public record SettingsFile(Path file) {

    /** The place of this user's settings. */
    public static SettingsFile ofThisUser() {
        return new SettingsFile(configuration().resolve("desk.properties"));
    }

    private static Path configuration() {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        Path home = Path.of(System.getProperty("user.home", "."));
        if (system.contains("win")) {
            return Optional.ofNullable(System.getenv("APPDATA"))
                    .map(Path::of)
                    .orElse(home)
                    .resolve("Drillsheaf");
        }
        if (system.contains("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Drillsheaf");
        }
        return Optional.ofNullable(System.getenv("XDG_CONFIG_HOME"))
                .filter(v -> !v.isBlank())
                .map(Path::of)
                .orElse(home.resolve(".config"))
                .resolve("drillsheaf");
    }

    public DeskSettings read() {
        Properties kept = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
            kept.load(reader);
        } catch (IOException | IllegalArgumentException e) {
            return DeskSettings.FIRST;
        }
        DeskSettings first = DeskSettings.FIRST;
        return new DeskSettings(
                kept.getProperty("language", first.language()),
                kept.getProperty("theme", "light").equals("dark") ? DeskSettings.Theme.DARK : DeskSettings.Theme.LIGHT,
                number(kept.getProperty("scale"), first.scalePercent()),
                kept.getProperty("mirrored", "no").equals("yes"),
                number(kept.getProperty("idle-minutes"), first.idleMinutes()),
                kept.getProperty("coach", ""),
                kept.getProperty("record", ""));
    }

    private static int number(@org.jspecify.annotations.Nullable String text, int otherwise) {
        return text != null && text.matches("\\d{1,4}") ? Integer.parseInt(text) : otherwise;
    }

    /** @return false when the disk did not take it; the desk goes on with what it has */
    public boolean write(DeskSettings settings) {
        Properties kept = new Properties();
        kept.setProperty("language", settings.language());
        kept.setProperty("theme", settings.theme().name().toLowerCase(Locale.ROOT));
        kept.setProperty("scale", Integer.toString(settings.scalePercent()));
        kept.setProperty("mirrored", settings.mirrored() ? "yes" : "no");
        kept.setProperty("idle-minutes", Integer.toString(settings.idleMinutes()));
        kept.setProperty("coach", settings.coach());
        kept.setProperty("record", settings.record());
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            Path half = file.resolveSibling(file.getFileName() + ".new");
            try (Writer writer = Files.newBufferedWriter(half)) {
                kept.store(writer, null);
            }
            Files.move(half, file, StandardCopyOption.REPLACE_EXISTING);
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
