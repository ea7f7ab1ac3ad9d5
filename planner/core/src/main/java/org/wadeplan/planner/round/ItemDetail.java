package org.wadeplan.planner.round;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a store may say of an item beyond what every item has.
 *
 * @param gearClass id of a gear class; empty: what it bears is not known
 * @param massKg mass of one, kilograms
 * @param exposedTo waters touched since its last complete treatment, at the start of the round
 * @param wetSince empty: dry or not known
 */
public record ItemDetail(
        Optional<String> gearClass, OptionalDouble massKg, List<String> exposedTo, Optional<Instant> wetSince) {

    public static final ItemDetail NONE =
            new ItemDetail(Optional.empty(), OptionalDouble.empty(), List.of(), Optional.empty());
}
