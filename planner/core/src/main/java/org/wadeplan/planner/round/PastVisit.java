package org.wadeplan.planner.round;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * One part of one earlier visit.
 *
 * @param shockS button seconds
 * @param onSiteMin from the tailgate and back, minutes
 * @param fishCount fish handled, all kinds together: they take most of the time that width does not
 */
public record PastVisit(
        String site,
        LocalDate date,
        String method,
        VisitPart part,
        Optional<MetricPoint> start,
        Optional<ElectricSettings> settings,
        OptionalDouble conductivityUsCm,
        Optional<ConductivityBasis> conductivityBasis,
        OptionalDouble waterTempC,
        OptionalInt shockS,
        OptionalInt onSiteMin,
        OptionalDouble widthM,
        OptionalDouble maxDepthM,
        OptionalInt crewSize,
        OptionalInt fishCount,
        Optional<String> note) {}
