package org.drillsheaf.desk.handout;

import java.nio.charset.StandardCharsets;
import java.util.Base64;

/**
 * A letter with a paper attached, as a file that mail programs open as a draft (RFC 5322 and 2045; {@code X-Unsent} is what
 * they read for "not sent yet").
 */
final class MailFile {
    private static final String BOUNDARY = "=_drillsheaf_paper";
    private static final int LINE = 76;

    private MailFile() {}

    /**
     * @param fileName of the attachment, ASCII
     * @param pdf the attachment
     */
    static byte[] of(String subject, String text, String fileName, byte[] pdf) {
        StringBuilder letter = new StringBuilder();
        line(letter, "X-Unsent: 1");
        line(letter, "To: ");
        line(letter, "Subject: =?UTF-8?B?" + encoded(subject.getBytes(StandardCharsets.UTF_8)) + "?=");
        line(letter, "MIME-Version: 1.0");
        line(letter, "Content-Type: multipart/mixed; boundary=\"" + BOUNDARY + "\"");
        line(letter, "");
        part(letter, "text/plain; charset=UTF-8", "", text.getBytes(StandardCharsets.UTF_8));
        part(
                letter,
                "application/pdf; name=\"" + fileName + "\"",
                "Content-Disposition: attachment; filename=\"" + fileName + "\"",
                pdf);
        line(letter, "--" + BOUNDARY + "--");
        return letter.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private static void part(StringBuilder letter, String type, String more, byte[] content) {
        line(letter, "--" + BOUNDARY);
        line(letter, "Content-Type: " + type);
        line(letter, "Content-Transfer-Encoding: base64");
        if (!more.isEmpty()) {
            line(letter, more);
        }
        line(letter, "");
        line(
                letter,
                Base64.getMimeEncoder(LINE, "\r\n".getBytes(StandardCharsets.US_ASCII))
                        .encodeToString(content));
    }

    private static String encoded(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes);
    }

    private static void line(StringBuilder letter, String text) {
        letter.append(text).append("\r\n");
    }
}
