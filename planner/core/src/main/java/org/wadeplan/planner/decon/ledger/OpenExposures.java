package org.wadeplan.planner.decon.ledger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.planner.decon.PestsAtWater;
import org.wadeplan.planner.decon.TransferRules;
import org.wadeplan.planner.decon.Turnaround;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.Water;

/**
 * Says what may still be on a kit set when it goes into a water: every pest that kit from each water touched has to be
 * treated against on the way there, and that no treatment since covers with evidence good enough. What a later cleaning does
 * not cover stays open through any number of cleanings.
 */
public final class OpenExposures {

    static final String ANY_PEST = "any pest";

    private final Round round;
    private final TransferRules rules;
    private final Map<Leg, Turnaround> needed = new HashMap<>();
    private final Map<String, Set<String>> known = new HashMap<>();

    private record Leg(Set<Material> materials, String item, String from, String to) {}

    public OpenExposures(Round round) {
        this.round = round;
        this.rules = new TransferRules(round);
    }

    /** By touch, then pest and material; empty where nothing was found against going into that water at that time. */
    public List<OpenExposure> on(Lane lane, Instant at, String toWater) {
        List<OpenExposure> open = new ArrayList<>();
        for (Touch touch : lane.touchesBefore(at)) {
            if (!touch.water().equals(toWater)) {
                open.addAll(open(lane, touch, at, toWater));
            }
        }
        return List.copyOf(open);
    }

    /** Whether it may go into a water at a time: nothing open, not busy being treated or drying. */
    public boolean released(Lane lane, Instant at, String toWater) {
        return on(lane, at, toWater).isEmpty();
    }

    /** Waters of the round for which nothing stands against it at a time. */
    public List<String> releasedFor(Lane lane, Instant at) {
        return round.waters().stream()
                .map(Water::id)
                .filter(water -> released(lane, at, water))
                .toList();
    }

    private List<OpenExposure> open(Lane lane, Touch touch, Instant at, String toWater) {
        if (round.water(touch.water()).isEmpty()) {
            return wholly(lane, touch);
        }
        Turnaround asked = asked(lane, touch.water(), toWater);
        List<OpenExposure> open = new ArrayList<>();
        for (Turnaround.Uncovered gap : asked.uncovered()) {
            open.add(new OpenExposure(touch.water(), gap.pest(), gap.material(), touch.where(), touch.until()));
        }
        for (Turnaround.Cover cover : asked.covers()) {
            boolean gradeCounts = isProtected(toWater) || knownAt(touch.water()).contains(cover.pest());
            boolean covered = lane.treated().stream()
                    .filter(treated -> !treated.start().isBefore(touch.until()))
                    .flatMap(treated -> treated.credits().stream())
                    .anyMatch(credit -> !credit.from().isAfter(at) && does(credit.cover(), cover, gradeCounts));
            if (!covered) {
                open.add(new OpenExposure(touch.water(), cover.pest(), cover.material(), touch.where(), touch.until()));
            }
        }
        return open;
    }

    /** Of a place that no water holds nothing is known, so no cleaning clears it. */
    private static List<OpenExposure> wholly(Lane lane, Touch touch) {
        return lane.kit().materials().stream()
                .sorted()
                .map(material -> new OpenExposure(touch.water(), ANY_PEST, material, touch.where(), touch.until()))
                .toList();
    }

    private static boolean does(Turnaround.Cover done, Turnaround.Cover asked, boolean gradeCounts) {
        return done.pest().equals(asked.pest())
                && done.material() == asked.material()
                && (done.stage().isEmpty() || done.stage().equals(asked.stage()))
                && (!gradeCounts || done.grade().compareTo(asked.grade()) <= 0);
    }

    private Turnaround asked(Lane lane, String from, String to) {
        KitSet kit = lane.kit();
        Leg asked = new Leg(new TreeSet<>(kit.materials()), lane.item() ? kit.id() : "", from, to);
        return needed.computeIfAbsent(asked, leg -> item(lane)
                .map(item -> rules.needed(kit, item, List.of(from), to))
                .orElseGet(() -> rules.needed(kit, List.of(from), to)));
    }

    private Optional<StoreItem> item(Lane lane) {
        return round.store().items().stream()
                .filter(item -> lane.item() && item.id().equals(lane.id()))
                .findFirst();
    }

    private boolean isProtected(String water) {
        return round.water(water).map(Water::protectedWater).orElse(false);
    }

    private Set<String> knownAt(String water) {
        return known.computeIfAbsent(
                water, id -> PestsAtWater.of(round.biosecurity(), round.header().firstDay(), List.of(id))
                        .known());
    }

    /** The last treatment that had begun by then. */
    static Optional<Treated> lastTreated(Lane lane, Instant at) {
        return lane.treated().stream()
                .filter(treated -> !treated.start().isAfter(at))
                .max(Comparator.comparing(Treated::start));
    }
}
