package org.wadeplan.planner.files;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.StoreState;

/** {@code kit_sets.csv}: things that go into the water together. */
final class KitSetTable {

    static final TableKind<KitSet> KIND = TableKind.named("kit_sets", "kit_set")
            .required("kit_set purpose materials state")
            .optional("exposed_to wet_since note")
            .makes(KitSetTable::kitSet);

    private static final Words<KitPurpose> PURPOSES = Words.of(KitPurpose.class);
    private static final Words<Material> MATERIALS = Words.of(Material.class);
    private static final Words<StoreState> STATES = Words.of(StoreState.class);

    private KitSetTable() {}

    private static KitSet kitSet(Row row) {
        return new KitSet(
                row.text("kit_set"),
                row.word("purpose", PURPOSES),
                materials(row),
                row.word("state", STATES),
                row.optionalList("exposed_to"),
                row.optionalInstant("wet_since"),
                row.optionalText("note"));
    }

    private static Set<Material> materials(Row row) {
        Set<Material> materials = new LinkedHashSet<>();
        for (String word : row.list("materials")) {
            Reading<Material> reading = MATERIALS.read(word);
            reading.value().ifPresent(materials::add);
            reading.fault().ifPresent(fault -> row.refuse("materials", fault));
        }
        return Collections.unmodifiableSet(materials);
    }
}
