package org.wadeplan.planner.round;

/**
 * What a battery pack holds and what stands between the electrodes.
 *
 * @param packWh energy of a healthy, fully charged pack, Wh
 * @param depthOfDischarge share of it that may be drawn, 0 to 1
 * @param efficiency share of what is drawn that reaches the electrodes, 0 to 1
 * @param resistanceAt100Ohm resistance between the electrodes in water of 100 uS/cm, ohm
 */
public record PackPower(
        double packWh, double depthOfDischarge, double efficiency, double resistanceAt100Ohm, String source) {}
