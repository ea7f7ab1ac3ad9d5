package org.wadeplan.planner.week.verify;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.DeconRule;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.round.WaterPest;
import org.wadeplan.planner.round.WaterPest.PestStatus;

/** Which pests kit from a water has to be treated against, read from the table of waters and pests and nothing else. */
final class PestStatusFacts {

    /** "Looked for and not found" holds so long where no rule of the round says otherwise. */
    private static final int FREE_HOLDS_MONTHS = 12;

    private final Round round;

    PestStatusFacts(Round round) {
        this.round = round;
    }

    /** On the way to a water: what is known, suspected, unknown or aged; into a protected one what nobody looked for too. */
    SortedSet<String> counted(String from, String to) {
        boolean intoProtected = round.water(to).map(Water::protectedWater).orElse(false);
        SortedSet<String> counted = new TreeSet<>();
        for (Pest pest : round.biosecurity().pests()) {
            List<WaterPest> rows = round.biosecurity().waterPests().stream()
                    .filter(row -> row.water().equals(from) && row.pest().equals(pest.id()))
                    .toList();
            if (rows.isEmpty() ? intoProtected : counts(rows)) {
                counted.add(pest.id());
            }
        }
        return counted;
    }

    private boolean counts(List<WaterPest> rows) {
        boolean thereOrUnknown = rows.stream().anyMatch(row -> row.status() != PestStatus.FREE);
        Optional<WaterPest> latest = rows.stream().max(Comparator.comparing(WaterPest::asOf));
        return thereOrUnknown
                || latest.filter(row -> row.asOf().isBefore(freeHoldsSince(row))
                                || row.asOf().isAfter(round.header().firstDay()))
                        .isPresent();
    }

    private LocalDate freeHoldsSince(WaterPest row) {
        Biosecurity biosecurity = round.biosecurity();
        LocalDate day = round.header().firstDay();
        int months = biosecurity.rules().stream()
                .filter(rule -> rule.kind() == DeconRule.Kind.FREE_HOLDS_MONTHS
                        && rule.validity().holds(day, biosecurity.jurisdiction()))
                .filter(rule -> rule.pests().isEmpty() || rule.pests().contains(row.pest()))
                .filter(rule -> rule.waters().isEmpty() || rule.waters().contains(row.water()))
                .filter(rule -> rule.value().isPresent())
                .mapToInt(rule -> (int) rule.value().getAsDouble())
                .min()
                .orElse(FREE_HOLDS_MONTHS);
        return day.minusMonths(months);
    }
}
