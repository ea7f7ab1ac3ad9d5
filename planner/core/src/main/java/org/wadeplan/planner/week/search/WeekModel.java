package org.wadeplan.planner.week.search;

import java.time.LocalDate;
import java.util.List;
import org.wadeplan.planner.round.DeconResource;
import org.wadeplan.planner.round.DutyRules;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.Unplaced;

/**
 * Everything the search asks, worked out once.
 *
 * @param dates week then reserve days
 * @param slots by date, then crew: the order in which they are evaluated
 * @param stops by id
 * @param jobs what is to be placed
 * @param never sites that no search could place, with reasons
 * @param places names of sites and, last, the depot
 * @param driveMin minutes between places
 * @param treatments for each kit set and water; one column more for what it was exposed to before the round
 * @param packs battery packs by day
 * @param rinseMin check-rinse between two sites of one water, minutes
 */
// Arrays because the inner loop of the search reads them millions of times; nobody compares these records.
@SuppressWarnings("ArrayRecordComponent")
record WeekModel(
        Round round,
        MinuteAxis axis,
        List<LocalDate> dates,
        List<Slot> slots,
        List<Stop> stops,
        List<Job> jobs,
        List<Unplaced> never,
        List<String> places,
        int[][] driveMin,
        List<Water> waters,
        boolean[] infested,
        List<KitSet> kitSets,
        SetTreatment[][] treatments,
        List<DeconResource> resources,
        List<CertifiedKind> kinds,
        PackBook packs,
        int rinseMin,
        int personCount,
        int vehicleCount,
        int crewCount) {

    DutyRules duty() {
        return round.header().duty();
    }

    int depot() {
        return places.size() - 1;
    }

    /** True where going from one water to another goes from an infested one to one of cleaner rank. */
    boolean dirtyToClean(int fromWater, int toWater) {
        return fromWater >= 0
                && infested[fromWater]
                && waters.get(fromWater).rank() > waters.get(toWater).rank();
    }
}
