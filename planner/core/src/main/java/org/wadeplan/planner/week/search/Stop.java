package org.wadeplan.planner.week.search;

import java.util.List;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.week.WindowSearch;

/**
 * One part of one visit, ready to be put into a crew-day.
 *
 * @param part the method's rules for it
 * @param water index of its water
 * @param wets true where kit goes into the water
 * @param windows what was found for each date, in the order of the dates
 * @param windowMin the fitting windows of each date, from and until in turn, minutes on the axis
 * @param needs certified items that it takes along
 * @param whyNot for each slot why it cannot stand there whatever else happens; empty where it may
 */
// Arrays because the inner loop of the search reads them millions of times; nobody compares these records.
@SuppressWarnings("ArrayRecordComponent")
record Stop(
        int id,
        int job,
        int orderInJob,
        Site site,
        int place,
        int water,
        MethodPart part,
        String method,
        int p50Min,
        int p80Min,
        boolean wets,
        List<KitPurpose> purposes,
        List<WindowSearch> windows,
        int[][] windowMin,
        List<CertifiedNeed> needs,
        List<List<String>> whyNot) {

    private static final int LONG_GAP_MIN = 360;

    /** So many of a kind with a certificate, for each visit or crew-day, person, or person who may work with a live circuit. */
    record CertifiedNeed(int kind, int perCrew, int perPerson, int perLivePerson) {

        int on(Slot slot) {
            return perCrew + perPerson * slot.people().length + perLivePerson * slot.livePeople();
        }
    }

    boolean sets() {
        return part.part() == VisitPart.SET && purposes.contains(KitPurpose.TRAPS);
    }

    boolean lifts() {
        return part.part() == VisitPart.LIFT && purposes.contains(KitPurpose.TRAPS);
    }

    boolean fits(int slot) {
        return whyNot.get(slot).isEmpty();
    }

    /**
     * True where the part may stand on another crew-day than the part before: a lift, or any part whose shortest gap is
     * longer than an afternoon. A mark and the night that follows it stay with one crew.
     */
    boolean onLaterDay() {
        return part.part() == VisitPart.LIFT || part.gapMinMin().orElse(0) >= LONG_GAP_MIN;
    }

    String name() {
        return site.id() + " " + part.part().word();
    }
}
