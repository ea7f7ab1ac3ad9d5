package org.wadeplan.planner.round;

import java.time.LocalTime;

/**
 * The agency's working-time rules.
 *
 * @param maxShiftMin longest time from the first to the last activity of a crew-day, minutes
 * @param minRestMin shortest time between two crew-days of the same people, minutes
 * @param noDrivingFrom from this time of night nobody drives
 * @param noDrivingUntil until this time in the morning nobody drives
 * @param earliestStart no crew-day starts before this time
 * @param loadMin loading and checking before leaving the depot, minutes
 * @param unloadMin unloading back at the depot, minutes
 * @param arrivalMarginMin added to every drive, minutes
 */
public record DutyRules(
        int maxShiftMin,
        int minRestMin,
        LocalTime noDrivingFrom,
        LocalTime noDrivingUntil,
        LocalTime earliestStart,
        int loadMin,
        int unloadMin,
        int arrivalMarginMin,
        String source) {}
