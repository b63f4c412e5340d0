package org.drillsheaf.figure.pose;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.body.JointAngles;

/** Reads {@code hold}: what both hands hold ({@code hand: stick}), and over it what one does ({@code hand.R: knee}). */
final class HoldReader {
    private static final Map<String, Side> ONE = Map.of("hand.R", Side.RIGHT, "hand.L", Side.LEFT);
    private static final String BOTH = "hand";

    private final Problems problems;

    HoldReader(Problems problems) {
        this.problems = problems;
    }

    /** The angles with the fingers laid round what the hands hold. */
    JointAngles read(YamlNode node, JointAngles before) {
        Map<Side, Held> hands = new LinkedHashMap<>();
        if (!node.isMap()) {
            node.error(problems, "“hold” names no hand", "Write for example hold: {hand.R: knee}");
        }
        node.get(BOTH).flatMap(this::held).ifPresent(held -> {
            hands.put(Side.RIGHT, held);
            hands.put(Side.LEFT, held);
        });
        node.entries().forEach((hand, what) -> {
            if (ONE.containsKey(hand)) {
                held(what).ifPresent(held -> hands.put(ONE.get(hand), held));
            } else if (!hand.equals(BOTH)) {
                what.error(problems, "There is no hand “" + hand + "”", "Write hand, hand.R or hand.L");
            }
        });
        JointAngles angles = before;
        for (Map.Entry<Side, Held> hand : hands.entrySet()) {
            angles = hand.getValue().shape().of(angles, hand.getKey());
        }
        return angles;
    }

    private Optional<Held> held(YamlNode what) {
        String word = what.text().orElse("");
        Optional<Held> held = Held.of(word);
        if (held.isEmpty()) {
            what.error(problems, "A hand cannot hold “" + word + "”", "Use one of: " + String.join(", ", Held.ids()));
        }
        return held;
    }
}
