package org.drillsheaf.figure.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ContactSheetTest {
    private static final double WIDTH = 210;
    private static final double MARGIN = 10;

    @Test
    void keyframesThatAreWiderThanThePageTogetherGoOnBelow() {
        DrawnPath across = DrawnPath.filled(DrawnPath.Role.LABEL, triangle(80, 20), Palette.INK);
        Drawing wide = new Drawing(80, 20, List.of(across), Map.of());

        List<Drawing> pages =
                ContactSheet.pages(List.of(new ContactSheet.Entry("slide", Collections.nCopies(3, wide))), WIDTH, 297);

        List<DrawnPath> pictures = pages.get(0).paths().stream()
                .filter(path -> path.shape().size() == across.shape().size())
                .toList();
        assertThat(pictures).hasSize(3);
        assertThat(pages.get(0).paths())
                .allSatisfy(path -> assertThat(path.shape().box().right()).isLessThanOrEqualTo(WIDTH - MARGIN));
    }

    private static PathShape triangle(double width, double height) {
        PathShape.Builder path = new PathShape.Builder();
        path.moveTo(0, 0);
        path.lineTo(width, 0);
        path.lineTo(width, height);
        path.close();
        return path.build();
    }
}
