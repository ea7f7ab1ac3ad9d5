package org.wadeplan.planner.plan;

import java.util.List;
import java.util.stream.Stream;
import org.wadeplan.planner.permission.Permission;
import org.wadeplan.planner.permission.PermissionCheck;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.WeekPlan;

/** What permits and consents say of each visit on the day where it was placed. */
final class PlacedPermissions {

    private PlacedPermissions() {}

    static List<Permission> of(Round round, WeekPlan week) {
        return week.crewDays().stream()
                .flatMap(day -> day.visits().stream().flatMap(visit -> of(round, day, visit)))
                .distinct()
                .toList();
    }

    private static Stream<Permission> of(Round round, CrewDay day, Activity visit) {
        return visit.site().flatMap(round::site).stream()
                .map(site -> PermissionCheck.of(round, site, visit.method().orElse(""), day.date()));
    }
}
