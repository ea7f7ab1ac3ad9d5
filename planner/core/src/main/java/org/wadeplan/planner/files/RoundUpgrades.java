package org.wadeplan.planner.files;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.UnaryOperator;

/** Brings {@code round.json} of an older version to today's form, one numbered step after the other, in memory only. */
final class RoundUpgrades {

    /** Step 0 turns version 1 into version 2, and so on. None yet: version 1 is the first. */
    private static final List<UnaryOperator<ObjectNode>> STEPS = List.of();

    /** The version that this program writes and understands. */
    static final int CURRENT = 1 + STEPS.size();

    private RoundUpgrades() {}

    /** @param version from 1 to {@link #CURRENT} */
    static ObjectNode upgraded(ObjectNode round, int version) {
        ObjectNode current = round;
        for (UnaryOperator<ObjectNode> step : STEPS.subList(version - 1, STEPS.size())) {
            current = step.apply(current);
        }
        return current;
    }
}
