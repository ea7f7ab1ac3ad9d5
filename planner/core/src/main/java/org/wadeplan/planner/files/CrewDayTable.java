package org.wadeplan.planner.files;

import org.wadeplan.planner.round.CrewDayRoster;

/** {@code crew_days.csv}: who makes up a crew on a day. */
final class CrewDayTable {

    static final TableKind<CrewDayRoster> KIND = TableKind.named("crew_days", "date crew")
            .required("date crew people vehicle")
            .optional("earliest_start latest_end note")
            .makes(CrewDayTable::crewDayRoster);

    private CrewDayTable() {}

    private static CrewDayRoster crewDayRoster(Row row) {
        return new CrewDayRoster(
                row.date("date"),
                row.text("crew"),
                row.list("people"),
                row.text("vehicle"),
                row.optionalTime("earliest_start"),
                row.optionalTime("latest_end"),
                row.optionalText("note"));
    }
}
