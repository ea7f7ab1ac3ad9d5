package org.wadeplan.planner.decon;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.planner.round.GearClass;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.StoreItem;

/**
 * Items of a kit set that are alike for cleaning: the same material and the same limits.
 *
 * @param material of the store's and the gear class's word the more absorbent one
 * @param gear what they bear; empty: not known
 * @param kinds the store's words for them, such as {@code wader}; none where only the material is on record
 */
public record ItemKind(Material material, Optional<GearClass> gear, List<String> kinds) {

    private static final Comparator<ItemKind> ORDER =
            Comparator.comparing(ItemKind::material).thenComparing(ItemKind::words);

    /** Anything of that material, of which no more is known. */
    static ItemKind anythingOf(Material material) {
        return new ItemKind(material, Optional.empty(), List.of());
    }

    static List<ItemKind> anythingOf(Collection<Material> materials) {
        return new TreeSet<>(materials).stream().map(ItemKind::anythingOf).toList();
    }

    /** One item by itself. */
    static ItemKind alone(StoreItem item, List<GearClass> classes) {
        Optional<GearClass> gear = gearOf(item, classes);
        return new ItemKind(materialOf(item, gear), gear, List.of(item.kind()));
    }

    private static Optional<GearClass> gearOf(StoreItem item, List<GearClass> classes) {
        return item.detail().gearClass().flatMap(id -> classes.stream()
                .filter(one -> one.id().equals(id))
                .findFirst());
    }

    private static Material materialOf(StoreItem item, Optional<GearClass> gear) {
        return gear.map(GearClass::material)
                .filter(of -> of.compareTo(item.material()) > 0)
                .orElse(item.material());
    }

    /** What is in a kit set, by material, then name; a material of the set without an item stands for itself. */
    static List<ItemKind> in(KitSet kitSet, List<StoreItem> items, List<GearClass> classes) {
        Map<ItemKind, Set<String>> kinds = new LinkedHashMap<>();
        for (StoreItem item : items) {
            if (item.kitSet().filter(kitSet.id()::equals).isPresent()) {
                Optional<GearClass> gear = gearOf(item, classes);
                kinds.computeIfAbsent(new ItemKind(materialOf(item, gear), gear, List.of()), key -> new TreeSet<>())
                        .add(item.kind());
            }
        }
        List<ItemKind> all = new ArrayList<>();
        kinds.forEach((kind, words) -> all.add(new ItemKind(kind.material(), kind.gear(), List.copyOf(words))));
        kitSet.materials().stream()
                .filter(material -> all.stream().noneMatch(kind -> kind.material() == material))
                .forEach(material -> all.add(anythingOf(material)));
        all.sort(ORDER);
        return List.copyOf(all);
    }

    /** {@code bucket and stake}; empty where only the material is on record. */
    String words() {
        return kinds.isEmpty() ? "" : Words.list(kinds);
    }
}
