package org.wadeplan.planner.hazard;

import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;

/** One part of a visit as placed, with everything that decides what people are exposed to. */
record PlannedPart(Round round, CrewDay day, Activity visit, Site site, Method method) {}
