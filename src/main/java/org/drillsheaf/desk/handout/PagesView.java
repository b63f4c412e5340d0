package org.drillsheaf.desk.handout;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.NodeOrientation;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.drillsheaf.desk.figure.Pixels;
import org.drillsheaf.desk.words.Words;

/** The pages of a paper as they are printed. */
final class PagesView extends ScrollPane {
    /** Dots an inch at which pages are painted; shown smaller, so that letters stay sharp. */
    private static final double DOTS = 120;

    private static final double POINTS = 72;
    private static final double GAP = 24;

    private final Words words;
    private final FlowPane pages = new FlowPane(GAP, GAP);
    private final List<ImageView> views = new ArrayList<>();
    private int beside = 2;

    PagesView(Words words) {
        this.words = words;
        pages.setAlignment(Pos.TOP_CENTER);
        pages.setPadding(new Insets(14));
        pages.setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
        setContent(pages);
        setFitToWidth(true);
        setFocusTraversable(true);
        getStyleClass().add("pages");
        setAccessibleText(words.text("handout.pages"));
        viewportBoundsProperty().addListener((of, before, now) -> fit());
    }

    /** Paints all pages; blocks. */
    static List<Image> paint(byte[] pdf) throws IOException {
        List<Image> images = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                PDRectangle box = document.getPage(i).getMediaBox();
                float scale = (float) (DOTS / POINTS);
                BufferedImage image = new BufferedImage(
                        Math.round(box.getWidth() * scale),
                        Math.round(box.getHeight() * scale),
                        BufferedImage.TYPE_INT_ARGB_PRE);
                Graphics2D surface = image.createGraphics();
                surface.setBackground(Color.WHITE); // what the renderer clears the page with
                renderer.renderPageToGraphics(i, surface, scale);
                surface.dispose();
                images.add(Pixels.of(image));
            }
        }
        return images;
    }

    void show(List<Image> images) {
        views.clear();
        pages.getChildren().clear();
        for (int i = 0; i < images.size(); i++) {
            ImageView view = new ImageView(images.get(i));
            view.setPreserveRatio(true);
            view.setSmooth(true);
            StackPane page = new StackPane(view);
            page.getStyleClass().add("paper");
            page.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
            page.setAccessibleText(words.text("handout.page", i + 1, images.size()));
            views.add(view);
            pages.getChildren().add(page);
        }
        fit();
        setVvalue(0);
    }

    /** @param count pages side by side */
    void beside(int count) {
        beside = count;
        fit();
    }

    private void fit() {
        double width = getViewportBounds().getWidth() - 2 * 14 - (beside - 1) * GAP - 4;
        if (width > 0) {
            views.forEach(v -> v.setFitWidth(Math.max(120, Math.min(width / beside, 900))));
        }
    }

    /** Goes on by most of what is to be seen. */
    void turn(boolean back) {
        double height = pages.getHeight() - getViewportBounds().getHeight();
        if (height > 0) {
            double by = getViewportBounds().getHeight() * 0.9 / height;
            setVvalue(Math.max(0, Math.min(1, getVvalue() + (back ? -by : by))));
        }
    }
}
