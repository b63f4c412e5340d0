package org.drillsheaf.handout.page;

import java.util.Optional;
import org.drillsheaf.LocalText;
import org.drillsheaf.handout.paint.Picture;

/**
 * How the clinic's paper looks and what it says about the clinic.
 *
 * @param name of the clinic
 * @param phone for questions
 * @param emergencyNumber to call at once
 * @param todayContact whom to call the same day, for example "your own doctor"
 * @param logo at the size of the page's head
 * @param scope what a coach may do here and which rule sets it; printed when given
 */
public record HouseStyle(
        String name,
        String phone,
        Optional<String> address,
        String emergencyNumber,
        LocalText todayContact,
        Optional<LocalText> scope,
        Optional<Picture> logo,
        Colours colours) {

    /**
     * Colours as 0xRRGGBB.
     *
     * @param ink text, rules and plates
     * @param accent what moves, is felt or was worked out for this client
     * @param tint the ground of the one line to read from afar
     * @param figureTint where a muscle works
     * @param grey second text and quiet lines
     */
    public record Colours(int ink, int accent, int tint, int figureTint, int grey) {
        public static final Colours DEFAULT = new Colours(0x1A1A1A, 0xB3471B, 0xF6EFE3, 0xEFB8A2, 0x595959);
    }

    /** Contrast ratio of two colours by WCAG 2.2, 1 to 21. */
    public static double contrast(int one, int other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    /** Relative luminance of sRGB by WCAG 2.2. */
    private static double luminance(int colour) {
        return 0.2126 * linear(colour >> 16 & 255) + 0.7152 * linear(colour >> 8 & 255) + 0.0722 * linear(colour & 255);
    }

    private static double linear(int channel) {
        double part = channel / 255.0;
        return part <= 0.04045 ? part / 12.92 : StrictMath.pow((part + 0.055) / 1.055, 2.4);
    }
}
