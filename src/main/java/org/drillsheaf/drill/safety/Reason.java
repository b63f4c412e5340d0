package org.drillsheaf.drill.safety;

import org.drillsheaf.drill.Action;
import org.drillsheaf.saying.Saying;

/**
 * Why a drill was judged as it was.
 *
 * @param condition id of the condition or combination
 * @param rule the rule as written, or what the author's tag says
 * @param words one sentence for the coach
 */
public record Reason(String condition, Action action, String rule, Saying words) {}
