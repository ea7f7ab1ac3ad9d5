package org.wadeplan.planner.plan;

import java.util.List;
import org.wadeplan.planner.permission.Permission;
import org.wadeplan.planner.permission.PermissionCheck;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.WeekPlan;

/** What permits and consents say of each visit on the day where it was placed. */
final class PlacedPermissions {

    private PlacedPermissions() {}

    static List<Permission> of(Round round, WeekPlan week) {
        return week.crewDays().stream()
                .flatMap(day -> day.visits().stream()
                        .map(visit -> PermissionCheck.of(
                                round,
                                visit.site().orElse(visit.place()),
                                visit.method().orElse(""),
                                day.date())))
                .distinct()
                .toList();
    }
}
