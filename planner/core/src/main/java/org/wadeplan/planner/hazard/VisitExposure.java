package org.wadeplan.planner.hazard;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.wadeplan.hazards.assess.Conditions;
import org.wadeplan.hazards.assess.Exposure;
import org.wadeplan.hazards.assess.SiteHazard;
import org.wadeplan.hazards.assess.WadingTeam;
import org.wadeplan.hazards.register.Activity;
import org.wadeplan.hazards.register.Attribute;
import org.wadeplan.planner.round.DayForecast;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.ActivityKind;

/** What people are exposed to in one part of a visit. Only what is known is said; the rest stays not known. */
final class VisitExposure {

    private static final int FIRST_LIGHT_HOUR = 7;
    private static final int LAST_LIGHT_HOUR = 20;
    private static final double REMOTE_CARE_MIN = 60;

    private VisitExposure() {}

    static Exposure of(PlannedPart planned) {
        Exposure exposure = Exposure.at(planned.site().id(), planned.day().date())
                .doing(activities(planned).toArray(Activity[]::new))
                .in(conditions(planned))
                .waded(WadingTeam.of(planned.round().header().wading()));
        for (org.wadeplan.planner.round.SiteHazard noted : planned.round().siteHazards()) {
            if (noted.site().equals(planned.site().id())) {
                exposure = exposure.noted(new SiteHazard(
                        noted.hazard(),
                        noted.text(),
                        noted.subReach(),
                        noted.newSinceLast(),
                        Optional.empty(),
                        List.of()));
            }
        }
        return exposure;
    }

    private static Set<Activity> activities(PlannedPart planned) {
        Set<Activity> activities = EnumSet.of(Activity.DRIVING);
        MethodKind kind = planned.method().kind();
        VisitPart part = planned.visit().part().orElse(VisitPart.SURVEY);
        if (kind == MethodKind.ELECTROFISHING) {
            activities.add(Activity.ELECTRIC_CURRENT);
        }
        if (kind == MethodKind.NETTING) {
            activities.add(Activity.NETS);
        }
        if (kind != MethodKind.DRY_RECORD) {
            activities.add(Activity.WADING);
        }
        if (part == VisitPart.SURVEY || part == VisitPart.LIFT || part == VisitPart.NIGHT) {
            activities.add(Activity.FISH_HANDLING);
            activities.add(Activity.CHEMICALS);
        }
        if (runsIntoTheDark(planned)) {
            activities.add(Activity.NIGHT);
        }
        if (planned.round().waterOf(planned.site()).map(Water::tidal).orElse(false)) {
            activities.add(Activity.TIDAL);
        }
        if (remote(planned)) {
            activities.add(Activity.REMOTE);
        }
        return activities;
    }

    /** A coarse rule on purpose: near dawn and dusk it rather says night than not. */
    private static boolean runsIntoTheDark(PlannedPart planned) {
        ZonedDateTime start =
                planned.visit().start().atZone(planned.round().header().zone());
        ZonedDateTime end =
                planned.visit().end().atZone(planned.round().header().zone());
        return start.getHour() < FIRST_LIGHT_HOUR
                || end.getHour() >= LAST_LIGHT_HOUR
                || !start.toLocalDate().equals(end.toLocalDate());
    }

    private static boolean remote(PlannedPart planned) {
        boolean noPhone =
                planned.site().phoneCoverage().map(coverage -> !coverage).orElse(true);
        boolean farFromCare = planned.site().careDriveMin().orElse(Integer.MAX_VALUE) > REMOTE_CARE_MIN;
        return noPhone || farFromCare;
    }

    private static Conditions conditions(PlannedPart planned) {
        org.wadeplan.planner.round.Conditions site = planned.site().conditions();
        Conditions known = Conditions.unknown();
        known = with(known, Attribute.DEPTH_M, site.maxDepthM());
        known = with(known, Attribute.DEPTH_VELOCITY_M2S, site.depthVelocityM2S());
        known = with(known, Attribute.WATER_TEMP_C, site.waterTempC());
        known = with(known, Attribute.CONDUCTIVITY_US_CM, site.conductivityUsCm());
        known = with(known, Attribute.WALK_IN_M, planned.site().walkInM());
        if (planned.site().careDriveMin().isPresent()) {
            known = known.with(
                    Attribute.DRIVE_TO_CARE_MIN, planned.site().careDriveMin().getAsInt());
        }
        known = planned.site().phoneCoverage().isPresent()
                ? known.with("no-phone", !planned.site().phoneCoverage().get())
                : known;
        return weather(crew(known, planned), planned);
    }

    private static Conditions crew(Conditions known, PlannedPart planned) {
        long firstAiders = planned.day().people().stream()
                .flatMap(id -> planned.round().person(id).stream())
                .filter(person -> person.firstAiderOn(planned.day().date()))
                .count();
        int driveMin = planned.day().activities().stream()
                .filter(activity -> activity.kind() == ActivityKind.TRAVEL)
                .mapToInt(org.wadeplan.planner.week.Activity::minutes)
                .sum();
        long dayMin =
                Duration.between(planned.day().start(), planned.day().end()).toMinutes();
        return known.with(Attribute.CREW_SIZE, planned.day().people().size())
                .with(Attribute.CPR_HOLDERS, (double) firstAiders)
                .with(Attribute.DRIVE_H, driveMin / 60.0)
                .with(Attribute.DAY_H, dayMin / 60.0);
    }

    private static Conditions weather(Conditions known, PlannedPart planned) {
        Optional<DayForecast> forecast = planned.round().forecast().stream()
                .filter(day -> day.date().equals(planned.day().date()))
                .findFirst();
        if (forecast.isEmpty()) {
            return known;
        }
        DayForecast day = forecast.get();
        Conditions more = with(known, Attribute.AIR_TEMP_C, day.airTempMaxC());
        more = with(more, Attribute.HUMIDITY_PCT, day.humidityPct());
        more = with(more, Attribute.WIND_KMH, day.windKmH());
        more = with(more, Attribute.RAIN_24H_MM, day.rainMm());
        return day.thunder().isPresent()
                ? more.with("thunder-forecast", day.thunder().get())
                : more;
    }

    private static Conditions with(Conditions known, Attribute attribute, OptionalDouble value) {
        return value.isPresent() ? known.with(attribute, value.getAsDouble()) : known;
    }
}
