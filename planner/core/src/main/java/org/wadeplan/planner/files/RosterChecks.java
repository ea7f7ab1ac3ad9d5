package org.wadeplan.planner.files;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.files.Table.Placed;
import org.wadeplan.planner.round.CrewDayRoster;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.round.RoundHeader;

/** Nobody can be in two crews on one day, and a crew drives in a vehicle. */
final class RosterChecks {

    private static final Set<String> ROLES_THAT_COUNT = Set.of("operator", "netter");

    private final RoundTables tables;
    private final List<Problem> problems = new ArrayList<>();

    private RosterChecks(RoundTables tables) {
        this.tables = tables;
    }

    static List<Problem> check(RoundTables tables, Optional<RoundHeader> header) {
        RosterChecks checks = new RosterChecks(tables);
        Map<String, Placed<CrewDayRoster>> taken = new LinkedHashMap<>();
        for (Placed<CrewDayRoster> row : tables.crewDays().rows()) {
            row.value().people().forEach(person -> checks.takeOnce(taken, row, person, "people"));
            checks.takeOnce(taken, row, row.value().vehicle(), "vehicle");
            header.ifPresent(round -> checks.day(row, round));
        }
        checks.vehicles();
        tables.people().rows().forEach(checks::roles);
        return checks.problems;
    }

    /** Two crews may share a vehicle one after the other, so that is a warning; two crews never share a person. */
    private void takeOnce(
            Map<String, Placed<CrewDayRoster>> taken, Placed<CrewDayRoster> row, String who, String column) {
        LocalDate date = row.value().date();
        Placed<CrewDayRoster> before = taken.putIfAbsent(column + date + who, row);
        if (before != null) {
            boolean person = column.equals("people");
            problems.add(new Problem(
                    person ? Severity.ERROR : Severity.WARNING,
                    person ? "person-twice" : "vehicle-twice",
                    row.place().column(column),
                    who + " is with crew " + before.value().crew() + " on " + date + " already (line "
                            + before.place().line().orElseThrow() + ")",
                    person ? "one crew a day for each person" : "one crew a day for each vehicle",
                    person
                            ? "take the name out of one of the two"
                            : "name another, or see that one crew is back before the other leaves"));
        }
    }

    private void day(Placed<CrewDayRoster> row, RoundHeader round) {
        LocalDate date = row.value().date();
        if (!round.allDays().contains(date)) {
            problems.add(Problem.warning(
                    "day-outside-round",
                    row.place().column("date"),
                    date + " is no day of the round",
                    "a day from " + round.firstDay() + " to " + round.lastDay() + ", or a reserve day",
                    "check the date, or add it to reserveDays in round.json"));
        }
    }

    private void vehicles() {
        if (!tables.store().complete()) {
            return;
        }
        Map<String, String> kinds = new LinkedHashMap<>();
        tables.store().raw().forEach(row -> kinds.putIfAbsent(row.raw("item"), row.raw("kind")));
        for (Row row : tables.crewDays().raw()) {
            String vehicle = row.raw("vehicle");
            if (!vehicle.isEmpty() && !"vehicle".equals(kinds.get(vehicle))) {
                problems.add(noVehicle(row, vehicle, kinds));
            }
        }
    }

    private Problem noVehicle(Row row, String vehicle, Map<String, String> kinds) {
        List<String> vehicles = kinds.keySet().stream()
                .filter(item -> "vehicle".equals(kinds.get(item)))
                .toList();
        String kind = kinds.getOrDefault(vehicle, "");
        return Problem.error(
                "unknown-code",
                row.place().column("vehicle"),
                "\"" + vehicle + "\" is " + (kind.isEmpty() ? "not known" : "of the kind " + kind + ", not a vehicle"),
                "an item of the kind vehicle in " + tables.store().file()
                        + (vehicles.isEmpty() ? ", which has none" : ": " + String.join(", ", vehicles)),
                "choose one, or add it there");
    }

    /** A mistyped role would silently take a person's competence away. */
    private void roles(Placed<Person> row) {
        for (String role : row.value().roles()) {
            Optional<String> nearest =
                    NearestWord.of(role, ROLES_THAT_COUNT.stream().sorted().toList());
            if (!ROLES_THAT_COUNT.contains(role) && nearest.isPresent()) {
                problems.add(Problem.warning(
                        "role-unknown",
                        row.place().column("roles"),
                        "\"" + role + "\" is close to " + nearest.get() + " but counts for nothing as it is written",
                        "operator, netter, or a word of your own",
                        "write " + nearest.get() + " if that is meant"));
            }
        }
    }
}
