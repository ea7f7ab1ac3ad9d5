package org.wadeplan.desktop.session;

import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;

/**
 * What came of reading and planning a folder.
 *
 * @param round empty where it could not be read at all
 * @param plan empty where errors stand in the way of planning
 * @param problems of the files and of the plan, worst first
 * @param skies one for each day of the round, in order; empty where there is no round
 * @param inForce the week that people work by; empty where there is none
 */
public record OpenedRound(
        Optional<Round> round,
        Optional<RoundPlan> plan,
        List<Problem> problems,
        List<DaySky> skies,
        Optional<WeekInForce> inForce) {

    /** A folder of which no week could be made. */
    public OpenedRound(Optional<Round> round, List<Problem> problems, List<DaySky> skies) {
        this(round, Optional.empty(), problems, skies, Optional.empty());
    }
}
