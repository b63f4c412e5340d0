package org.drillsheaf.handout.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.junit.jupiter.api.Test;

class FontFilesTest {
    private final FontFiles fonts = new FontFiles();

    @Test
    void aFontIsReadOnlyWhenAPageNeedsIt() {
        set("Marlow");
        assertThat(fonts.asked()).containsExactly("res:font/source-sans-pro-400");

        set("Marlow רות");
        assertThat(fonts.asked()).containsExactly("res:font/dejavu-sans-400", "res:font/source-sans-pro-400");

        set("Marlow 诸葛云");
        assertThat(fonts.asked())
                .containsExactly(
                        "res:font/dejavu-sans-400", "res:font/noto-sans-sc-400", "res:font/source-sans-pro-400");
    }

    @Test
    void nothingButOurFontsIsThere() {
        assertThat(List.of("res:font/other", "res:font/../x", "file:/etc/hostname", "http://127.0.0.1/x", ""))
                .allSatisfy(address -> assertThat(fonts.at(address)).isEmpty());
    }

    private void set(String text) {
        Problems problems = new Problems();
        Optional<byte[]> pdf =
                new PageSetter(fonts).set("test", SmallPage.of(text), new PictureShelf(), Instant.EPOCH, problems);
        assertThat(problems.all()).isEmpty();
        assertThat(pdf).isPresent();
    }
}
