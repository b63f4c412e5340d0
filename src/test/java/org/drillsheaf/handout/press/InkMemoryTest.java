package org.drillsheaf.handout.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.drillsheaf.Problems;
import org.drillsheaf.handout.paint.Picture;
import org.junit.jupiter.api.Test;

class InkMemoryTest {
    private static final Picture FAINT = new Picture(30, 20, new Spot(40, new AtomicInteger()));
    private static final Picture HALF = new Picture(30, 20, new Spot(128, new AtomicInteger()));

    private final PageSetter setter = new PageSetter(new FontFiles());

    /** Each document has its own names for opacities, by the order in which it needs them. */
    @Test
    void aRememberedPictureLooksTheSameAmongOthers() {
        byte[] alone = set(new PageSetter(new FontFiles()), HALF, FAINT, HALF.scaled(0.5));

        set(setter, FAINT);
        set(setter, HALF, HALF.scaled(0.5));

        assertThat(set(setter, HALF, FAINT, HALF.scaled(0.5))).isEqualTo(alone);
        assertThat(set(setter, HALF, FAINT, HALF.scaled(0.5))).isEqualTo(alone);
        assertThat(set(setter, FAINT, HALF)).isNotEqualTo(set(setter, HALF, FAINT));
    }

    @Test
    void anEqualPictureIsNotPaintedAgain() {
        AtomicInteger painted = new AtomicInteger();

        set(setter, new Picture(30, 20, new Spot(255, painted)));
        set(setter, new Picture(30, 20, new Spot(255, painted)));
        assertThat(painted).hasValue(1);

        set(setter, new Picture(30, 21, new Spot(255, painted)));
        set(setter, new Picture(30, 20, new Spot(254, painted)));
        assertThat(painted).hasValue(3);
    }

    @Test
    void aPainterThatPromisesNothingIsAskedEachTime() {
        AtomicInteger painted = new AtomicInteger();
        Picture picture = new Picture(30, 20, surface -> painted.incrementAndGet());

        set(setter, picture);
        set(setter, picture);

        assertThat(painted).hasValue(2);
    }

    private record Spot(int opacity, AtomicInteger painted) implements Picture.Painter {
        @Override
        public void paint(Graphics2D surface) {
            painted.incrementAndGet();
            surface.setColor(new Color(200, 60, 20, opacity));
            surface.fill(new Ellipse2D.Double(2, 2, 20, 10));
            surface.setColor(new Color(20, 60, 200));
            surface.draw(new Ellipse2D.Double(4, 4, 20, 10));
        }

        @Override
        public boolean comesAgain() {
            return true;
        }
    }

    private static byte[] set(PageSetter setter, Picture... pictures) {
        PictureShelf shelf = new PictureShelf();
        StringBuilder content = new StringBuilder("Marlow");
        for (Picture picture : List.of(pictures)) {
            content.append("<fo:external-graphic fox:alt-text=\"a spot\" src=\"")
                    .append(shelf.keep(picture).get("src"))
                    .append("\"/>");
        }
        Problems problems = new Problems();
        String page = SmallPage.of(content.toString());
        byte[] raw = setter.set("test", page, shelf, Instant.EPOCH, problems)
                .orElseThrow(() -> new AssertionError(problems.all()));
        return PdfFinish.finish(raw, page, Instant.EPOCH);
    }
}
