package org.wadeplan.planner.decon;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;

/**
 * What a kit set needs before it may go into a water, given every water it was in since it was last clean. Exposure belongs
 * to the kit: the pests of all those waters are covered, those that the next water has already too, because strains differ.
 *
 * <p>Against a known pest, and on the way into a protected water against every one, only the best graded evidence of the
 * table counts; against a suspected or unknown one any grade but X. Into a protected water, pests that nobody looked for
 * count too.
 */
public final class TransferRules {

    private final Biosecurity biosecurity;
    private final LocalDate firstDay;
    private final List<String> protectedWaters;
    private final TreatmentChoice choice;
    private final GenericClean generic;
    private final StepSequence sequence;

    public TransferRules(Round round) {
        this(
                round.biosecurity(),
                round.header().firstDay(),
                round.waters().stream()
                        .filter(Water::protectedWater)
                        .map(Water::id)
                        .toList());
    }

    /** The same from the parts of a round that matter here. */
    public TransferRules(Biosecurity biosecurity, LocalDate firstDay, List<String> protectedWaters) {
        this.biosecurity = biosecurity;
        this.firstDay = firstDay;
        this.protectedWaters = List.copyOf(protectedWaters);
        this.choice = new TreatmentChoice(biosecurity);
        this.generic = new GenericClean(biosecurity);
        this.sequence = new StepSequence(biosecurity);
    }

    /**
     * The turnaround. Where there are several waters, the one it names as left joins them with {@code +}, alphabetically.
     *
     * @param fromWaters every water since the set was last clean, at least one
     */
    public Turnaround needed(KitSet kitSet, Collection<String> fromWaters, String toWater) {
        SortedSet<String> from = new TreeSet<>(fromWaters);
        if (from.isEmpty()) {
            throw new IllegalArgumentException("a kit set that touched no water needs no turnaround: " + kitSet.id());
        }
        if (from.size() == 1 && from.contains(toWater)) {
            return sameWater(kitSet, toWater);
        }
        PestsAtWater pests = PestsAtWater.of(biosecurity, firstDay, from);
        boolean intoProtected = protectedWaters.contains(toWater);
        SortedSet<String> toCover = intoProtected ? pests.toCoverIntoProtected() : pests.toCover();
        Leg leg = new Leg(kitSet, String.join("+", from), toWater, intoProtected);
        return toCover.isEmpty() ? genericClean(leg, pests) : against(leg, pests, toCover);
    }

    private record Leg(KitSet kitSet, String from, String to, boolean intoProtected) {}

    private Turnaround sameWater(KitSet kitSet, String water) {
        List<DeconStep> steps = sequence.sameWater();
        String reason = "Same water, so nothing is carried to another one: check and rinse only.";
        return new Turnaround(
                kitSet.id(), water, water, steps, CleanCost.crewMin(steps), 0, List.of(), List.of(), reason);
    }

    private Turnaround against(Leg leg, PestsAtWater pests, SortedSet<String> toCover) {
        SortedSet<String> bestGradeFor = leg.intoProtected() ? toCover : pests.known();
        TreatmentChoice.Choice chosen = choice.choose(leg.kitSet().materials(), toCover, bestGradeFor);
        String reason = new TurnaroundReason(biosecurity).against(leg.kitSet(), pests, leg.intoProtected(), chosen);
        return turnaround(leg, chosen.steps(), chosen.covers(), chosen.uncovered(), reason);
    }

    private Turnaround genericClean(Leg leg, PestsAtWater pests) {
        return generic.of(leg.kitSet().materials())
                .map(best -> turnaround(
                        leg,
                        best.steps(),
                        choice.coversBy(best.treatment(), leg.kitSet().materials(), best.pests()),
                        List.of(),
                        TurnaroundReason.generic(pests, best)))
                .orElseGet(() -> noGeneric(leg));
    }

    private Turnaround noGeneric(Leg leg) {
        List<Turnaround.Uncovered> uncovered = new ArrayList<>();
        leg.kitSet().materials().stream()
                .sorted()
                .forEach(material -> uncovered.add(new Turnaround.Uncovered(
                        "any pest", material, "no soak of the table covers any pest on every material of the set")));
        return turnaround(
                leg,
                sequence.around(List.of()),
                List.of(),
                List.copyOf(uncovered),
                "No generic clean: the table has no soak for every material of "
                        + leg.kitSet().id() + ".");
    }

    private static Turnaround turnaround(
            Leg leg,
            List<DeconStep> steps,
            List<Turnaround.Cover> covers,
            List<Turnaround.Uncovered> uncovered,
            String reason) {
        return new Turnaround(
                leg.kitSet().id(),
                leg.from(),
                leg.to(),
                steps,
                CleanCost.crewMin(steps),
                CleanCost.aloneMin(steps),
                covers,
                uncovered,
                reason);
    }
}
