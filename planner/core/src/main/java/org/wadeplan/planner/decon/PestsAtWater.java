package org.wadeplan.planner.decon;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.Pest;
import org.wadeplan.planner.round.WaterPest;
import org.wadeplan.planner.round.WaterPest.PestStatus;

/**
 * The pests that kit from one or more waters may carry. Known, suspected and unknown count alike; free counts only for
 * {@value #FREE_HOLDS_MONTHS} months before the round starts (own default), or as many as a rule of the place says, then it
 * is unknown again.
 *
 * @param waters the waters looked at
 * @param counted pests to cover, each with why
 * @param free pests found free recently enough
 * @param notRecorded pests of the round's list that no row mentions for one of the waters: nobody wrote down a look
 */
public record PestsAtWater(List<String> waters, List<Counted> counted, List<String> free, List<String> notRecorded) {

    public static final int FREE_HOLDS_MONTHS = 12;

    /**
     * A pest to cover.
     *
     * @param known true where it was found at one of the waters, not only suspected or not known
     * @param why its status at each water, in words
     */
    public record Counted(String pest, boolean known, String why) {}

    public static PestsAtWater of(Biosecurity biosecurity, LocalDate firstDay, Collection<String> waters) {
        List<Counted> counted = new ArrayList<>();
        List<String> free = new ArrayList<>();
        List<String> notRecorded = new ArrayList<>();
        RulesOfPlace rules = new RulesOfPlace(biosecurity, firstDay);
        for (Pest pest : biosecurity.pests().stream()
                .sorted(Comparator.comparing(Pest::id))
                .toList()) {
            List<String> reasons = waters.stream()
                    .flatMap(water -> whyCounted(biosecurity, rules, firstDay, water, pest.id()).stream())
                    .toList();
            if (!reasons.isEmpty()) {
                boolean known = biosecurity.waterPests().stream()
                        .anyMatch(row -> row.status() == PestStatus.KNOWN
                                && row.pest().equals(pest.id())
                                && waters.contains(row.water()));
                counted.add(new Counted(pest.id(), known, String.join(", ", reasons)));
            } else if (waters.stream()
                    .allMatch(water -> !rows(biosecurity, water, pest.id()).isEmpty())) {
                free.add(pest.id());
            } else {
                notRecorded.add(pest.id());
            }
        }
        return new PestsAtWater(List.copyOf(waters), List.copyOf(counted), List.copyOf(free), List.copyOf(notRecorded));
    }

    /** Ids of the pests to cover on the way to an ordinary water. */
    public SortedSet<String> toCover() {
        SortedSet<String> pests = new TreeSet<>();
        counted.forEach(one -> pests.add(one.pest()));
        return pests;
    }

    /** Ids of the pests that were found there. */
    public SortedSet<String> known() {
        SortedSet<String> pests = new TreeSet<>();
        counted.stream().filter(Counted::known).forEach(one -> pests.add(one.pest()));
        return pests;
    }

    /** Ids to cover on the way to a protected water: those that nobody looked for count as well. */
    public SortedSet<String> toCoverIntoProtected() {
        SortedSet<String> pests = toCover();
        pests.addAll(notRecorded);
        return pests;
    }

    /** The worst that is known of any pest there; nobody having looked counts as unknown. */
    PestStatus worst() {
        if (counted.stream().anyMatch(Counted::known)) {
            return PestStatus.KNOWN;
        }
        return counted.isEmpty() && notRecorded.isEmpty() ? PestStatus.FREE : PestStatus.UNKNOWN;
    }

    /** {@code GSA (known at TOL)}, for each. */
    public List<String> words() {
        return counted.stream().map(one -> one.pest() + " (" + one.why() + ")").toList();
    }

    /** A find is never hidden by another row; of several looks that found nothing, the latest counts. */
    private static Optional<String> whyCounted(
            Biosecurity biosecurity, RulesOfPlace rules, LocalDate firstDay, String water, String pest) {
        List<WaterPest> rows = rows(biosecurity, water, pest);
        return rows.stream()
                .filter(row -> row.status() != PestStatus.FREE)
                .findFirst()
                .or(() -> rows.stream().max(Comparator.comparing(WaterPest::asOf)))
                .flatMap(row -> why(row, firstDay, rules.freeHoldsMonths(pest, water, FREE_HOLDS_MONTHS)));
    }

    private static Optional<String> why(WaterPest row, LocalDate firstDay, int holdsMonths) {
        if (row.status() != PestStatus.FREE) {
            return Optional.of(row.status().name().toLowerCase(Locale.ROOT) + " at " + row.water());
        }
        if (row.asOf().isAfter(firstDay)) {
            return Optional.of("not known at " + row.water() + ": its row says free on " + row.asOf()
                    + ", after the round begins");
        }
        boolean aged = row.asOf().isBefore(firstDay.minusMonths(holdsMonths));
        return aged
                ? Optional.of("free at " + row.water() + " on " + row.asOf() + ", more than " + holdsMonths
                        + " months before the round, so unknown")
                : Optional.empty();
    }

    private static List<WaterPest> rows(Biosecurity biosecurity, String water, String pest) {
        return biosecurity.waterPests().stream()
                .filter(row -> row.water().equals(water) && row.pest().equals(pest))
                .toList();
    }
}
