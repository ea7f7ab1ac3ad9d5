package org.wadeplan.cli;

import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.plan.PlanJson;

/**
 * What every command prints with {@code --json}: one document on standard output.
 *
 * @param formatVersion raised when the form changes
 * @param command the command's words
 * @param round id of the round; empty where it could not be read
 * @param problems every problem and finding, worst first
 * @param result the command's own result; an empty list where there is none
 */
record JsonDocument(int formatVersion, String command, String round, List<Problem> problems, Object result) {

    static String text(String command, String round, List<Problem> problems, Object result) {
        return PlanJson.textOf(new JsonDocument(1, command, round, problems, result));
    }
}
