package org.wadeplan.planner.hazard;

import java.time.LocalDate;
import org.wadeplan.hazards.briefing.Briefing;
import org.wadeplan.planner.round.VisitPart;

/** The briefing for one part of one visit as planned. */
public record VisitBriefing(String site, LocalDate date, String crew, VisitPart part, Briefing briefing) {}
