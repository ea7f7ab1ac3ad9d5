package org.wadeplan.planner.decon.trace;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;

/**
 * All that follows from a find.
 *
 * @param span what it makes of the water
 * @param exposed everything that was or will be in that water since its last clear visit
 * @param spread waters that something went on to, or will, before a treatment that the evidence supports against the pest
 * @param otherWaters what can be said for and against each other water of the round
 * @param legs cleanings of the rest of the week that change
 * @param unchangedLegs how many later cleanings stay as they are
 * @param broken what no longer holds in the rest of the week, as findings with what to do
 * @param notices whom to tell by when
 */
public record TraceReport(
        FindSpan span,
        List<ExposedKit> exposed,
        List<Spread> spread,
        List<OtherWater> otherWaters,
        List<ChangedLeg> legs,
        int unchangedLegs,
        List<Problem> broken,
        List<Notice> notices) {

    /**
     * Something that was or will be in the water.
     *
     * @param before visits that had begun when the pest was seen
     * @param after later visits
     * @param arrived how it stood when it first came there, in a sentence
     * @param now where it is when the pest is seen, and what to do with it
     */
    public record ExposedKit(
            String id,
            String label,
            boolean item,
            int pieces,
            List<Stay> before,
            List<Stay> after,
            String arrived,
            String now) {}

    /** One stay in a water. */
    public record Stay(String where, Instant from, Instant until) {}

    /**
     * Something that goes from the water to another without a supported treatment.
     *
     * @param happened true where it went there before the pest was seen
     */
    public record Spread(
            String id,
            boolean item,
            int pieces,
            String water,
            String where,
            Instant at,
            String from,
            boolean happened) {}

    /**
     * A water seen from the find.
     *
     * @param receivedNothing true where nothing may have brought the pest there from the water of the find
     * @param broughtNothing true where nothing may have brought it from there
     * @param clear true where both hold for kit sets
     * @param status what is on file about the pest there
     * @param because one sentence for each ground
     */
    public record OtherWater(
            String water,
            String name,
            boolean receivedNothing,
            boolean broughtNothing,
            boolean clear,
            String status,
            List<String> because) {}

    /**
     * A cleaning that changes.
     *
     * @param minutesBefore minutes for which people are busy with it, as planned
     * @param minutesAfter the same with the pest known
     * @param released when the set is released now
     * @param use the set's next use and how long before it the set is released; empty where it has none
     * @param departure the crew's next departure that day and the minutes left before it; empty where there is none
     * @param dayEnd when the crew's day ends now
     * @param rest the crew's rest before its next day; empty where there is none
     * @param stands false where something of this leg no longer holds
     */
    public record ChangedLeg(
            String kitSet,
            String crew,
            Instant start,
            int minutesBefore,
            int minutesAfter,
            String stepsBefore,
            String stepsAfter,
            Instant crewFree,
            Instant released,
            Optional<String> use,
            Optional<String> departure,
            Instant dayEnd,
            Optional<String> rest,
            boolean stands) {}

    /** Somebody to tell. */
    public record Notice(LocalDate by, String whom, String about) {}

    /** Whether some water may have received the pest by a visit that has already happened. */
    public boolean mayHaveSpread() {
        return spread.stream().anyMatch(Spread::happened);
    }
}
