package org.wadeplan.planner.decon;

import java.util.Optional;

/**
 * One step of a turnaround, in order.
 *
 * @param step brush, pick, soak, freeze, rinse, hang, dry or check-rinse
 * @param label what to do, in words
 * @param minutes how long it takes
 * @param crewBusy true where people are busy with it; false where it runs alone (drying, freezing)
 * @param resource the shared bath, bay or room it needs
 * @param target strength and temperature to reach, in words: {@code 60 °C}, {@code 20 g/L}
 */
public record DeconStep(
        String step, String label, int minutes, boolean crewBusy, Optional<String> resource, Optional<String> target) {}
