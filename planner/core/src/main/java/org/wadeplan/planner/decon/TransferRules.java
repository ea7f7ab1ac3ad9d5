package org.wadeplan.planner.decon;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.DeconRule;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.Water;

/**
 * What a kit set needs before it may go into a water, given every water it was in since it was last clean. Exposure belongs
 * to the kit: the pests of all those waters are covered, those that the next water has already too, because strains differ.
 *
 * <p>Against a known pest, and on the way into a protected water against every one, only the best graded evidence of the
 * table counts and a spray does not; against a suspected or unknown one any grade but X. Into a protected water, pests that
 * nobody looked for count too. Rows and rules count that are in force on the round's first day where the round is.
 */
public final class TransferRules {

    private final Biosecurity biosecurity;
    private final LocalDate firstDay;
    private final List<String> protectedWaters;
    private final Store store;
    private final RulesOfPlace rules;
    private final TreatmentChoice choice;
    private final GenericClean generic;

    public TransferRules(Round round) {
        this(
                round.biosecurity(),
                round.header().firstDay(),
                round.waters().stream()
                        .filter(Water::protectedWater)
                        .map(Water::id)
                        .toList(),
                round.store());
    }

    /** The same where of the kit sets only their materials are known. */
    public TransferRules(Biosecurity biosecurity, LocalDate firstDay, List<String> protectedWaters) {
        this(biosecurity, firstDay, protectedWaters, new Store(List.of(), List.of(), List.of(), List.of(), List.of()));
    }

    /** The same from the parts of a round that matter here. */
    public TransferRules(Biosecurity biosecurity, LocalDate firstDay, List<String> protectedWaters, Store store) {
        this.biosecurity = biosecurity;
        this.firstDay = firstDay;
        this.protectedWaters = List.copyOf(protectedWaters);
        this.store = store;
        this.rules = new RulesOfPlace(biosecurity, firstDay);
        this.choice = new TreatmentChoice(biosecurity, firstDay);
        this.generic = new GenericClean(biosecurity, choice);
    }

    /** The kinds of items in a set, with what they bear. */
    public List<ItemKind> itemsOf(KitSet kitSet) {
        return ItemKind.in(kitSet, store.items(), biosecurity.gear());
    }

    /**
     * The turnaround. Where there are several waters, the one it names as left joins them with {@code +}, alphabetically.
     * Where nothing covers the leg, its reason ends with the ways out that were tried and do.
     *
     * @param fromWaters every water since the set was last clean, at least one
     */
    public Turnaround needed(KitSet kitSet, Collection<String> fromWaters, String toWater) {
        Turnaround asked = needed(kitSet, itemsOf(kitSet), fromWaters, toWater);
        return asked.possible()
                ? asked
                : asked.saying(new WaysOut(this, store.kitSets()).words(kitSet, asked, fromWaters));
    }

    /** What one item outside the kit sets needs, by what it bears. */
    public Turnaround needed(KitSet itself, StoreItem item, Collection<String> fromWaters, String toWater) {
        return needed(itself, List.of(ItemKind.alone(item, biosecurity.gear())), fromWaters, toWater);
    }

    /** The same for some of the items of a set, without ways out. */
    Turnaround needed(KitSet kitSet, List<ItemKind> items, Collection<String> fromWaters, String toWater) {
        SortedSet<String> from = new TreeSet<>(fromWaters);
        if (from.isEmpty()) {
            throw new IllegalArgumentException("a kit set that touched no water needs no turnaround: " + kitSet.id());
        }
        PestsAtWater pests = PestsAtWater.of(biosecurity, firstDay, from);
        if (from.size() == 1 && from.contains(toWater)) {
            return sameWater(kitSet, toWater, pests);
        }
        Set<String> waters = new TreeSet<>(from);
        waters.add(toWater);
        Leg leg = new Leg(
                kitSet,
                items,
                String.join("+", from),
                toWater,
                protectedWaters.contains(toWater),
                Set.copyOf(waters),
                pests);
        SortedSet<String> toCover = leg.intoProtected() ? pests.toCoverIntoProtected() : pests.toCover();
        return toCover.isEmpty() ? genericClean(leg) : against(leg, toCover);
    }

    /** What a turnaround is about. */
    record Leg(
            KitSet kitSet,
            List<ItemKind> items,
            String from,
            String to,
            boolean intoProtected,
            Set<String> waters,
            PestsAtWater pests) {

        Tier.Way way() {
            return intoProtected ? Tier.Way.PROTECTED_OR_UP_A_BARRIER : Tier.Way.ANOTHER_WATER;
        }

        Tier tier(boolean controlledArea) {
            Tier tier = Tier.of(pests.worst(), way());
            return controlledArea && tier.compareTo(Tier.T2) < 0 ? Tier.T2 : tier;
        }
    }

    private Turnaround sameWater(KitSet kitSet, String water, PestsAtWater pests) {
        List<DeconStep> steps = choice.sequence().sameWater();
        Tier tier = Tier.of(pests.worst(), Tier.Way.SAME_WATER_DOWNSTREAM);
        String reason = "Same water, so nothing is carried to another one: check and rinse only. Tier " + tier
                + ", downstream within one water: " + tier.asks()
                + ". Going upstream across a barrier, clean as for another water.";
        return new Turnaround(
                kitSet.id(),
                water,
                water,
                steps,
                CleanCost.crewMin(steps),
                0,
                List.of(),
                List.of(),
                reason,
                Optional.of(tier));
    }

    private Turnaround against(Leg leg, SortedSet<String> toCover) {
        SortedSet<String> strictFor =
                leg.intoProtected() ? toCover : leg.pests().known();
        Demand demand = Demand.strict(strictFor, rules.drying(leg.waters()));
        TreatmentChoice.Choice chosen = choice.choose(leg.items(), toCover, demand);
        String reason = new TurnaroundReason(choice.evidence(), rules).against(leg, toCover, strictFor, chosen);
        return turnaround(leg, chosen.steps(), chosen.covers(), chosen.uncovered(), reason);
    }

    private Turnaround genericClean(Leg leg) {
        TurnaroundReason reason = new TurnaroundReason(choice.evidence(), rules);
        return generic.of(leg.items(), rules.drying(leg.waters()))
                .map(best -> turnaround(
                        leg,
                        best.steps(),
                        choice.coversBy(best.treatment(), leg.items(), best.pests()),
                        List.of(),
                        reason.generic(leg, best)))
                .orElseGet(() -> noGeneric(leg));
    }

    private Turnaround noGeneric(Leg leg) {
        List<Turnaround.Uncovered> uncovered = new ArrayList<>();
        leg.items().stream()
                .map(ItemKind::material)
                .distinct()
                .sorted()
                .forEach(material -> uncovered.add(new Turnaround.Uncovered(
                        "any pest", material, "no soak of the table covers any pest on every material of the set")));
        return turnaround(
                leg,
                choice.sequence().around(List.of()),
                List.of(),
                List.copyOf(uncovered),
                "No generic clean: the table has no soak for every material of "
                        + leg.kitSet().id() + ".");
    }

    private Turnaround turnaround(
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
                reason,
                Optional.of(leg.tier(controlled(leg))));
    }

    private boolean controlled(Leg leg) {
        return !rules.about(DeconRule.Kind.CONTROLLED_AREA, leg.pests().toCoverIntoProtected(), leg.waters())
                .isEmpty();
    }
}
