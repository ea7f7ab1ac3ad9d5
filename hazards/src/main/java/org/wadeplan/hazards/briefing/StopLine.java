package org.wadeplan.hazards.briefing;

import org.wadeplan.hazards.assess.StopLimit;
import org.wadeplan.hazards.assess.StopState;
import org.wadeplan.hazards.limits.PlainNumber;

/**
 * A stop limit on the sheet.
 *
 * @param limit the limit with its number, source and state
 */
public record StopLine(StopLimit limit) {

    /** What is read aloud. */
    public String spoken() {
        if (limit.breached()) {
            return "STOP NOW. " + limit.what() + " The plan has " + planned() + ".";
        }
        return limit.state() == StopState.NOT_KNOWN ? limit.what() + " Not known: measure first." : limit.what();
    }

    /** What is printed beside it. */
    public String detail() {
        return switch (limit.state()) {
            case BREACHED, NOT_REACHED -> limit.state().words() + ": " + planned();
            case NOT_KNOWN, WATCH -> limit.state().words();
        };
    }

    private String planned() {
        String measure = limit.measure().orElse("");
        String value =
                limit.planned().isPresent() ? PlainNumber.of(limit.planned().getAsDouble()) : "";
        return (measure + " " + value + " " + limit.unit()).strip();
    }
}
