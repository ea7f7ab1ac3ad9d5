package org.wadeplan.planner.week.verify;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import org.wadeplan.geo.crs.LonLat;

/**
 * Rise and set of the Sun in closed form: the equations of the NOAA solar calculator after Meeus, Astronomical Algorithms
 * (from memory), checked against almanac times in the tests. It stands apart from the library that the search uses.
 */
final class SunFormula {

    /** Sun's centre this far from the zenith: upper limb on the horizon with standard refraction, degrees. */
    static final double RISE_SET_DEG = 90.833;

    static final double CIVIL_DEG = 96;

    private SunFormula() {}

    static Optional<Instant> rise(LonLat place, LocalDate date, ZoneId zone, double zenithDeg) {
        return onDate(place, date, zone, zenithDeg, 1);
    }

    static Optional<Instant> set(LonLat place, LocalDate date, ZoneId zone, double zenithDeg) {
        return onDate(place, date, zone, zenithDeg, -1);
    }

    private static Optional<Instant> onDate(LonLat place, LocalDate date, ZoneId zone, double zenithDeg, int sign) {
        for (int shift = -1; shift <= 1; shift++) {
            Optional<Instant> time = event(place, date.plusDays(shift), zenithDeg, sign);
            if (time.filter(at -> at.atZone(zone).toLocalDate().equals(date)).isPresent()) {
                return time;
            }
        }
        return Optional.empty();
    }

    private static Optional<Instant> event(LonLat place, LocalDate utcDate, double zenithDeg, int sign) {
        double dayMin = 720 - 4 * place.lonDeg();
        for (int i = 0; i < 3; i++) {
            double centuries = (utcDate.toEpochDay() + 2440587.5 + dayMin / 1440 - 2451545) / 36525;
            double declination = declination(centuries);
            double latitude = Math.toRadians(place.latDeg());
            double cosine = Math.cos(Math.toRadians(zenithDeg)) / (Math.cos(latitude) * Math.cos(declination))
                    - Math.tan(latitude) * Math.tan(declination);
            if (Math.abs(cosine) > 1) {
                return Optional.empty();
            }
            double hourDeg = Math.toDegrees(Math.acos(cosine));
            dayMin = 720 - 4 * (place.lonDeg() + sign * hourDeg) - equationOfTimeMin(centuries);
        }
        return Optional.of(Instant.ofEpochSecond(utcDate.toEpochDay() * 86400 + Math.round(dayMin * 60)));
    }

    private static double meanLongitude(double t) {
        return Math.toRadians((280.46646 + t * (36000.76983 + t * 0.0003032)) % 360);
    }

    private static double anomaly(double t) {
        return Math.toRadians(357.52911 + t * (35999.05029 - 0.0001537 * t));
    }

    private static double obliquity(double t) {
        double seconds = 21.448 - t * (46.815 + t * (0.00059 - t * 0.001813));
        double meanDeg = 23 + (26 + seconds / 60) / 60;
        return Math.toRadians(meanDeg + 0.00256 * Math.cos(Math.toRadians(125.04 - 1934.136 * t)));
    }

    private static double declination(double t) {
        double m = anomaly(t);
        double centreDeg = Math.sin(m) * (1.914602 - t * (0.004817 + 0.000014 * t))
                + Math.sin(2 * m) * (0.019993 - 0.000101 * t)
                + Math.sin(3 * m) * 0.000289;
        double trueDeg = Math.toDegrees(meanLongitude(t)) + centreDeg;
        double apparentDeg = trueDeg - 0.00569 - 0.00478 * Math.sin(Math.toRadians(125.04 - 1934.136 * t));
        return Math.asin(Math.sin(obliquity(t)) * Math.sin(Math.toRadians(apparentDeg)));
    }

    private static double equationOfTimeMin(double t) {
        double eccentricity = 0.016708634 - t * (0.000042037 + 0.0000001267 * t);
        double l = meanLongitude(t);
        double m = anomaly(t);
        double y = Math.pow(Math.tan(obliquity(t) / 2), 2);
        double radians = y * Math.sin(2 * l)
                - 2 * eccentricity * Math.sin(m)
                + 4 * eccentricity * y * Math.sin(m) * Math.cos(2 * l)
                - 0.5 * y * y * Math.sin(4 * l)
                - 1.25 * eccentricity * eccentricity * Math.sin(2 * m);
        return 4 * Math.toDegrees(radians);
    }
}
