package org.wadeplan.planner.round;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One row of evidence: what this treatment does to this pest on this material.
 *
 * @param id name of the treatment, shared by its rows: {@code hot-dip-60}
 * @param strength with {@code strengthBasis}, such as 20 and "g/L product"
 * @param contactMin how long the item stays in contact, all surfaces wet, minutes
 * @param dryingH drying after that, hours, counted from dry to the touch; 0 where none is asked
 * @param pickFirst true where fragments must be looked for and picked off first
 * @param stage the life stage that was treated, such as {@code adult}; empty: the source speaks of the pest as a whole
 * @param validity where and when the row counts
 */
public record Treatment(
        String id,
        String pest,
        Material material,
        String agent,
        OptionalDouble strength,
        Optional<String> strengthBasis,
        OptionalDouble tempC,
        TreatmentMode mode,
        double contactMin,
        double dryingH,
        boolean pickFirst,
        EvidenceGrade grade,
        String source,
        Optional<String> stage,
        Validity validity) {

    /** A row about the pest as a whole that counts everywhere and always. */
    public Treatment(
            String id,
            String pest,
            Material material,
            String agent,
            OptionalDouble strength,
            Optional<String> strengthBasis,
            OptionalDouble tempC,
            TreatmentMode mode,
            double contactMin,
            double dryingH,
            boolean pickFirst,
            EvidenceGrade grade,
            String source) {
        this(
                id,
                pest,
                material,
                agent,
                strength,
                strengthBasis,
                tempC,
                mode,
                contactMin,
                dryingH,
                pickFirst,
                grade,
                source,
                Optional.empty(),
                Validity.ALWAYS);
    }
}
