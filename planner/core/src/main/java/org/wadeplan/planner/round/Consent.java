package org.wadeplan.planner.round;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import org.wadeplan.geo.crs.LonLat;

/** What the holder of the land said, without who they are. */
public record Consent(
        String id,
        String site,
        ConsentStatus status,
        Optional<LocalDate> validUntil,
        Optional<LocalTime> accessFrom,
        Optional<LocalTime> accessUntil,
        Optional<Boolean> nightAccess,
        Optional<String> gateNote,
        Optional<LonLat> gate) {

    /** Where a request stands. */
    public enum ConsentStatus {
        YES,
        CONDITIONAL,
        PENDING,
        REFUSED
    }
}
