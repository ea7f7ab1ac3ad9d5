package org.wadeplan.planner.decon.record;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.BathRecord;
import org.wadeplan.planner.round.CleaningRecord;
import org.wadeplan.planner.round.Round;

/**
 * How long a bath may be used: one with gear in it until the end of that day, an unused closed one for seven days. Defaults of
 * our own: field guidance says from 24 hours to a week, and a reading below the target ends it sooner.
 */
public final class BathAge {

    private BathAge() {}

    /** The first moment at which it may no longer be used. */
    public static Instant expires(Round round, BathRecord bath) {
        ZoneId zone = round.header().zone();
        Instant unused = bath.madeAt().plus(BathRecord.UNUSED_KEEPS);
        Optional<Instant> used = firstUse(round.log().cleanings(), bath).map(first -> first.atZone(zone)
                .toLocalDate()
                .plusDays(1)
                .atStartOfDay(zone)
                .toInstant());
        return used.filter(end -> end.isBefore(unused)).orElse(unused);
    }

    private static Optional<Instant> firstUse(List<CleaningRecord> cleanings, BathRecord bath) {
        return cleanings.stream()
                .filter(one -> one.bath().filter(bath.id()::equals).isPresent())
                .map(CleaningRecord::startedAt)
                .filter(start -> !start.isBefore(bath.madeAt()))
                .min(Comparator.naturalOrder());
    }
}
