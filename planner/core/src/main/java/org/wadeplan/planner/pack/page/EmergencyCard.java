package org.wadeplan.planner.pack.page;

import java.util.List;
import org.wadeplan.geo.reach.GridReference;
import org.wadeplan.planner.round.CarePlace;
import org.wadeplan.planner.round.CheckInRules;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.week.CrewDay;

/** The card for the dashboard: where each site is in words that rescuers use, whom to call, when a crew is overdue. */
record EmergencyCard(
        String heading,
        String emergencyNumber,
        List<Place> places,
        List<String> ladder,
        String contactRole,
        String system) {

    record Place(
            String site,
            String degrees,
            String minutes,
            String grid,
            String care,
            String phone,
            String checkIn,
            String overdue) {}

    static Section section(PlanSource source, CrewDay day, Templates templates) {
        String subject = "crew " + day.crew() + " · " + source.clock().day(day.date());
        return new Section("Emergency card", subject, true, templates.fill("emergency-card", of(source, day)));
    }

    static EmergencyCard of(PlanSource source, CrewDay day) {
        CheckInRules rules = source.round().header().checkIn();
        return new EmergencyCard(
                "Crew " + day.crew() + ", " + source.clock().day(day.date()) + ", vehicle " + day.vehicle(),
                rules.emergencyNumber(),
                source.siteDays(day).stream().map(visit -> place(source, visit)).toList(),
                ladder(rules),
                rules.contactRole(),
                source.round().terrain().crs().words());
    }

    private static Place place(PlanSource source, SiteDay visit) {
        Site site = visit.site();
        GridReference at = new GridReference(
                site.start(),
                source.round().terrain().crs().toLonLat(site.start()),
                source.round().header().stakeUncertaintyM());
        return new Place(
                site.id() + " " + site.name(),
                at.decimalDegrees(),
                at.degreesMinutes(),
                at.eastNorth(),
                care(source, site),
                site.phoneCoverage()
                        .map(works -> works ? "phone works" : "NO phone: take the other device")
                        .orElse("phone not known: test on arrival"),
                source.clock().timeOn(visit.date(), source.checkIn(visit).lastCallDue()),
                source.clock().timeOn(visit.date(), source.checkIn(visit).overdue()));
    }

    private static String care(PlanSource source, Site site) {
        String name = site.care()
                .flatMap(id -> source.round().care().stream()
                        .filter(care -> care.id().equals(id))
                        .findFirst())
                .map(EmergencyCard::words)
                .orElse("nearest care not known: find out before leaving");
        return name
                + (site.careDriveMin().isPresent() ? ", " + site.careDriveMin().getAsInt() + " min by road" : "");
    }

    private static String words(CarePlace care) {
        return care.name() + care.open().map(open -> " (" + open + ")").orElse("");
    }

    private static List<String> ladder(CheckInRules rules) {
        return List.of(
                "A call is missed: the " + rules.contactRole()
                        + " tries the crew's phones and radio at once, then every 10 min.",
                "Still nothing " + rules.overdueAfterMin()
                        + " min after the call was due (\"overdue at\"): call " + rules.emergencyNumber()
                        + " and give this card.",
                "Do not send one person alone to look. Stay by the phone until the crew is heard.",
                "Only the crew's own call closes it. Write the time.");
    }
}
