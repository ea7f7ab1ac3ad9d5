package org.wadeplan.planner.decon.record;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.planner.decon.CreditedEvidence;
import org.wadeplan.planner.decon.CreditedEvidence.Support;
import org.wadeplan.planner.decon.Recipe;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.decon.Words;
import org.wadeplan.planner.round.CleaningRecord;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.TreatmentMode;

/** Holds one record against the rows for one pest on one material. */
final class PairJudge {

    private final CreditedEvidence evidence;
    private final CleaningRecord record;
    private final ClockWords clock;

    PairJudge(CreditedEvidence evidence, CleaningRecord record, ClockWords clock) {
        this.evidence = evidence;
        this.record = record;
        this.clock = clock;
    }

    /**
     * Either a credit or why there is none.
     *
     * @param doneWrong true where a row supports the treatment and the record falls short of it
     */
    record Finding(Optional<CleaningJudgement.Credit> credit, String why, boolean doneWrong) {

        static Finding none(String why) {
            return new Finding(Optional.empty(), why, false);
        }

        static Finding wrong(String why) {
            return new Finding(Optional.empty(), why, true);
        }
    }

    /** The best of the recipes as they were applied. */
    Finding find(List<Recipe> recipes, String pest, Material material) {
        String items = pest + " on " + Words.lower(material) + " items";
        Finding found = unsupported(pest, material, items);
        for (Recipe recipe : recipes) {
            Optional<Support> support = evidence.support(recipe, pest, material);
            if (support.isPresent() && found.credit().isEmpty()) {
                found = held(support.get(), items);
            }
        }
        return found;
    }

    private Finding unsupported(String pest, Material material, String items) {
        return evidence.foundNotEffective(record.treatment(), record.mode()).stream()
                .filter(row -> row.pest().equals(pest) && row.material() == material)
                .findFirst()
                .map(row -> Finding.wrong(mode() + " of " + row.agent() + " was tested against " + items
                        + " and found not effective: row " + row.id() + ", grade X (" + row.source() + ")"))
                .orElseGet(() ->
                        Finding.none("no row supports " + record.treatment() + " as " + mode() + " against " + items));
    }

    private Finding held(Support row, String items) {
        double contactMin =
                Duration.between(record.startedAt(), record.endedAt()).toSeconds() / 60.0;
        if (contactMin < row.contactMin()) {
            return Finding.wrong("contact of " + Words.number(contactMin) + " min is too short for " + items + ": "
                    + Words.number(row.contactMin()) + " min are asked for");
        }
        if (row.pickFirst() && !record.picked()) {
            return Finding.wrong("it was not picked over first, which " + items + " ask for");
        }
        if (row.dryingH() == 0) {
            return credit(row, record.endedAt());
        }
        return dried(row, items);
    }

    private Finding dried(Support row, String items) {
        String hours = Words.number(row.dryingH()) + " h of drying from dry to the touch";
        if (record.dryAt().isEmpty()) {
            return Finding.wrong("nobody found it dry to the touch yet, and " + items + " ask for " + hours);
        }
        Instant done = record.dryAt().get().plusSeconds(Math.round(row.dryingH() * 3600));
        boolean takenEarly =
                record.mode() == TreatmentMode.DRY && record.endedAt().isBefore(done);
        return takenEarly
                ? Finding.wrong("it was taken down at " + clock.at(record.endedAt()) + ", and " + items + " ask for "
                        + hours + ": not before " + clock.at(done))
                : credit(row, done.isAfter(record.endedAt()) ? done : record.endedAt());
    }

    private Finding credit(Support row, Instant from) {
        Turnaround.Cover cover =
                new Turnaround.Cover(row.pest(), row.material(), record.treatment(), row.grade(), row.source());
        return new Finding(Optional.of(new CleaningJudgement.Credit(cover, from)), "", false);
    }

    private String mode() {
        return record.mode().name().toLowerCase(Locale.ROOT);
    }
}
