package org.wadeplan.planner.week.search;

import java.util.List;
import org.wadeplan.planner.round.CrewDayRoster;

/**
 * A crew-day that can hold work.
 *
 * @param earliestMin no earlier start, minutes on the axis
 * @param latestEndMin no later end
 * @param people indices of its people
 * @param livePeople how many of them may work with a live circuit
 * @param noDriving stretches in which nobody drives, from and until in turn
 * @param darkness stretches in which only a night driver drives, from and until in turn; empty where the crew has one
 * @param lacks what its vehicle lacks; a slot that lacks anything holds no work
 */
// Arrays because the inner loop of the search reads them millions of times; nobody compares these records.
@SuppressWarnings("ArrayRecordComponent")
record Slot(
        int index,
        CrewDayRoster roster,
        int dateIndex,
        boolean reserve,
        int earliestMin,
        int latestEndMin,
        int[] people,
        int livePeople,
        int vehicle,
        int crew,
        int[] noDriving,
        int[] darkness,
        List<String> lacks) {

    String name() {
        return "crew " + roster.crew() + " " + roster.date();
    }
}
