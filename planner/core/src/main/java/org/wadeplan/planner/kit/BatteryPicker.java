package org.wadeplan.planner.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.planner.effort.BatteryNeed;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;

/**
 * Gives battery packs to the crews of one day, the healthiest first. A pack's health scales the button seconds it gives; a
 * pack whose health nobody measured counts last and as full, and the line says so. Packs are charged overnight, so none
 * serves two visits or two crews on one day.
 */
final class BatteryPicker {

    private static final double FULL_PCT = 100;

    private final List<StoreItem> left = new ArrayList<>();
    private final int chargers;

    /** Packs for one visit: those taken, and how many were needed. */
    record Packed(String site, List<StoreItem> packs, int needed, String words) {}

    BatteryPicker(Store store, List<StoreItem> fitPacks) {
        fitPacks.stream()
                .sorted(Comparator.comparingDouble(
                        (StoreItem pack) -> -pack.healthPct().orElse(0)))
                .forEach(left::add);
        this.chargers = (int) store.ofKind("charger").stream()
                .filter(item -> item.state() != StoreState.OUT_OF_SERVICE)
                .mapToDouble(StoreItem::quantity)
                .sum();
    }

    /** For each visit of the crew-day that electrofishes, in order. */
    List<Packed> of(CrewDay crewDay, List<VisitKit> visits, List<VisitEffort> efforts) {
        List<Packed> all = new ArrayList<>();
        for (Activity visit : crewDay.visits()) {
            for (VisitKit kit : visits) {
                boolean same = visit.site().filter(kit.site()::equals).isPresent()
                        && visit.part().filter(part -> part == kit.part()).isPresent();
                if (same && kit.batteryPacks() > 0) {
                    all.add(pack(kit, battery(kit.site(), efforts)));
                }
            }
        }
        return List.copyOf(all);
    }

    private Packed pack(VisitKit kit, Optional<BatteryNeed> need) {
        double askedS = need.map(n -> n.reserveFactor() * n.expectedShockS()).orElse(0.0);
        double usableS = need.map(n -> (double) n.usableSPerPack()).orElse(0.0);
        List<StoreItem> taken = new ArrayList<>();
        double givenS = 0;
        while (!left.isEmpty() && (taken.size() < kit.batteryPacks() || givenS < askedS)) {
            StoreItem pack = left.remove(0);
            taken.add(pack);
            givenS += usableS * pack.healthPct().orElse(FULL_PCT) / FULL_PCT;
        }
        int missing = usableS > 0 ? (int) Math.ceil(Math.max(0, askedS - givenS) / usableS) : 0;
        int needed = Math.max(kit.batteryPacks(), taken.size() + missing);
        return new Packed(kit.site(), List.copyOf(taken), needed, words(taken, givenS, askedS));
    }

    private String words(List<StoreItem> taken, double givenS, double askedS) {
        List<String> packs = taken.stream()
                .map(pack -> pack.id()
                        + (pack.healthPct().isPresent()
                                ? String.format(
                                        Locale.ROOT,
                                        " %.0f %%",
                                        pack.healthPct().getAsDouble())
                                : " (health not measured)"))
                .toList();
        int rounds = chargers == 0 ? 0 : (taken.size() + chargers - 1) / chargers;
        String charging = chargers == 0
                ? "no charger in the store"
                : "charge overnight: " + chargers + (chargers == 1 ? " charger, " : " chargers, ") + rounds
                        + (rounds == 1 ? " round" : " rounds");
        return String.format(
                Locale.ROOT,
                "battery pack (%s: %.0f s usable, %.0f s asked with reserve; %s)",
                String.join(", ", packs),
                givenS,
                askedS,
                charging);
    }

    private static Optional<BatteryNeed> battery(String site, List<VisitEffort> efforts) {
        return efforts.stream()
                .filter(effort -> effort.site().equals(site))
                .flatMap(effort -> effort.batteries().stream())
                .findFirst();
    }
}
