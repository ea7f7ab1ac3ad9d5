package org.wadeplan.planner.round;

import java.time.LocalDate;
import java.util.Optional;

/** A service, test, calibration or inspection: valid on every day up to and including {@code validUntil}. */
public record ItemCertificate(
        String certificate, Optional<LocalDate> validFrom, LocalDate validUntil, Optional<String> note) {

    public boolean validOn(LocalDate day) {
        return !day.isAfter(validUntil)
                && validFrom.map(from -> !day.isBefore(from)).orElse(true);
    }
}
