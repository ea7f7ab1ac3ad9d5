package org.wadeplan.hazards.register;

import java.util.List;

/**
 * When a hazard applies: any of the lines, where all conditions of that line hold.
 *
 * @param anyOf at least one line of at least one condition
 */
public record Trigger(List<List<Condition>> anyOf) {

    public Trigger {
        anyOf = anyOf.stream().map(List::copyOf).toList();
    }
}
