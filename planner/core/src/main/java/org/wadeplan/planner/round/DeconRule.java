package org.wadeplan.planner.round;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A rule of a place about cleaning, with the days on which it is in force.
 *
 * @param value what the kind asks for, in the unit that the kind names; empty where it asks for none
 * @param pests ids of pests that it is about; none: any pest
 * @param waters ids of waters that it is about; none: every water of the round
 * @param monthFrom first month of each year in which it counts, 1 to 12; empty: the whole year
 * @param monthUntil last such month, included; may lie before {@code monthFrom}, over the turn of the year
 * @param text the rule in a sentence, for the sheet
 */
public record DeconRule(
        String id,
        Kind kind,
        OptionalDouble value,
        List<String> pests,
        List<String> waters,
        OptionalInt monthFrom,
        OptionalInt monthUntil,
        Validity validity,
        String text,
        Optional<String> treatment,
        String source) {

    /** What a rule may ask for. */
    public enum Kind {
        /** Hours of drying, counted from dry to the touch, where drying is the treatment. */
        DRYING_ALONE_H,
        /** Hours of drying, counted from dry to the touch, after any treatment against the pests. */
        DRYING_AFTER_H,
        /** Months for which "looked for and not found" holds. */
        FREE_HOLDS_MONTHS,
        /** A named treatment that counts as the place's own instruction (grade C) against the pests. */
        AGENCY_TREATMENT,
        /** A treatment that was the place's instruction and must no longer be relied on. */
        SUPERSEDED_TREATMENT,
        /** Cleaning between any two waters there is a duty by law. */
        CONTROLLED_AREA
    }
}
