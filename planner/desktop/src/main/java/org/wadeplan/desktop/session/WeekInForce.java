package org.wadeplan.desktop.session;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wadeplan.planner.kit.CrewDayLoad;
import org.wadeplan.planner.kit.KitPlan;
import org.wadeplan.planner.kit.Shortage;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.week.WeekPlan;

/**
 * The week that people work by: the one they agreed, where the round has one, or the one that was planned.
 *
 * @param agreed true where the leaders wrote it down themselves
 */
public record WeekInForce(RoundPlan plan, boolean agreed) {

    /** Who goes where, with which kit set, and every cleaning. */
    public WeekPlan week() {
        return plan.week();
    }

    /** What each crew loads on each day, and what is short. */
    public KitPlan kit() {
        return plan.kit();
    }

    /** What a crew loads on a day; empty where it does not go out. */
    public Optional<CrewDayLoad> load(LocalDate date, String crew) {
        return kit().loads().stream()
                .filter(load -> load.date().equals(date) && load.crew().equals(crew))
                .findFirst();
    }

    /** What a crew is short of on a day, its vehicle first. */
    public List<Shortage> shortages(LocalDate date, String crew) {
        return Stream.concat(kit().vehicles().stream(), kit().shortages().stream())
                .filter(shortage ->
                        shortage.date().equals(date) && shortage.crews().contains(crew))
                .toList();
    }
}
