package org.wadeplan.hazards.register;

import java.util.Optional;

/**
 * When work stops, whatever the rating says.
 *
 * @param say the rule, to be read aloud
 * @param limit the number that can be held against the plan; empty where only eyes and ears can tell
 * @param source where the rule comes from
 */
public record StopRule(String say, Optional<Limit> limit, String source) {

    /**
     * A breach in numbers.
     *
     * @param attribute which number
     * @param breachedWhen how a value that breaches compares to the limit
     * @param value the limit in the attribute's unit
     */
    public record Limit(Attribute attribute, Comparison breachedWhen, double value) {}
}
