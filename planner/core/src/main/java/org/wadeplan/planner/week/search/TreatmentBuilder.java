package org.wadeplan.planner.week.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.round.DeconResource;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.WeekInputs;

/**
 * Chooses for each kit set and each water the strongest row of the turnaround table, so that a cleaned set is released to
 * every other water at once: the row that covers most, then the longest.
 */
final class TreatmentBuilder {

    private static final Comparator<Turnaround> STRONGEST = Comparator.<Turnaround>comparingInt(
                    row -> row.covers().size())
            .thenComparingInt(Turnaround::totalMin)
            .thenComparing(Comparator.comparing(Turnaround::toWater).reversed());

    private final WeekInputs inputs;
    private final Round round;
    private final List<String> resources;
    private final Set<String> visited = new TreeSet<>();

    TreatmentBuilder(WeekInputs inputs) {
        this.inputs = inputs;
        this.round = inputs.round();
        this.resources =
                round.biosecurity().resources().stream().map(DeconResource::id).toList();
        for (Site site : round.sites()) {
            round.waterOf(site).map(Water::id).ifPresent(visited::add);
        }
    }

    SetTreatment[][] build() {
        List<KitSet> sets = round.store().kitSets();
        SetTreatment[][] treatments =
                new SetTreatment[sets.size()][round.waters().size() + 1];
        for (int set = 0; set < sets.size(); set++) {
            for (int water = 0; water < round.waters().size(); water++) {
                treatments[set][water] =
                        after(sets.get(set), round.waters().get(water).id());
            }
            treatments[set][round.waters().size()] = beforeTheRound(sets.get(set));
        }
        return treatments;
    }

    private SetTreatment after(KitSet set, String water) {
        List<Turnaround> rows = inputs.turnarounds().rows().stream()
                .filter(row -> row.kitSet().equals(set.id()) && row.fromWater().equals(water))
                .toList();
        List<Turnaround> elsewhere = rows.stream()
                .filter(row -> !row.toWater().equals(water) && visited.contains(row.toWater()))
                .toList();
        List<Turnaround> asked = elsewhere.isEmpty() ? rows : elsewhere;
        return asked.stream()
                .filter(Turnaround::possible)
                .max(STRONGEST)
                .map(row -> treatment(row, asked))
                .orElseGet(() -> SetTreatment.impossible(
                        List.of(water), "no row of the turnaround table releases " + set.id() + " after " + water));
    }

    private SetTreatment treatment(Turnaround strongest, List<Turnaround> asked) {
        long released = 1L << index(strongest.fromWater());
        for (Turnaround row : asked) {
            if (row.possible() && coversAll(strongest, row)) {
                released |= 1L << index(row.toWater());
            }
        }
        return new SetTreatment(
                List.of(strongest.fromWater()),
                strongest.steps(),
                resourcesOf(strongest.steps()),
                strongest.covers(),
                strongest.reason(),
                released,
                true);
    }

    /** True where every pest on every material that a row covers is covered by the strongest row too. */
    private static boolean coversAll(Turnaround strongest, Turnaround row) {
        return row.covers().stream().allMatch(cover -> strongest.covers().stream()
                .anyMatch(other -> other.pest().equals(cover.pest()) && other.material() == cover.material()));
    }

    private int index(String water) {
        for (int i = 0; i < round.waters().size(); i++) {
            if (round.waters().get(i).id().equals(water)) {
                return i;
            }
        }
        throw new IllegalStateException("The turnaround table names a water that the round lacks: " + water);
    }

    private List<Integer> resourcesOf(List<DeconStep> steps) {
        return steps.stream()
                .map(step -> step.resource().map(resources::indexOf).orElse(-1))
                .toList();
    }

    /** One treatment after the other for all that a set touched before the round; a set of unknown past stays out. */
    private SetTreatment beforeTheRound(KitSet set) {
        if (set.exposedTo().isEmpty()) {
            return SetTreatment.impossible(List.of(), set.id() + " is not clean and where it has been is not on file");
        }
        List<DeconStep> steps = new ArrayList<>();
        List<Turnaround.Cover> covers = new ArrayList<>();
        long released = -1L;
        for (String water : set.exposedTo()) {
            SetTreatment one = after(set, water);
            if (!one.possible()) {
                return one;
            }
            steps.addAll(one.steps());
            covers.addAll(one.covers());
            released &= one.releasedFor();
        }
        String reason = "touched before the round: " + String.join(", ", set.exposedTo());
        return new SetTreatment(set.exposedTo(), steps, resourcesOf(steps), covers, reason, released, true);
    }
}
