package org.drillsheaf.desk.setting;

/**
 * What one desk remembers for itself.
 *
 * @param language of the interface, a tag
 * @param scalePercent size of everything, 80 to 250
 * @param mirrored whether the window is laid out from right to left
 * @param idleMinutes minutes without a key until the desk locks; 0 never
 * @param coach who sits here
 * @param record where the record lies, as {@code StoreAddress.of} reads it; empty before the first start
 */
public record DeskSettings(
        String language,
        Theme theme,
        int scalePercent,
        boolean mirrored,
        int idleMinutes,
        String coach,
        String record) {
    public static final int LEAST_SCALE = 80;
    public static final int MOST_SCALE = 250;
    public static final DeskSettings FIRST = new DeskSettings("en", Theme.LIGHT, 100, false, 5, "", "");

    /** Light or dark. */
    public enum Theme {
        LIGHT,
        DARK
    }

    public DeskSettings {
        scalePercent = Math.max(LEAST_SCALE, Math.min(MOST_SCALE, scalePercent));
        idleMinutes = Math.max(0, idleMinutes);
    }

    public DeskSettings inLanguage(String tag) {
        return new DeskSettings(tag, theme, scalePercent, mirrored, idleMinutes, coach, record);
    }

    public DeskSettings with(Theme other) {
        return new DeskSettings(language, other, scalePercent, mirrored, idleMinutes, coach, record);
    }

    public DeskSettings scaled(int percent) {
        return new DeskSettings(language, theme, percent, mirrored, idleMinutes, coach, record);
    }

    public DeskSettings mirrored(boolean fromTheRight) {
        return new DeskSettings(language, theme, scalePercent, fromTheRight, idleMinutes, coach, record);
    }

    public DeskSettings lockedAfter(int minutes) {
        return new DeskSettings(language, theme, scalePercent, mirrored, minutes, coach, record);
    }

    public DeskSettings at(String address, String who) {
        return new DeskSettings(language, theme, scalePercent, mirrored, idleMinutes, who, address);
    }
}
