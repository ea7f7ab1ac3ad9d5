package org.wadeplan.planner.kit;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One battery pack on one charger, after the day on which it was used.
 *
 * @param place the charger and its place on it, such as {@code CH1 no. 2}
 * @param from when it goes on
 * @param until when it is full; empty where no charger says how long it takes
 * @param needed when it is loaded again; empty where the plan does not use it again
 * @param change true where it waits for a charger, so that somebody must change packs at {@code from}
 */
public record PackCharge(
        LocalDate usedOn,
        String pack,
        String place,
        Instant from,
        Optional<Instant> until,
        Optional<Instant> needed,
        boolean change) {

    /** True where it is not full when it is loaded again. */
    public boolean late() {
        return until.isPresent() && needed.isPresent() && until.get().isAfter(needed.get());
    }
}
