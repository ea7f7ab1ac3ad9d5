package org.wadeplan.planner.decon.record;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.Material;

/** Looks up which accepted record covers a pest on a material after a set came out of a water. */
record Clearance(List<CleaningJudgement> judgements) {

    /** A credit with the record that earned it. */
    record Found(CleaningJudgement judgement, CleaningJudgement.Credit credit) {}

    /**
     * The earliest that counts, of accepted cleanings of the set that began after the exposure.
     *
     * @param worstGrade the weakest grade that counts
     */
    Optional<Found> of(KitExposure exposure, String pest, Material material, EvidenceGrade worstGrade, Instant at) {
        return judgements.stream()
                .filter(one -> one.accepted()
                        && one.kitSet().equals(exposure.kitSet())
                        && !one.record().startedAt().isBefore(exposure.until())
                        && !one.record().endedAt().isAfter(at))
                .flatMap(one -> one.credits().stream().map(credit -> new Found(one, credit)))
                .filter(found -> covers(found.credit().cover(), pest, material, worstGrade))
                .min((a, b) -> a.credit().from().compareTo(b.credit().from()));
    }

    private static boolean covers(Turnaround.Cover cover, String pest, Material material, EvidenceGrade worstGrade) {
        return cover.pest().equals(pest)
                && cover.material() == material
                && cover.grade().compareTo(worstGrade) <= 0;
    }
}
