package org.drillsheaf.desk;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Stage;

/** The platform's own choosers over a window. */
final class StageDialogs implements Dialogs {
    private final Stage stage;

    StageDialogs(Stage stage) {
        this.stage = stage;
    }

    @Override
    public Optional<Path> save(String title, String proposedName) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.setInitialFileName(proposedName);
        return Optional.ofNullable(chooser.showSaveDialog(stage)).map(File::toPath);
    }

    @Override
    public Optional<Path> folder(String title) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(title);
        return Optional.ofNullable(chooser.showDialog(stage)).map(File::toPath);
    }

    @Override
    public List<Path> open(String title, String what, String... endings) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(what, endings));
        List<File> files = chooser.showOpenMultipleDialog(stage);
        return files == null ? List.of() : files.stream().map(File::toPath).toList();
    }

    @Override
    public boolean show(Path file) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        List<String> command = system.contains("win")
                ? List.of("rundll32", "url.dll,FileProtocolHandler", file.toString())
                : List.of(system.contains("mac") ? "open" : "xdg-open", file.toString());
        try {
            new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
