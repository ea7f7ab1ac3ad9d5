package org.wadeplan.planner.hazard;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.hazards.briefing.EmergencyBlock;
import org.wadeplan.planner.round.CarePlace;
import org.wadeplan.planner.round.CheckInRules;

/** Where we are and who comes: the emergency block of a visit. */
final class VisitEmergency {

    private VisitEmergency() {}

    static EmergencyBlock of(PlannedPart planned, Optional<Reach> reach) {
        CheckInRules rules = planned.round().header().checkIn();
        ZoneId zone = planned.round().header().zone();
        CheckInTimes times = CheckInTimes.after(planned.visit().end(), rules);
        return new EmergencyBlock(
                reach.map(laid -> positions(planned, laid)).orElse(List.of()),
                planned.site().parking(),
                care(planned),
                coverage(planned),
                Optional.of(rules.emergencyNumber()).filter(number -> !number.isBlank()),
                Optional.of(LocalTime.ofInstant(times.lastCallDue(), zone)),
                Optional.of(LocalTime.ofInstant(times.overdue(), zone)),
                Optional.of(
                        "the " + rules.contactRole() + " calls the crew, then a second way, then the supervisor, then "
                                + rules.emergencyNumber() + "; local plans come first"));
    }

    private static List<String> positions(PlannedPart planned, Reach reach) {
        LonLat start = reach.start().lonLat();
        String grid = String.format(
                Locale.ROOT,
                "E %.0f N %.0f (%s)",
                reach.start().at().eastM(),
                reach.start().at().northM(),
                planned.round().terrain().crs().code());
        String degrees =
                String.format(Locale.ROOT, "%.5f, %.5f (WGS 84 latitude, longitude)", start.latDeg(), start.lonDeg());
        return List.of(grid, degrees);
    }

    private static Optional<String> care(PlannedPart planned) {
        return planned.site().care().flatMap(id -> planned.round().care().stream()
                .filter(place -> place.id().equals(id))
                .findFirst()
                .map(place -> words(place, planned)));
    }

    private static String words(CarePlace place, PlannedPart planned) {
        String drive = planned.site().careDriveMin().isPresent()
                ? ", " + planned.site().careDriveMin().getAsInt() + " min drive"
                : ", drive not known";
        return place.name() + drive + place.open().map(open -> ", open " + open).orElse("");
    }

    private static Optional<String> coverage(PlannedPart planned) {
        return planned.site()
                .phoneCoverage()
                .map(phone -> phone
                        ? "a phone worked here before: try it before you go in"
                        : "no phone: carry a beacon or radio");
    }
}
