package org.wadeplan.planner.decon;

import java.util.Optional;
import org.wadeplan.planner.round.Material;

/**
 * How a row about absorbent material is used for felt where the table has no felt row: the contact time grows to three
 * times the time for hard items, is never shorter than for absorbent ones, and never under 30 minutes in a liquid.
 *
 * <p>Source of the 30 minutes: Northeast ANS Panel 2008, 30 to 40 min soak for felt. The factor of three for thick
 * absorbent material is an own estimate, so the words say so.
 */
final class FeltRule {

    static final double FELT_MIN_CONTACT_MIN = 30;
    static final double THICK_ABSORBENT_FACTOR = 3;
    private static final String NOTE =
            "; no felt row: absorbent row with the longer contact for felt (at least 30 min, Northeast ANS Panel 2008;"
                    + " three times the hard-item time, own estimate)";

    private FeltRule() {}

    static Evidence fromAbsorbent(Evidence absorbent, Optional<Evidence> hard) {
        boolean liquid = !absorbent.recipe().kind().runsAlone();
        double thriceHardMin = hard.map(Evidence::contactMin).orElse(0.0) * THICK_ABSORBENT_FACTOR;
        double floorMin = liquid ? Math.max(FELT_MIN_CONTACT_MIN, thriceHardMin) : 0;
        return new Evidence(
                absorbent.recipe(),
                absorbent.pest(),
                Material.FELT,
                absorbent.grade(),
                Math.max(absorbent.contactMin(), floorMin),
                absorbent.dryingH(),
                absorbent.pickFirst(),
                absorbent.source() + NOTE);
    }
}
