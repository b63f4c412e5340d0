package org.drillsheaf.desk.look;

import atlantafx.base.theme.PrimerLight;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import javafx.application.Application;
import javafx.geometry.NodeOrientation;
import javafx.scene.Scene;
import javafx.scene.text.Font;
import org.drillsheaf.desk.setting.DeskSettings;

/** Theme, size and direction of a whole window. All colours are looked up, all sizes hang on the font of the root. */
public final class Look {
    /** Pixels of the root's font at 100 %. */
    public static final double ROOT_PIXELS = 13;

    private static final List<String> PARTS = List.of("controls", "frame", "sheets", "drills");
    private static final List<String> FONTS = List.of("OpenSans-Regular", "OpenSans-Bold");

    private Look() {}

    /** Loads what all windows share, once, before the first window. */
    public static void prepare() {
        Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheetBSS());
        for (String font : FONTS) {
            try (InputStream bytes = Look.class.getResourceAsStream("/fonts/ttf/OpenSans/" + font + ".ttf")) {
                if (bytes != null) {
                    Font.loadFont(bytes, ROOT_PIXELS);
                }
            } catch (IOException | UnsatisfiedLinkError e) {
                // Without the font library of the platform its own font does; see the style sheet's second choice.
                return;
            }
        }
    }

    /** Dresses a scene. */
    public static void dress(Scene scene, DeskSettings settings) {
        scene.getStylesheets().setAll(sheet(settings.theme() == DeskSettings.Theme.DARK ? "dark" : "light"));
        PARTS.forEach(part -> scene.getStylesheets().add(sheet(part)));
        scene.getRoot().setStyle("-fx-font-size: " + pixels(settings) + "px;");
        scene.setNodeOrientation(settings.mirrored() ? NodeOrientation.RIGHT_TO_LEFT : NodeOrientation.LEFT_TO_RIGHT);
    }

    /** Size of the root's font. */
    public static double pixels(DeskSettings settings) {
        return ROOT_PIXELS * settings.scalePercent() / 100;
    }

    private static String sheet(String name) {
        return Objects.requireNonNull(Look.class.getResource(name + ".css")).toExternalForm();
    }
}
