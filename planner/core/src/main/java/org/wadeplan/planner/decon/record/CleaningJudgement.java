package org.wadeplan.planner.decon.record;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.round.CleaningRecord;

/**
 * What one cleaning on record is worth.
 *
 * @param accepted true where it was done as a row of the table asks for every material of the set
 * @param credits what it covers; none where it is refused
 * @param dryAt when the set was dry to the touch inside and out, as somebody found it
 * @param reasons why it is refused, or what an accepted one does not cover, each a sentence
 * @param override who let the set go all the same; it credits nothing
 */
public record CleaningJudgement(
        CleaningRecord record,
        boolean accepted,
        List<Credit> credits,
        Optional<Instant> dryAt,
        List<String> reasons,
        Optional<LetGo> override) {

    /**
     * One pest on one material with the row behind it.
     *
     * @param from when it counts: the end of the treatment, or the end of the drying that the row asks for after it
     */
    public record Credit(Turnaround.Cover cover, Instant from) {}

    /** A person's decision against the record. It is shown wherever the set is, and never counts as clean. */
    public record LetGo(String by, String reason) {}

    public String kitSet() {
        return record.kitSet();
    }

    /** The pairs that it covers, without their times. */
    public List<Turnaround.Cover> covers() {
        return credits.stream().map(Credit::cover).toList();
    }
}
