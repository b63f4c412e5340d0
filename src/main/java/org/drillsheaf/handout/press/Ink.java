package org.drillsheaf.handout.press;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.fop.pdf.PDFGState;
import org.apache.fop.render.pdf.PDFContentGenerator;
import org.apache.fop.svg.PDFGraphics2D;

/**
 * A picture in the language of a PDF page. Opacities stand between its parts, since each document has its own names for them.
 *
 * @param parts one more than opacities; name nothing outside themselves
 */
record Ink(List<String> parts, List<Opacity> opacities) {
    private static final int OPAQUE = 255;
    private static final Pattern NAMED_OPACITY = Pattern.compile("/GS\\d+ gs\\n");

    /** 255 is opaque. */
    record Opacity(int fill, int stroke) {}

    /** @return empty when the picture names something that another document does not know */
    static Optional<Ink> of(Recorder painted) {
        List<String> parts = List.of(NAMED_OPACITY.split(painted.getString(), -1));
        boolean complete =
                parts.size() == painted.opacities.size() + 1 && parts.stream().allMatch(part -> part.indexOf('/') < 0);
        return complete ? Optional.of(new Ink(parts, List.copyOf(painted.opacities))) : Optional.empty();
    }

    void putOn(PDFContentGenerator page) {
        page.add(parts.get(0));
        for (int i = 0; i < opacities.size(); i++) {
            page.add("/" + named(opacities.get(i), page) + " gs\n");
            page.add(parts.get(i + 1));
        }
    }

    private static String named(Opacity opacity, PDFContentGenerator page) {
        Map<String, Float> settings = new HashMap<>();
        if (opacity.fill() != OPAQUE) {
            settings.put(PDFGState.GSTATE_ALPHA_NONSTROKE, opacity.fill() / (float) OPAQUE);
        }
        if (opacity.stroke() != OPAQUE) {
            settings.put(PDFGState.GSTATE_ALPHA_STROKE, opacity.stroke() / (float) OPAQUE);
        }
        PDFGState state = page.getDocument()
                .getFactory()
                .makeGState(settings, page.getState().getGState());
        page.getResourceContext().addGState(state);
        return state.getName();
    }

    /** Paints onto a page and listens which opacities are asked for. */
    static final class Recorder extends PDFGraphics2D {
        private final List<Opacity> opacities;

        Recorder(PDFGraphics2D page) {
            super(page);
            this.opacities = new ArrayList<>();
        }

        private Recorder(Recorder parent) {
            super(parent);
            this.opacities = parent.opacities;
        }

        @Override
        public java.awt.Graphics create() {
            return new Recorder(this);
        }

        @Override
        protected void applyAlpha(int fill, int stroke) {
            if (fill != OPAQUE || stroke != OPAQUE) {
                opacities.add(new Opacity(fill, stroke));
            }
            super.applyAlpha(fill, stroke);
        }
    }
}
