package org.drillsheaf.program;

import java.util.List;

/** Shares the minutes of a session between its drills, each as near to its usual dose as the sum allows. */
final class MinuteShare {
    private MinuteShare() {}

    /**
     * Minutes for each drill, in the order given. The sum is the target wherever the drills' ranges allow; a step goes to the
     * drill that is then least far from its usual minutes, the earlier one of two alike.
     */
    static int[] of(List<DoseChoice> doses, int target) {
        int[] minutes = doses.stream().mapToInt(DoseChoice::usualMinutes).toArray();
        int sum = java.util.Arrays.stream(minutes).sum();
        while (sum != target) {
            int step = sum < target ? 1 : -1;
            int best = -1;
            for (int i = 0; i < minutes.length; i++) {
                DoseChoice dose = doses.get(i);
                int next = minutes[i] + step;
                if (next < dose.fewestMinutes() || next > dose.mostMinutes()) {
                    continue;
                }
                if (best < 0 || away(dose, next) < away(doses.get(best), minutes[best] + step)) {
                    best = i;
                }
            }
            if (best < 0) {
                break;
            }
            minutes[best] += step;
            sum += step;
        }
        return minutes;
    }

    private static int away(DoseChoice dose, int minutes) {
        return Math.abs(minutes - dose.usualMinutes());
    }
}
