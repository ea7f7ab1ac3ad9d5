package org.wadeplan.planner.kit.wayout;

import java.util.List;
import java.util.function.Function;
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.Round;

/**
 * A round and its agreed lines as they would be with one way out taken.
 *
 * @param remark what is worth saying of the week that comes of it; blank where nothing is
 */
record Change(WayCost cost, String what, Round round, List<AgreedTask> tasks, Function<Trial, String> remark) {

    Change(WayCost cost, String what, Round round, List<AgreedTask> tasks) {
        this(cost, what, round, tasks, trial -> "");
    }
}
