package org.drillsheaf.figure.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ContactSheetTest {
    private static final double WIDTH = 210;
    private static final double HEIGHT = 297;
    private static final double MARGIN = 10;

    @Test
    void keyframesThatAreWiderThanThePageTogetherGoOnBelow() {
        List<DrawnPath> pictures = pictures(sheet(List.of(entry("Slide", Collections.nCopies(3, picture(80, 20))))));
        assertThat(pictures).hasSize(3);
        assertThat(pictures)
                .allSatisfy(path -> assertThat(path.shape().box().right()).isLessThanOrEqualTo(WIDTH - MARGIN));
        assertThat(pictures.get(2).shape().box().top())
                .isGreaterThan(pictures.get(0).shape().box().bottom());
    }

    @Test
    void whatStandsBesideEachOtherStandsOnOneFloor() {
        Drawing arrowBelow = new Drawing(30, 40, List.of(triangle(30, 30)), Map.of("floor", new Box(0, 30, 0, 30)));
        List<DrawnPath> pictures = pictures(sheet(List.of(
                entry("March", List.of(picture(30, 50), arrowBelow)), entry("Reach", List.of(picture(30, 20))))));
        assertThat(pictures).extracting(path -> path.shape().box().bottom()).allSatisfy(floor -> assertThat(floor)
                .isCloseTo(MARGIN + 6 + 50, within(1e-9)));
    }

    @Test
    void everyPageSaysWhichItIsAndNothingLeavesIt() {
        List<Drawing> pages = sheet(Collections.nCopies(40, entry("Long lean at the wall", List.of(picture(60, 70)))));
        assertThat(pages).hasSize(7); // two beside each other, three below
        assertThat(pages).allSatisfy(page -> assertThat(page.paths())
                .allSatisfy(path -> assertThat(path.shape().box().bottom()).isLessThanOrEqualTo(HEIGHT - MARGIN + 1)));
        assertThat(pages).allSatisfy(page -> assertThat(page.paths())
                .filteredOn(path -> path.shape().box().top() > HEIGHT - MARGIN - 3)
                .hasSize(1));
    }

    private static List<Drawing> sheet(List<ContactSheet.Entry> entries) {
        return ContactSheet.pages(entries, WIDTH, HEIGHT);
    }

    private static ContactSheet.Entry entry(String title, List<Drawing> pictures) {
        return new ContactSheet.Entry(title, "", pictures);
    }

    private static Drawing picture(double width, double height) {
        return new Drawing(width, height, List.of(triangle(width, height)), Map.of());
    }

    /** The triangles, which letters never are. */
    private static List<DrawnPath> pictures(List<Drawing> pages) {
        return pages.get(0).paths().stream()
                .filter(path -> path.shape().size() == triangle(1, 1).shape().size())
                .toList();
    }

    private static DrawnPath triangle(double width, double height) {
        return DrawnPath.filled(DrawnPath.Role.LABEL, corner(width, height), Palette.INK);
    }

    private static PathShape corner(double width, double height) {
        PathShape.Builder path = new PathShape.Builder();
        path.moveTo(0, 0);
        path.lineTo(width, 0);
        path.lineTo(width, height);
        path.close();
        return path.build();
    }
}
