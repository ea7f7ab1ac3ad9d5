package org.wadeplan.planner.files;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.network.StreamNoding;
import org.wadeplan.geo.network.StreamRules;
import org.wadeplan.hazards.limits.WadingProfile;
import org.wadeplan.planner.round.CheckInRules;
import org.wadeplan.planner.round.ConductivityRule;
import org.wadeplan.planner.round.DutyRules;
import org.wadeplan.planner.round.LightRules;
import org.wadeplan.planner.round.MethodOverride;
import org.wadeplan.planner.round.Place;
import org.wadeplan.planner.round.RoundHeader;
import org.wadeplan.planner.round.TideRules;
import org.wadeplan.planner.round.TravelFallback;

/** Turns the keys of {@code round.json} into the round's header. */
final class HeaderJson {

    private static final Range MIN = Range.MINUTES_OF_DAY;
    private static final long MOST_DAYS = 31;
    private static final Words<Boolean> DAY_FROM = Words.yesNo("civil-dawn", "sunrise");
    private static final Words<String> CONDUCTIVITY_RULES = Words.plain("linear", "exponential");

    private static final Words<WadingProfile> PROFILES = Words.named(WadingProfile.shipped(), WadingProfile::id);

    private HeaderJson() {}

    /** To be thrown away where anything was missing or broken. */
    static RoundHeader header(JsonObject top) {
        LocalDate firstDay = top.date("firstDay");
        LocalDate lastDay = top.date("lastDay");
        checkDays(top, firstDay, lastDay);
        JsonObject battery = top.object("battery");
        return new RoundHeader(
                top.text("id"),
                top.text("title"),
                top.text("agency"),
                top.text("crs"),
                zone(top),
                top.seed("seed"),
                firstDay,
                lastDay,
                reserveDays(top, lastDay),
                depot(top),
                ReachJson.settings(top),
                duty(top),
                light(top),
                tide(top),
                travelFallback(top),
                conductivityRule(top),
                sourced(top, "powerTransfer", "fishConductivityUsCm", Range.of(1, 10_000, "µS/cm")),
                battery.decimal("reserveFactor", Range.of(1, 10, "times the need")),
                checkIn(top),
                top.decimal("stakeUncertaintyM", Range.of(0, 1000, "m")),
                mouths(top),
                top.has("snapToleranceM")
                        ? top.decimal("snapToleranceM", Range.of(0, StreamRules.GAP_MAX_M, "m"))
                        : StreamNoding.SNAP_TOLERANCE_M,
                top.has("acceptedRepairs") ? top.list("acceptedRepairs", Reading::of) : List.of(),
                wading(top),
                SearchJson.settings(top),
                overrides(top),
                ElectricJson.electric(top, battery),
                top.has("jurisdiction") ? Optional.of(top.text("jurisdiction")) : Optional.empty());
    }

    /** Where the round does not say who wades, everyone counts as new: the tightest row. */
    private static WadingProfile wading(JsonObject top) {
        if (!top.has("wading")) {
            return WadingProfile.NEW;
        }
        JsonObject wading = top.object("wading");
        WadingProfile profile = wading.word("profile", PROFILES);
        wading.text("source");
        wading.noteUnknownKeys();
        return profile;
    }

    private static List<MethodOverride> overrides(JsonObject top) {
        if (!top.has("methodOverrides")) {
            return List.of();
        }
        return top.objects("methodOverrides").stream()
                .map(one -> {
                    MethodOverride override =
                            new MethodOverride(one.text("site"), one.text("method"), one.text("reason"));
                    one.noteUnknownKeys();
                    return override;
                })
                .toList();
    }

    private static void checkDays(JsonObject top, LocalDate firstDay, LocalDate lastDay) {
        boolean bothKnown = !firstDay.equals(LocalDate.EPOCH) && !lastDay.equals(LocalDate.EPOCH);
        if (bothKnown && lastDay.isBefore(firstDay)) {
            top.refuse(
                    "lastDay",
                    new Fault(
                            "ends-before-start",
                            lastDay + " is before firstDay, " + firstDay,
                            "the same day or later",
                            "check both; they may be swapped"));
        }
        if (bothKnown && ChronoUnit.DAYS.between(firstDay, lastDay) >= MOST_DAYS) {
            top.refuse(
                    "lastDay",
                    new Fault(
                            "round-too-long",
                            "the round lasts from " + firstDay + " to " + lastDay,
                            "at most " + MOST_DAYS + " days",
                            "check both days, or part the round"));
        }
    }

    private static List<LocalDate> reserveDays(JsonObject top, LocalDate lastDay) {
        List<LocalDate> days = top.list("reserveDays", DateCell::date);
        boolean rising = new TreeSet<>(days).stream().toList().equals(days);
        if (!rising || days.stream().anyMatch(day -> !day.isAfter(lastDay))) {
            top.refuse(
                    "reserveDays",
                    new Fault(
                            "reserve-days-order",
                            "the reserve days do not follow the last day one after the other",
                            "days after lastDay, each once, earliest first",
                            "put them in order"));
        }
        return days;
    }

    private static ZoneId zone(JsonObject top) {
        String name = top.text("zone");
        try {
            return name.isEmpty() ? ZoneOffset.UTC : ZoneId.of(name);
        } catch (DateTimeException unknown) {
            String nearest = NearestWord.of(name, new TreeSet<>(ZoneId.getAvailableZoneIds()))
                    .map(known -> "write " + known + " if that is meant")
                    .orElse("look it up in the IANA time zone database");
            top.refuse(
                    "zone",
                    new Fault(
                            "zone-unknown",
                            NumberCell.quoted(name) + " is no time zone that is known here",
                            "a name such as Atlantic/Azores",
                            nearest));
            return ZoneOffset.UTC;
        }
    }

    private static Place depot(JsonObject top) {
        JsonObject depot = top.object("depot");
        Place place = new Place(depot.text("place"), depot.text("name"), point(depot));
        depot.noteUnknownKeys();
        return place;
    }

    private static MetricPoint point(JsonObject object) {
        return new MetricPoint(
                object.decimal("eastM", Range.METRES_ON_GRID), object.decimal("northM", Range.METRES_ON_GRID));
    }

    private static DutyRules duty(JsonObject top) {
        JsonObject duty = top.object("duty");
        DutyRules rules = new DutyRules(
                duty.integer("maxShiftMin", MIN),
                duty.integer("minRestMin", MIN),
                duty.time("noDrivingFrom"),
                duty.time("noDrivingUntil"),
                duty.time("earliestStart"),
                duty.integer("loadMin", MIN),
                duty.integer("unloadMin", MIN),
                duty.integer("arrivalMarginMin", MIN),
                duty.text("source"));
        duty.noteUnknownKeys();
        return rules;
    }

    private static LightRules light(JsonObject top) {
        JsonObject light = top.object("light");
        LightRules rules = new LightRules(
                light.integer("darkAfterSunsetMin", MIN),
                light.word("dayFrom", DAY_FROM),
                light.integer("dayUntilBeforeSunsetMin", MIN),
                light.text("source"));
        light.noteUnknownKeys();
        return rules;
    }

    private static TideRules tide(JsonObject top) {
        JsonObject tide = top.object("tide");
        TideRules rules =
                new TideRules(tide.integer("beforeLowMin", MIN), tide.integer("afterLowMin", MIN), tide.text("source"));
        tide.noteUnknownKeys();
        return rules;
    }

    private static TravelFallback travelFallback(JsonObject top) {
        JsonObject travel = top.object("travelFallback");
        TravelFallback fallback = new TravelFallback(
                travel.decimal("factor", Range.of(1, 10, "")),
                travel.decimal("speedKmH", Range.of(1, 200, "km/h")),
                travel.integer("roundUpMin", Range.of(1, 60, "minutes")),
                travel.text("source"));
        travel.noteUnknownKeys();
        return fallback;
    }

    private static ConductivityRule conductivityRule(JsonObject top) {
        JsonObject conductivity = top.object("conductivityRule");
        ConductivityRule rule = new ConductivityRule(
                conductivity.word("name", CONDUCTIVITY_RULES),
                conductivity.decimal("perDegree", Range.of(0, 0.1, "per degree")),
                conductivity.text("source"));
        conductivity.noteUnknownKeys();
        return rule;
    }

    /** One number with the source that it must have. */
    private static double sourced(JsonObject top, String key, String number, Range range) {
        JsonObject object = top.object(key);
        double value = object.decimal(number, range);
        object.text("source");
        object.noteUnknownKeys();
        return value;
    }

    private static CheckInRules checkIn(JsonObject top) {
        JsonObject checkIn = top.object("checkIn");
        CheckInRules rules = new CheckInRules(
                checkIn.integer("everyMin", Range.of(1, 1440, "minutes")),
                checkIn.integer("overdueAfterMin", MIN),
                checkIn.text("contactRole"),
                checkIn.text("emergencyNumber"),
                checkIn.text("source"));
        checkIn.noteUnknownKeys();
        return rules;
    }

    private static Map<String, MetricPoint> mouths(JsonObject top) {
        Map<String, MetricPoint> mouths = new LinkedHashMap<>();
        if (top.has("mouths")) {
            JsonObject all = top.object("mouths");
            for (String stream : all.keys()) {
                JsonObject mouth = all.object(stream);
                mouths.put(stream, point(mouth));
                mouth.noteUnknownKeys();
            }
        }
        return Collections.unmodifiableMap(mouths);
    }
}
