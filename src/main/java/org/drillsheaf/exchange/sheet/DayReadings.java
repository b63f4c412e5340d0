package org.drillsheaf.exchange.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a day may mean that a spreadsheet has rewritten. */
final class DayReadings {
    private static final Pattern NUMBERS = Pattern.compile("(\\d{1,2})[./-](\\d{1,2})[./-](?:20)?(\\d{2})");

    private DayReadings() {}

    /** Day first and month first, as 2026-10-12; nothing for any other text. */
    static List<String> of(String text) {
        Matcher matcher = NUMBERS.matcher(text);
        List<String> days = new ArrayList<>();
        if (matcher.matches()) {
            int first = Integer.parseInt(matcher.group(1));
            int second = Integer.parseInt(matcher.group(2));
            String year = "20" + matcher.group(3);
            days.add(String.format(Locale.ROOT, "%s-%02d-%02d", year, second, first));
            days.add(String.format(Locale.ROOT, "%s-%02d-%02d", year, first, second));
        }
        return days;
    }
}
