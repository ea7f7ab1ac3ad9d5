package org.wadeplan.hazards.briefing;

import java.time.LocalDate;

/**
 * A competent person has read the assessment.
 *
 * @param reviewer who, not blank
 * @param day when
 */
public record Review(String reviewer, LocalDate day) {

    public Review {
        if (reviewer.isBlank()) {
            throw new IllegalArgumentException("A review needs the reviewer's name");
        }
    }
}
