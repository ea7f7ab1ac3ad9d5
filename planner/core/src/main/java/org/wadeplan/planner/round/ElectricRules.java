package org.wadeplan.planner.round;

import java.util.Optional;

/**
 * The round's own figures for current in water.
 *
 * @param limits when to be careful and when to stop
 * @param packPower what a pack holds and what stands between the electrodes; empty where nobody measured it
 */
public record ElectricRules(ElectricLimits limits, Optional<PackPower> packPower) {

    /** What holds where a round says nothing. */
    public static final ElectricRules DEFAULT = new ElectricRules(ElectricLimits.DEFAULT, Optional.empty());
}
