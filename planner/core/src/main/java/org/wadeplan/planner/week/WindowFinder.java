package org.wadeplan.planner.week;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.wadeplan.planner.permission.Permission;
import org.wadeplan.planner.permission.PermissionCheck;
import org.wadeplan.planner.round.Light;
import org.wadeplan.planner.round.LightRules;
import org.wadeplan.planner.round.LowWater;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.TideRules;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.light.DayLight;

/**
 * When a part of a visit may be on a date: light and tide for its stretch in the water, access hours and latest finish for
 * the whole of it.
 *
 * <p>The stretch in the water is taken to lie in the middle of the part: half of the rest is walking in and setting up,
 * half is packing and walking out. A part with no minutes in the water needs its light throughout and minds no tide. Work
 * in the dark belongs to the date on which its evening starts.
 */
public final class WindowFinder {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final Round round;
    private final ZoneId zone;
    private final Map<String, DayLight> lights = new TreeMap<>();

    public WindowFinder(Round round) {
        this.round = round;
        this.zone = round.header().zone();
    }

    /** Windows for a part that takes {@code partMin} minutes; a blocked permission leaves none. */
    public WindowSearch find(Site site, MethodPart part, int partMin, Permission permission) {
        if (permission.blocked()) {
            return WindowSearch.none(permission.blocks());
        }
        LocalDate date = permission.date();
        int inWaterMin = Math.min(part.inWaterMin(), partMin);
        int beforeMin = inWaterMin == 0 ? 0 : (partMin - inWaterMin) / 2;
        int afterMin = inWaterMin == 0 ? 0 : partMin - inWaterMin - beforeMin;
        List<String> reasons = new ArrayList<>();
        List<TimeWindow> wet = new ArrayList<>();
        Optional<TimeWindow> light = light(site, part.light(), date);
        if (light.isEmpty()) {
            reasons.add("No " + (part.light() == Light.DARK ? "dark" : "daylight") + " at " + site.id() + " on " + date
                    + ".");
        }
        for (TimeWindow tide : tides(site, inWaterMin, date, reasons)) {
            light.flatMap(found -> found.and(tide)).ifPresent(wet::add);
        }
        if (wet.isEmpty() && reasons.isEmpty()) {
            reasons.add("Tide and light do not overlap at " + site.id() + " on " + date + ": "
                    + light.map(this::words).orElse("") + ".");
        }
        List<TimeWindow> open = new ArrayList<>();
        for (TimeWindow window : wet) {
            window.widened(beforeMin, afterMin)
                    .and(hours(part, permission))
                    .flatMap(hours -> withoutNight(site, part, date).flatMap(hours::and))
                    .ifPresentOrElse(
                            open::add,
                            () -> reasons.add(
                                    "Outside access hours or latest finish on " + date + ": " + words(window) + "."));
        }
        return sorted(open, partMin, reasons, site.id() + " " + part.part().word());
    }

    /** The Sun at a site on a date. */
    public DayLight sun(Site site, LocalDate date) {
        return lights.computeIfAbsent(
                site.id() + " " + date, key -> DayLight.at(round.terrain().crs().toLonLat(site.start()), date, zone));
    }

    private WindowSearch sorted(List<TimeWindow> open, int partMin, List<String> reasons, String name) {
        List<TimeWindow> fitting = new ArrayList<>();
        List<TimeWindow> tooShort = new ArrayList<>();
        for (TimeWindow window : open) {
            if (window.minutes() >= partMin) {
                fitting.add(window);
            } else {
                tooShort.add(window);
                reasons.add(name + " needs " + partMin + " min and the window " + words(window) + " has "
                        + window.minutes() + ".");
            }
        }
        return new WindowSearch(List.copyOf(fitting), List.copyOf(tooShort), List.copyOf(reasons));
    }

    private Optional<TimeWindow> light(Site site, Light light, LocalDate date) {
        return switch (light) {
            case DAY -> day(site, date);
            case DARK -> dark(site, date);
            case ANY -> Optional.of(wholeDate(date));
        };
    }

    private Optional<TimeWindow> day(Site site, LocalDate date) {
        DayLight sun = sun(site, date);
        LightRules rules = round.header().light();
        if (sun.course() == DayLight.Course.NEVER_SETS) {
            return Optional.of(wholeDate(date));
        }
        Optional<Instant> from = rules.dayFromCivilDawn() ? sun.civilDawn().or(sun::sunrise) : sun.sunrise();
        if (from.isEmpty() || sun.sunset().isEmpty()) {
            return Optional.empty();
        }
        Instant opens = roundUp(from.get());
        Instant sunset = sun.sunset().get().truncatedTo(ChronoUnit.MINUTES);
        Instant closes = sunset.minusSeconds(60L * rules.dayUntilBeforeSunsetMin());
        String dawn = (rules.dayFromCivilDawn() ? "civil dawn " : "sunrise ") + clock(opens);
        return ordered(new TimeWindow(
                opens,
                closes,
                dawn,
                "out of the water " + rules.dayUntilBeforeSunsetMin() + " min before sunset " + clock(sunset)));
    }

    private Optional<TimeWindow> dark(Site site, LocalDate date) {
        DayLight sun = sun(site, date);
        DayLight next = sun(site, date.plusDays(1));
        int afterMin = round.header().light().darkAfterSunsetMin();
        if (sun.course() == DayLight.Course.NEVER_RISES && next.course() == DayLight.Course.NEVER_RISES) {
            return Optional.of(wholeDate(date));
        }
        if (sun.sunset().isEmpty() || next.sunrise().isEmpty()) {
            return Optional.empty();
        }
        Instant sunset = roundUp(sun.sunset().get());
        Instant sunrise = next.sunrise().get().truncatedTo(ChronoUnit.MINUTES);
        return ordered(new TimeWindow(
                sunset.plusSeconds(60L * afterMin),
                sunrise.minusSeconds(60L * afterMin),
                "dark " + afterMin + " min after sunset " + clock(sunset),
                "light from " + afterMin + " min before sunrise " + clock(sunrise)));
    }

    private List<TimeWindow> tides(Site site, int inWaterMin, LocalDate date, List<String> reasons) {
        Optional<Water> water = round.waterOf(site).filter(Water::tidal);
        if (water.isEmpty() || inWaterMin == 0) {
            return List.of(twoDates(date));
        }
        String place = water.get().tidePlace().orElse("");
        TideRules rules = round.header().tide();
        Instant from = date.atStartOfDay(zone).toInstant();
        List<TimeWindow> windows = round.tides().stream()
                .filter(low -> low.place().equals(place))
                .map(low -> around(low, rules))
                .filter(window ->
                        window.closes().isAfter(from) && window.opens().isBefore(from.plus(36, ChronoUnit.HOURS)))
                .sorted((a, b) -> a.opens().compareTo(b.opens()))
                .toList();
        if (windows.isEmpty()) {
            reasons.add(site.id() + " is tidal and the tide table has no low water for it on " + date + ".");
        }
        return windows;
    }

    private TimeWindow around(LowWater low, TideRules rules) {
        String at = "low water " + clock(low.at());
        return new TimeWindow(
                low.at().minusSeconds(60L * rules.beforeLowMin()),
                low.at().plusSeconds(60L * rules.afterLowMin()),
                "tide: " + rules.beforeLowMin() + " min before " + at,
                "tide: " + rules.afterLowMin() + " min after " + at);
    }

    /** Where nobody may be on the land after dark, work that may be in any light is done between civil dawn and sunset. */
    private Optional<TimeWindow> withoutNight(Site site, MethodPart part, LocalDate date) {
        if (part.light() != Light.ANY || PermissionCheck.nightAccess(round, site)) {
            return Optional.of(twoDates(date));
        }
        DayLight sun = sun(site, date);
        if (sun.course() == DayLight.Course.NEVER_SETS) {
            return Optional.of(twoDates(date));
        }
        if (sun.civilDawn().isEmpty() || sun.sunset().isEmpty()) {
            return Optional.empty();
        }
        Instant dawn = roundUp(sun.civilDawn().get());
        Instant sunset = sun.sunset().get().truncatedTo(ChronoUnit.MINUTES);
        String words = "no access after dark: ";
        return ordered(
                new TimeWindow(dawn, sunset, words + "civil dawn " + clock(dawn), words + "sunset " + clock(sunset)));
    }

    private TimeWindow hours(MethodPart part, Permission permission) {
        LocalDate date = permission.date();
        TimeWindow window = twoDates(date);
        if (permission.accessFrom().isPresent()) {
            LocalTime from = permission.accessFrom().get();
            window =
                    new TimeWindow(at(date, from), window.closes(), "on the land from " + from, window.closesBecause());
        }
        if (permission.accessUntil().isPresent()) {
            LocalTime until = permission.accessUntil().get();
            boolean overMidnight =
                    permission.accessFrom().filter(from -> !until.isAfter(from)).isPresent();
            Instant closes = at(overMidnight ? date.plusDays(1) : date, until);
            window = new TimeWindow(window.opens(), closes, window.opensBecause(), "off the land by " + until);
        }
        if (part.latestFinish().isPresent()) {
            Instant finish = at(date, part.latestFinish().get());
            if (finish.isBefore(window.closes())) {
                String words = "finish by " + part.latestFinish().get() + " (method)";
                window = new TimeWindow(window.opens(), finish, window.opensBecause(), words);
            }
        }
        return window;
    }

    private TimeWindow wholeDate(LocalDate date) {
        return new TimeWindow(
                date.atStartOfDay(zone).toInstant(),
                date.plusDays(1).atStartOfDay(zone).toInstant(),
                "start of the date",
                "end of the date");
    }

    private TimeWindow twoDates(LocalDate date) {
        return new TimeWindow(
                date.atStartOfDay(zone).toInstant(),
                date.plusDays(2).atStartOfDay(zone).toInstant(),
                "start of the date",
                "end of the night");
    }

    private static Optional<TimeWindow> ordered(TimeWindow window) {
        return window.opens().isBefore(window.closes()) ? Optional.of(window) : Optional.empty();
    }

    private static Instant roundUp(Instant time) {
        Instant floor = time.truncatedTo(ChronoUnit.MINUTES);
        return floor.equals(time) ? floor : floor.plusSeconds(60);
    }

    private Instant at(LocalDate date, LocalTime time) {
        return date.atTime(time).atZone(zone).toInstant();
    }

    private String words(TimeWindow window) {
        return clock(window.opens()) + " (" + window.opensBecause() + ") to " + clock(window.closes()) + " ("
                + window.closesBecause() + ")";
    }

    private String clock(Instant time) {
        return CLOCK.format(time.atZone(zone));
    }
}
