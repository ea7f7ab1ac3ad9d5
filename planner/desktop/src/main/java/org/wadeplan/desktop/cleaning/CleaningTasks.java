package org.wadeplan.desktop.cleaning;

import java.util.Optional;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/** How cleanings are named, and how to find one again. */
final class CleaningTasks {

    private CleaningTasks() {}

    static String id(DeconTask task) {
        return task.kitSet() + " " + task.start();
    }

    static Optional<DeconTask> find(WeekPlan week, String id) {
        return week.decon().stream().filter(task -> id(task).equals(id)).findFirst();
    }
}
