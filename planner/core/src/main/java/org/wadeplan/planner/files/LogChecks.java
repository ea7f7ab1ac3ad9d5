package org.wadeplan.planner.files;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.files.Table.Placed;
import org.wadeplan.planner.round.BathRecord;
import org.wadeplan.planner.round.CleaningRecord;

/** Holds the cleanings on record against the baths that they name. */
final class LogChecks {

    private LogChecks() {}

    static List<Problem> check(RoundTables tables) {
        Map<String, BathRecord> baths = new LinkedHashMap<>();
        tables.baths().rows().forEach(row -> baths.putIfAbsent(row.value().id(), row.value()));
        List<Problem> problems = new ArrayList<>();
        for (Placed<CleaningRecord> row : tables.cleanings().rows()) {
            CleaningRecord cleaning = row.value();
            Optional<BathRecord> bath = cleaning.bath().flatMap(id -> Optional.ofNullable(baths.get(id)));
            bath.flatMap(one -> clash(row.place().column("bath"), cleaning, one))
                    .ifPresent(problems::add);
        }
        return problems;
    }

    private static Optional<Problem> clash(SourcePlace place, CleaningRecord cleaning, BathRecord bath) {
        if (bath.madeAt().isAfter(cleaning.startedAt())) {
            return Optional.of(Problem.error(
                    "bath-not-made-yet",
                    place,
                    "the cleaning started at " + cleaning.startedAt() + " in bath " + bath.id()
                            + ", which was made only at " + bath.madeAt(),
                    "a bath that was made before",
                    "name the bath that it lay in, or mend the one time or the other"));
        }
        if (bath.madeAt().plus(BathRecord.UNUSED_KEEPS).isAfter(cleaning.startedAt())) {
            return Optional.empty();
        }
        long days = Duration.between(bath.madeAt(), cleaning.startedAt()).toDays();
        return Optional.of(Problem.warning(
                "bath-expired",
                place,
                "bath " + bath.id() + " was " + days + " d old when the cleaning started",
                "at most " + BathRecord.UNUSED_KEEPS.toDays() + " d unused and closed, and a used one only on its day",
                "clean the set again in a fresh bath: this record clears nothing"));
    }
}
