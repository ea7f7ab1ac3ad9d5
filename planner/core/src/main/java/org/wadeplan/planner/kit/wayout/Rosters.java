package org.wadeplan.planner.kit.wayout;

import org.wadeplan.planner.round.CrewDayRoster;
import org.wadeplan.planner.round.Round;

/** Rounds with one line of their roster changed. */
final class Rosters {

    private Rosters() {}

    static Round withVehicle(Round round, CrewDayRoster line, String vehicle) {
        return round.withRoster(round.roster().stream()
                .map(one -> one.equals(line)
                        ? new CrewDayRoster(
                                one.date(),
                                one.crew(),
                                one.people(),
                                vehicle,
                                one.earliestStart(),
                                one.latestEnd(),
                                one.note())
                        : one)
                .toList());
    }
}
