package org.wadeplan.planner.week.light;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;
import org.shredzone.commons.suncalc.SunTimes;
import org.shredzone.commons.suncalc.SunTimes.Twilight;
import org.wadeplan.geo.crs.LonLat;

/**
 * The Sun at a place on a local date. Rise and set are those of the upper limb with standard refraction; civil dawn and
 * dusk have the Sun's centre 6 degrees below the horizon. Times come from the commons-suncalc library, good to about a
 * minute.
 *
 * @param course whether the Sun rises and sets at all
 * @param civilDawn empty where it does not get that dark or that light
 */
public record DayLight(
        LocalDate date,
        Course course,
        Optional<Instant> civilDawn,
        Optional<Instant> sunrise,
        Optional<Instant> sunset,
        Optional<Instant> civilDusk) {

    /** What the Sun does on a date. */
    public enum Course {
        RISES_AND_SETS,
        /** Polar day. */
        NEVER_SETS,
        /** Polar night. */
        NEVER_RISES
    }

    public static DayLight at(LonLat place, LocalDate date, ZoneId zone) {
        SunTimes sun = times(place, date, zone, Twilight.VISUAL);
        SunTimes civil = times(place, date, zone, Twilight.CIVIL);
        return new DayLight(
                date,
                course(sun),
                instant(civil.getRise()),
                instant(sun.getRise()),
                instant(sun.getSet()),
                instant(civil.getSet()));
    }

    private static Course course(SunTimes sun) {
        if (sun.isAlwaysUp()) {
            return Course.NEVER_SETS;
        }
        return sun.isAlwaysDown() ? Course.NEVER_RISES : Course.RISES_AND_SETS;
    }

    private static SunTimes times(LonLat place, LocalDate date, ZoneId zone, Twilight twilight) {
        return SunTimes.compute()
                .on(date)
                .timezone(zone)
                .at(place.latDeg(), place.lonDeg())
                .oneDay()
                .twilight(twilight)
                .execute();
    }

    private static Optional<Instant> instant(@org.jspecify.annotations.Nullable ZonedDateTime time) {
        return Optional.ofNullable(time).map(ZonedDateTime::toInstant);
    }
}
