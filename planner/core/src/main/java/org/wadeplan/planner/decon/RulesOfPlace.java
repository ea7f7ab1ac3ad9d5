package org.wadeplan.planner.decon;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.DeconRule;
import org.wadeplan.planner.round.DeconRule.Kind;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.Validity;

/** The rules about cleaning that are in force on the round's first day where the round is. */
final class RulesOfPlace {

    private final LocalDate day;
    private final Optional<String> place;
    private final List<DeconRule> inForce;

    RulesOfPlace(Biosecurity biosecurity, LocalDate day) {
        this.day = day;
        this.place = biosecurity.jurisdiction();
        this.inForce = biosecurity.rules().stream()
                .filter(rule -> rule.validity().holds(day, place))
                .filter(rule -> inMonth(rule, day.getMonthValue()))
                .sorted(Comparator.comparing(DeconRule::id))
                .toList();
    }

    /** Months may run over the turn of the year: 12 to 2 is winter in the north. */
    private static boolean inMonth(DeconRule rule, int month) {
        OptionalInt from = rule.monthFrom();
        OptionalInt until = rule.monthUntil();
        if (from.isEmpty() && until.isEmpty()) {
            return true;
        }
        int first = from.orElse(1);
        int last = until.orElse(12);
        return first <= last ? month >= first && month <= last : month >= first || month <= last;
    }

    /** Why a row of evidence does not count on that day in that place; empty where it does. */
    Optional<String> outOfForce(Treatment row) {
        Validity validity = row.validity();
        if (!validity.holds(day, place)) {
            return Optional.of(whyNot(validity));
        }
        return inForce.stream()
                .filter(rule -> rule.kind() == Kind.SUPERSEDED_TREATMENT)
                .filter(rule -> rule.treatment().filter(row.id()::equals).isPresent())
                .filter(rule -> rule.pests().isEmpty() || rule.pests().contains(row.pest()))
                .findFirst()
                .map(rule -> "superseded"
                        + rule.validity().from().map(from -> " on " + from).orElse("") + " by rule " + rule.id() + " ("
                        + rule.source() + ")");
    }

    private String whyNot(Validity validity) {
        if (validity.until().map(day::isAfter).orElse(false)) {
            return "superseded on " + validity.until().orElseThrow().plusDays(1);
        }
        if (validity.from().map(day::isBefore).orElse(false)) {
            return "in force only from " + validity.from().orElseThrow();
        }
        return "an instruction of " + validity.jurisdiction().orElse("another place") + ", and the round "
                + place.map(where -> "follows " + where).orElse("names no jurisdiction");
    }

    /** Every rule in force, in order of id. */
    List<DeconRule> all() {
        return inForce;
    }

    /** The rules of a kind about any of these pests and waters, in order of id. */
    List<DeconRule> about(Kind kind, Collection<String> pests, Collection<String> waters) {
        return inForce.stream()
                .filter(rule -> rule.kind() == kind)
                .filter(rule -> rule.pests().isEmpty() || rule.pests().stream().anyMatch(pests::contains))
                .filter(rule ->
                        rule.waters().isEmpty() || rule.waters().stream().anyMatch(waters::contains))
                .toList();
    }

    /** How long "looked for and not found" holds, months: the shortest that a rule says, or the default. */
    int freeHoldsMonths(String pest, String water, int otherwise) {
        return about(Kind.FREE_HOLDS_MONTHS, List.of(pest), List.of(water)).stream()
                .filter(rule -> rule.value().isPresent())
                .mapToInt(rule -> (int) rule.value().getAsDouble())
                .min()
                .orElse(otherwise);
    }

    /** The hours of drying that rules ask of one leg. */
    DryingRules drying(Collection<String> waters) {
        List<DeconRule> rules = new ArrayList<>();
        for (DeconRule rule : inForce) {
            boolean drying = rule.kind() == Kind.DRYING_ALONE_H || rule.kind() == Kind.DRYING_AFTER_H;
            boolean here = rule.waters().isEmpty() || rule.waters().stream().anyMatch(waters::contains);
            if (drying && here && rule.value().isPresent()) {
                rules.add(rule);
            }
        }
        return new DryingRules(List.copyOf(rules));
    }

    /** {@code rule nz-dry-48h (NZ, in force since 2021-10-01)}. */
    static String words(DeconRule rule) {
        String where = rule.validity().jurisdiction().orElse("");
        String since =
                rule.validity().from().map(from -> "in force since " + from).orElse("");
        String both = where + (where.isEmpty() || since.isEmpty() ? "" : ", ") + since;
        return "rule " + rule.id() + (both.isEmpty() ? "" : " (" + both + ")");
    }
}
