package org.drillsheaf.drill;

import java.util.Optional;
import org.drillsheaf.LocalText;
import org.drillsheaf.Source;

/**
 * What the author of a drill says about one condition, besides what the rules compute.
 *
 * @param variant the written change; always there for {@code MODIFY}
 */
public record ConditionTag(
        String condition, Action action, Optional<String> variant, LocalText reason, Source source, int line) {}
