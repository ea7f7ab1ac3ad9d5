package org.wadeplan.planner.decon;

import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Treatment;

/**
 * What supports one recipe against one pest on one material.
 *
 * @param contactMin minutes of contact, all surfaces wet
 * @param dryingH hours of drying after that, from dry to the touch
 * @param pickFirst true where fragments are picked off first
 * @param source where it is from, with any step taken from the row to this material
 */
record Evidence(
        Recipe recipe,
        String pest,
        Material material,
        EvidenceGrade grade,
        double contactMin,
        double dryingH,
        boolean pickFirst,
        String source) {

    static Evidence of(Treatment row) {
        return new Evidence(
                Recipe.of(row),
                row.pest(),
                row.material(),
                row.grade(),
                row.contactMin(),
                row.dryingH(),
                row.pickFirst(),
                row.source());
    }

    Evidence withDryingH(double hours) {
        return new Evidence(recipe, pest, material, grade, contactMin, hours, pickFirst, source);
    }
}
