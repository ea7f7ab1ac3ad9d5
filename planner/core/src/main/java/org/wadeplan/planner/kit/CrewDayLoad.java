package org.wadeplan.planner.kit;

import java.time.LocalDate;
import java.util.List;

/** What a crew loads on a day. */
public record CrewDayLoad(String crew, LocalDate date, List<LoadLine> lines) {}
