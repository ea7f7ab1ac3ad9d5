package org.wadeplan.planner.round;

import java.util.List;

/**
 * What people agreed and did: never an input of the search, so that a tick does not change the label of the printed plan.
 *
 * @param agreed the week as agreed, in the file's order; none where nobody wrote one down
 * @param baths made up, in the file's order
 * @param cleanings done, in the file's order
 * @param ticks of load lists, in the file's order
 */
public record FieldLog(
        List<AgreedTask> agreed, List<BathRecord> baths, List<CleaningRecord> cleanings, List<LoadTick> ticks) {

    public static final FieldLog EMPTY = new FieldLog(List.of(), List.of(), List.of(), List.of());
}
