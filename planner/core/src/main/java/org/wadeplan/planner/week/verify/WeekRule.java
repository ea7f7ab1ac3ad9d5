package org.wadeplan.planner.week.verify;

import java.util.List;
import org.wadeplan.geo.problem.Problem;

/** One rule of the week, checked on a finished plan the slow plain way. */
interface WeekRule {

    /** What a plan breaks; empty where it keeps the rule. */
    List<Problem> check(PlanFacts facts);
}
