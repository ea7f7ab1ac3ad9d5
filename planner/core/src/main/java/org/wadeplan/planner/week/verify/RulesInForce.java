package org.wadeplan.planner.week.verify;

import java.time.LocalDate;
import java.util.List;
import org.wadeplan.planner.round.DeconRule;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;

/** Rules of the place that are in force on the round's first day, read from the table and nothing else. */
final class RulesInForce {

    private final Round round;
    private final List<DeconRule> rules;

    RulesInForce(Round round) {
        this.round = round;
        this.rules = round.biosecurity().rules().stream()
                .filter(rule -> rule.validity().holds(day(), round.biosecurity().jurisdiction()))
                .filter(this::inSeason)
                .toList();
    }

    private LocalDate day() {
        return round.header().firstDay();
    }

    private boolean inSeason(DeconRule rule) {
        int month = day().getMonthValue();
        int from = rule.monthFrom().orElse(1);
        int until = rule.monthUntil().orElse(12);
        return from <= until ? from <= month && month <= until : month >= from || month <= until;
    }

    /** Whether a row is in force and no rule has superseded it. */
    boolean counts(Treatment row) {
        return row.validity().holds(day(), round.biosecurity().jurisdiction())
                && rules.stream()
                        .filter(rule -> rule.kind() == DeconRule.Kind.SUPERSEDED_TREATMENT)
                        .filter(rule ->
                                rule.treatment().filter(row.id()::equals).isPresent())
                        .noneMatch(rule -> isAbout(rule, row));
    }

    /** Minutes of drying that rules ask for after a row, or of a row that dries alone, for kit from some waters. */
    double dryingMin(Treatment row, List<String> fromWaters) {
        DeconRule.Kind kind =
                row.mode() == TreatmentMode.DRY ? DeconRule.Kind.DRYING_ALONE_H : DeconRule.Kind.DRYING_AFTER_H;
        return rules.stream()
                .filter(rule -> rule.kind() == kind && isAbout(rule, row))
                .filter(rule ->
                        rule.waters().isEmpty() || rule.waters().stream().anyMatch(fromWaters::contains))
                .mapToDouble(rule -> rule.value().orElse(0) * 60)
                .max()
                .orElse(0);
    }

    private static boolean isAbout(DeconRule rule, Treatment row) {
        return rule.pests().isEmpty() || rule.pests().contains(row.pest());
    }
}
