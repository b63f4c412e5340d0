package org.drillsheaf.screen;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.LocalText;
import org.drillsheaf.Source;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.screen.rule.Rule;

/**
 * A working hypothesis for choosing drills, as rules over findings. Never a diagnosis, and never shown to the client.
 *
 * @param meaning one line for the coach
 * @param sided whether it is read for left and right apart
 * @param required all of these must hold
 * @param supporting changes the words, never the verdict
 * @param against speaks against it
 * @param againstNeeded how many {@code against} keep it open although all that is required holds
 * @param openWhen each keeps it open although not all that is required holds
 * @param clearWhen when it is called clear and not only likely
 * @param holdsWhileOpen the rule, besides being open, under which its restrictions already hold; empty for never
 * @param condition condition that it switches on, with its restrictions
 * @param leansOnUntaken whether one test that was not taken may lean to it
 */
public record Presentation(
        String id,
        LocalText name,
        String meaning,
        boolean sided,
        List<Rule> required,
        List<Rule> supporting,
        List<Rule> against,
        int againstNeeded,
        List<Rule> openWhen,
        Rule clearWhen,
        Optional<Rule> holdsWhileOpen,
        List<RestrictionRule> restrictions,
        Optional<String> condition,
        boolean leansOnUntaken,
        Source source) {

    /** A restriction that it brings. */
    public record RestrictionRule(String id, LocalText words) {}

    /** The name, to be said in any language. */
    public Saying saidName() {
        return Saying.name(Saying.Name.Kind.PRESENTATION, id);
    }

    public Presentation {
        required = List.copyOf(required);
        supporting = List.copyOf(supporting);
        against = List.copyOf(against);
        openWhen = List.copyOf(openWhen);
        restrictions = List.copyOf(restrictions);
    }
}
