package org.wadeplan.planner.round;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.hazards.limits.WadingProfile;

/**
 * What {@code round.json} says about the round as a whole.
 *
 * @param crs name of the metric coordinate system, such as {@code EPSG:32627}
 * @param zone time zone of every local time in the folder
 * @param seed seed of everything that is drawn or searched
 * @param reach how reaches are laid
 * @param mouths where each stream ends, to tell which way its line was digitised
 * @param snapToleranceM how near a loose end of a stream line meets another line, metres
 * @param acceptedRepairs repairs to stream lines that a person has agreed to
 * @param electric limits for current in water, and what a pack holds
 * @param wading the row of the wading table that the weakest wader of the crews belongs to
 * @param search what a search for reaches keeps clear of
 * @param jurisdiction the place whose rules about cleaning the round follows
 * @param methodOverrides sites whose method a person has decided, with the reason
 */
public record RoundHeader(
        String id,
        String title,
        String agency,
        String crs,
        ZoneId zone,
        long seed,
        LocalDate firstDay,
        LocalDate lastDay,
        List<LocalDate> reserveDays,
        Place depot,
        ReachSettings reach,
        DutyRules duty,
        LightRules light,
        TideRules tide,
        TravelFallback travelFallback,
        ConductivityRule conductivityRule,
        double fishConductivityUsCm,
        double batteryReserveFactor,
        CheckInRules checkIn,
        double stakeUncertaintyM,
        Map<String, MetricPoint> mouths,
        double snapToleranceM,
        List<String> acceptedRepairs,
        WadingProfile wading,
        SearchSettings search,
        List<MethodOverride> methodOverrides,
        ElectricRules electric,
        Optional<String> jurisdiction) {

    /** The days of the week itself, without reserve days, in order. */
    public List<LocalDate> days() {
        return firstDay.datesUntil(lastDay.plusDays(1)).toList();
    }

    /** Every day on which a visit may stand: the week, then the reserve days. */
    public List<LocalDate> allDays() {
        return Stream.concat(days().stream(), reserveDays.stream()).toList();
    }
}
