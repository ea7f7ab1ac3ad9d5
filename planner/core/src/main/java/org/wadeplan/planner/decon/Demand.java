package org.wadeplan.planner.decon;

import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is asked of a choice beyond covering every pair.
 *
 * @param bestGradeFor pests against which only the best graded rows count that the table has for a pair: a pest that is
 *     known to be there is not met with an agency's instruction where a tested treatment exists
 * @param soakFor pests against which a spray does not count
 * @param drying hours of drying that the place asks for
 */
record Demand(Set<String> bestGradeFor, Set<String> soakFor, DryingRules drying) {

    /** Any grade but X, any mode, no rule of a place. */
    static final Demand NONE = new Demand(Set.of(), Set.of(), DryingRules.NONE);

    /** The best grade against some pests, and soaks rather than sprays. */
    static Demand strict(Collection<String> pests, DryingRules drying) {
        return new Demand(new TreeSet<>(pests), new TreeSet<>(pests), drying);
    }
}
