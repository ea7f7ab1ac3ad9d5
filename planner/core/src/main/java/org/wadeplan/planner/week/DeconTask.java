package org.wadeplan.planner.week;

import java.time.Instant;
import java.util.List;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.Turnaround;

/**
 * The cleaning of one kit set after use, by the clock.
 *
 * @param kitSet the set
 * @param crew who does it
 * @param fromWaters the waters it was in since it was last clean
 * @param start when the first step starts
 * @param crewFree when the people are free again
 * @param released when the set may go to any other water
 * @param steps in order
 * @param covers the evidence behind it
 */
public record DeconTask(
        String kitSet,
        String crew,
        List<String> fromWaters,
        Instant start,
        Instant crewFree,
        Instant released,
        List<DeconStep> steps,
        List<Turnaround.Cover> covers,
        String reason) {}
