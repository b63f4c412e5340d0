package org.drillsheaf.desk.house;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.drillsheaf.Problems;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.figure.Pixels;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Readiness;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.handout.paint.Logo;
import org.drillsheaf.handout.paint.Picture;

/** The clinic's logo as it stands in the head of a page, what is wrong with one that was chosen, and the ways to change it. */
final class LogoView extends VBox {
    private static final long MOST_BYTES = 1 << 20;
    private static final double PIXELS_PER_MM = 11;

    private final Workplace workplace;
    private final Words words;
    private final Consumer<Optional<File>> wanted;
    private final StackPane paper = new StackPane();
    private final Label told = Labels.prose("", "bold");
    private final Readiness removing;

    /** @param name as the house style names it */
    record File(String name, byte[] content) {}

    /** @param wanted gets a logo that a page can carry, or none */
    LogoView(Workplace workplace, Consumer<Optional<File>> wanted) {
        super(6);
        this.workplace = workplace;
        this.words = workplace.words();
        this.wanted = wanted;
        told.managedProperty().bind(told.textProperty().isNotEmpty());
        paper.getStyleClass().add("logo-paper");
        paper.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        paper.setMaxWidth(USE_PREF_SIZE);
        Button choose = Buttons.plain(words.text("logo.choose"), this::choose);
        Button remove = Buttons.plain(words.text("logo.remove"), () -> wanted.accept(Optional.empty()));
        removing = Readiness.of(remove);
        FlowPane row = new FlowPane(12, 6, paper, choose, remove);
        row.setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(row, Labels.prose(words.text("logo.more"), "small", "second"), told);
        show(Optional.empty());
    }

    /** Shows what is printed now. */
    void show(Optional<File> logo) {
        Optional<Image> image = logo.flatMap(file -> Logo.read(file.name(), file.content(), new Problems()))
                .map(LogoView::paint);
        paper.getChildren()
                .setAll(image.<javafx.scene.Node>map(ImageView::new)
                        .orElseGet(() -> Labels.text(words.text("logo.none"), "third")));
        paper.setAccessibleText(words.text(image.isPresent() ? "logo.name" : "logo.none"));
        removing.set(image.isPresent() ? Optional.empty() : Optional.of(words.text("logo.none")));
    }

    private static Image paint(Picture picture) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(picture.widthMm() * PIXELS_PER_MM),
                (int) Math.ceil(picture.heightMm() * PIXELS_PER_MM),
                BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D surface = image.createGraphics();
        surface.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        surface.scale(PIXELS_PER_MM, PIXELS_PER_MM);
        picture.painter().paint(surface);
        surface.dispose();
        return Pixels.of(image);
    }

    private void choose() {
        workplace.dialogs().open(words.text("logo.choose"), words.text("logo.files"), "*.svg", "*.png").stream()
                .findFirst()
                .ifPresent(this::take);
    }

    private void take(Path path) {
        Problems problems = new Problems();
        Optional<byte[]> content = read(path, problems);
        String name = path.getFileName().toString();
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        Optional<Picture> picture = content.flatMap(bytes -> Logo.read(name, bytes, problems));
        if (picture.isPresent() && !problems.hasErrors()) {
            told.setText("");
            wanted.accept(Optional.of(new File("logo." + ending, content.orElseThrow())));
        } else {
            told.setText(problems.all().get(0).message());
        }
    }

    private static Optional<byte[]> read(Path path, Problems problems) {
        try {
            if (Files.size(path) > MOST_BYTES) {
                problems.error(path.toString(), 0, "The logo is larger than a megabyte", "Make it smaller");
                return Optional.empty();
            }
            return Optional.of(Files.readAllBytes(path));
        } catch (IOException e) {
            problems.error(path.toString(), 0, "The logo cannot be read", "Choose another file");
            return Optional.empty();
        }
    }
}
