package org.wadeplan.planner.round;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/** Who makes up a crew on a day, with which vehicle, between which hours. */
public record CrewDayRoster(
        LocalDate date,
        String crew,
        List<String> people,
        String vehicle,
        Optional<LocalTime> earliestStart,
        Optional<LocalTime> latestEnd,
        Optional<String> note) {}
