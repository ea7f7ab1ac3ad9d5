package org.wadeplan.planner.pack.page;

import java.util.List;
import org.wadeplan.planner.round.MethodKind;

/** What is checked before leaving a site, whatever the method. */
record EndSheet(String heading, List<String> checks, List<String> values) {

    static Section section(PlanSource source, SiteDay visit, Templates templates) {
        return new Section(
                "End of site",
                visit.subject(source),
                visit.authorised(source),
                templates.fill("end-sheet", of(source, visit)));
    }

    static EndSheet of(PlanSource source, SiteDay visit) {
        boolean electric = visit.kind(source) == MethodKind.ELECTROFISHING;
        return new EndSheet(
                visit.site().id() + ", " + source.clock().day(visit.date()) + ": before leaving",
                List.of(
                        "Every sheet looked through: no blank where a value was taken; zero written as 0",
                        electric
                                ? "Shock time in every sub-reach, timer zeroed each time"
                                : "Every net or pass has its times",
                        "Lengths in millimetres; fork or total as the tail asks",
                        "Fish recovered, released well below the reach; bucket water onto land, away from the stream",
                        "Permit take counted and below the cap; sensitive species noted",
                        "Stakes, tape, nets and people counted out",
                        "Weed, snails and mud looked for on everything; finds bagged, photographed, reported",
                        "Kit checked, cleaned on site as told; drained before driving",
                        "Records saved twice, or paper photographed",
                        "Gate as found; called in on leaving"),
                electric
                        ? List.of("Start", "Finish", "Total shock time (s)", "Last settings V / Hz / ms", "Packs used")
                        : List.of("Start", "Finish", "Water temperature (°C)", "Conductivity (µS/cm)", "Clarity (m)"));
    }
}
