package org.wadeplan.planner.effort;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;

/**
 * Which of the store's packs would do for one visit alone, the healthiest first. A pack gives its health's share of the
 * seconds of a healthy one; where nobody measured it, it counts as full and comes last.
 *
 * @param packs ids, in the order in which they are taken
 * @param givenS button seconds that they give together
 * @param askedS button seconds asked, the reserve included
 */
public record PackHealth(List<String> packs, double givenS, double askedS, String words) {

    private static final String PACK = "battery-pack";

    /** False where the whole store does not hold what is asked. */
    public boolean enough() {
        return givenS >= askedS;
    }

    static PackHealth of(List<StoreItem> store, BatteryNeed need) {
        List<StoreItem> fit = store.stream()
                .filter(item -> item.kind().equals(PACK) && item.state() != StoreState.OUT_OF_SERVICE)
                .sorted(Comparator.comparingDouble(
                                (StoreItem pack) -> -pack.healthPct().orElse(0))
                        .thenComparing(StoreItem::id))
                .toList();
        double askedS = need.reserveFactor() * need.expectedShockS();
        List<StoreItem> taken = new ArrayList<>();
        double givenS = 0;
        for (StoreItem pack : fit) {
            if (givenS >= askedS && taken.size() >= need.packs()) {
                break;
            }
            taken.add(pack);
            givenS += need.usableSPerPack() * pack.healthPct().orElse(100) / 100;
        }
        return new PackHealth(taken.stream().map(StoreItem::id).toList(), givenS, askedS, words(taken, givenS, askedS));
    }

    private static String words(List<StoreItem> taken, double givenS, double askedS) {
        String packs = taken.stream().map(PackHealth::words).collect(Collectors.joining(", "));
        return (taken.isEmpty() ? "no pack in service" : packs) + ": " + Plain.number(givenS, 0)
                + " s by their health, "
                + Plain.number(askedS, 0) + " s asked with the reserve"
                + (givenS >= askedS ? "" : ": NOT ENOUGH");
    }

    private static String words(StoreItem pack) {
        return pack.id()
                + (pack.healthPct().isPresent()
                        ? " " + Plain.number(pack.healthPct().getAsDouble(), 0) + " %"
                        : " (health not measured)");
    }
}
