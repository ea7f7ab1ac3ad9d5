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

    /** So many of a kind with a certificate, for each visit, person or crew-day. */
    record CertifiedNeed(int kind, int perCrew, int perPerson) {}

    boolean sets() {
        return part.part() == VisitPart.SET && purposes.contains(KitPurpose.TRAPS);
    }

    boolean lifts() {
        return part.part() == VisitPart.LIFT && purposes.contains(KitPurpose.TRAPS);
    }

    boolean fits(int slot) {
        return whyNot.get(slot).isEmpty();
    }

    /** A part with a gap may stand on another crew-day than the part before; one without stands on the same. */
    boolean hasGap() {
        return part.gapMinMin().isPresent() || part.gapMaxMin().isPresent();
    }

    String name() {
        return site.id() + " " + part.part().word();
    }
}
