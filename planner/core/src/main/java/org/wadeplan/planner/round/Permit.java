package org.wadeplan.planner.round;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** A permit to fish a catchment by some methods for a time. A closed season inside it is barred, first and last day too. */
public record Permit(
        String id,
        String catchment,
        List<String> methods,
        LocalDate validFrom,
        LocalDate validUntil,
        PermitStatus status,
        Optional<LocalDate> closedFrom,
        Optional<LocalDate> closedUntil,
        Optional<String> closureReason,
        OptionalInt notifyWorkingDays,
        Optional<LocalDate> notifiedOn,
        Optional<TakeCap> takeCap,
        Optional<String> note) {

    /** How many of a species may be handled in the year, and how many were. */
    public record TakeCap(String species, int cap, int used) {}

    /** Where an application stands. */
    public enum PermitStatus {
        GRANTED,
        PENDING,
        REFUSED
    }
}
