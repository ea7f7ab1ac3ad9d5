package org.wadeplan.planner.kit;

import java.util.List;

/** Loads for the week and what they lack. */
public record KitPlan(List<CrewDayLoad> loads, List<Shortage> shortages) {}
