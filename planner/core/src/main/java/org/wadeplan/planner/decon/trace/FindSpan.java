package org.wadeplan.planner.decon.trace;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.WaterPest;
import org.wadeplan.planner.round.WaterPest.PestStatus;

/**
 * What a find makes of a water: the pest is known there from the sighting, and suspected back to the last visit that looked
 * for it and found none.
 *
 * @param lastClear day of that visit; empty where none is on file, so that the suspicion goes back as far as the ledger
 * @param before what was on file about the pest there
 */
public record FindSpan(Find find, Optional<LocalDate> lastClear, List<WaterPest> before) {

    static FindSpan of(Round round, Find find) {
        LocalDate seenOn = find.seen().atZone(round.header().zone()).toLocalDate();
        List<WaterPest> rows = rows(round, find.water(), find.pest());
        Optional<LocalDate> clear = rows.stream()
                .filter(row -> row.status() == PestStatus.FREE && !row.asOf().isAfter(seenOn))
                .map(WaterPest::asOf)
                .max(Comparator.naturalOrder());
        return new FindSpan(find, clear, rows);
    }

    static List<WaterPest> rows(Round round, String water, String pest) {
        return round.biosecurity().waterPests().stream()
                .filter(row -> row.water().equals(water) && row.pest().equals(pest))
                .toList();
    }

    /** True where something that was there until then may have been there since the last clear visit. */
    boolean reaches(Instant until, ZoneId zone) {
        return lastClear
                .map(day -> !until.isBefore(day.atStartOfDay(zone).toInstant()))
                .orElse(true);
    }

    /** Whether it was known there already. */
    public boolean knownBefore() {
        return before.stream().anyMatch(row -> row.status() == PestStatus.KNOWN);
    }

    /** The round with the pest known there. */
    public Round applied(Round round) {
        Biosecurity now = round.biosecurity();
        List<WaterPest> rows = new ArrayList<>(now.waterPests());
        rows.add(new WaterPest(
                find.water(),
                find.pest(),
                PestStatus.KNOWN,
                find.seen().atZone(round.header().zone()).toLocalDate(),
                "seen " + find.seen()));
        return round.with(new Biosecurity(
                now.pests(),
                List.copyOf(rows),
                now.treatments(),
                now.steps(),
                now.resources(),
                now.gear(),
                now.rules(),
                now.jurisdiction()));
    }

    /** {@code free on 2027-06-15 (survey)}, for each row; what nobody wrote down is not known. */
    static String words(Round round, String water, String pest) {
        List<String> words = rows(round, water, pest).stream()
                .map(row ->
                        row.status().name().toLowerCase(Locale.ROOT) + " on " + row.asOf() + " (" + row.source() + ")")
                .toList();
        return words.isEmpty() ? "not on record" : String.join(", ", words);
    }
}
