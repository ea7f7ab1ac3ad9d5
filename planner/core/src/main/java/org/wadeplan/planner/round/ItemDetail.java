package org.wadeplan.planner.round;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a store may say of an item beyond what every item has.
 *
 * @param gearClass id of a gear class; empty: what it bears is not known
 * @param massKg mass of one, or of one unit of what is used up, kilograms; empty: nobody weighed it
 * @param exposedTo waters touched since its last complete treatment, at the start of the round
 * @param wetSince empty: dry or not known
 * @param payloadKg of a vehicle: what it may carry, people and gear, kilograms
 * @param chargeH of a charger: hours that one pack takes on it
 */
public record ItemDetail(
        Optional<String> gearClass,
        OptionalDouble massKg,
        List<String> exposedTo,
        Optional<Instant> wetSince,
        OptionalDouble payloadKg,
        OptionalDouble chargeH) {

    public static final ItemDetail NONE =
            new ItemDetail(Optional.empty(), OptionalDouble.empty(), List.of(), Optional.empty());

    /** An item that is neither a vehicle nor a charger. */
    public ItemDetail(
            Optional<String> gearClass, OptionalDouble massKg, List<String> exposedTo, Optional<Instant> wetSince) {
        this(gearClass, massKg, exposedTo, wetSince, OptionalDouble.empty(), OptionalDouble.empty());
    }
}
