package org.wadeplan.planner.decon.drying;

/**
 * A surrogate for how long adult dreissenid mussels may live in air, shaped to published anchors, most of which are lower
 * bounds (McMahon, Ussery and Clarke 1993; Ricciardi, Serrouya and Whoriskey 1995). Own estimate: not published and not
 * validated, never a clearance. Above 25 degrees C no credit is given for the heat.
 */
public final class MusselSurvival {

    public static final String SOURCE = "own estimate, shaped to McMahon et al. 1993 and Ricciardi et al. 1995";

    private static final double LEAST_DAYS = 2;
    private static final double MOST_DAYS = 30;

    private MusselSurvival() {}

    /**
     * Days in air after which all may be dead.
     *
     * @param airC air temperature, degrees C, -20 to 50
     * @param humidityPct relative humidity, 0 to 100
     */
    public static double days(double airC, double humidityPct) {
        Psychrometry.check(airC, humidityPct);
        return 3.1 * Math.exp(-0.12 * (Math.min(airC, 25) - 25)) * (1 + 0.5 * humidityPct / 100);
    }

    /** Days to plan drying alone with: half as long again, between 2 and 30, and never under what a rule of the place asks. */
    public static double plannedDays(double airC, double humidityPct, double ruleDays) {
        double days = Math.min(MOST_DAYS, Math.max(LEAST_DAYS, 1.5 * days(airC, humidityPct)));
        return Math.max(ruleDays, days);
    }
}
