package org.drillsheaf.desk.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import org.junit.jupiter.api.Test;

class MailFileTest {

    @Test
    void theLetterHoldsTheWholePaperAndIsNotSentYet() {
        byte[] pdf = new byte[5000];
        for (int i = 0; i < pdf.length; i++) {
            pdf[i] = (byte) i;
        }
        String letter = new String(
                MailFile.of("Su práctica", "Aquí está. Tamsin", "odile.pdf", pdf), StandardCharsets.US_ASCII);
        assertThat(letter).startsWith("X-Unsent: 1\r\n");
        assertThat(letter).contains("filename=\"odile.pdf\"");
        assertThat(letter.lines()).allMatch(line -> line.length() <= 200);
        String[] parts = letter.split("\r\n\r\n");
        String attached = parts[parts.length - 1].split("\r\n--")[0].replace("\r\n", "");
        assertThat(Base64.getDecoder().decode(attached)).isEqualTo(pdf);
    }
}
