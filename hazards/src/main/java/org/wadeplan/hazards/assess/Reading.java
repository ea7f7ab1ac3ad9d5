package org.wadeplan.hazards.assess;

import java.util.OptionalDouble;

/** What is known of one number on a visit. */
public sealed interface Reading {

    /**
     * The number is known or follows from others.
     *
     * @param number in the unit of its attribute
     * @param note how it was come by; blank where it was given
     */
    record Known(double number, String note) implements Reading {}

    /**
     * Nobody has said, or the formula does not cover today; the worst plausible counts.
     *
     * @param reason a sentence part to be printed after "not known"
     */
    record Unknown(String reason) implements Reading {}

    /**
     * The number has no meaning today, as wind chill has none in summer.
     *
     * @param reason why
     */
    record DoesNotArise(String reason) implements Reading {}

    default OptionalDouble value() {
        return this instanceof Known known ? OptionalDouble.of(known.number()) : OptionalDouble.empty();
    }
}
