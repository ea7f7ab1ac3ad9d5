package org.wadeplan.planner.files;

import java.util.Collections;
import java.util.LinkedHashSet;
import org.wadeplan.planner.round.GearClass;
import org.wadeplan.planner.round.Immersion;
import org.wadeplan.planner.round.Material;

/** {@code gear_classes.csv}: what kinds of gear are made of and what they bear. */
final class GearClassTable {

    static final TableKind<GearClass> KIND = TableKind.named("gear_classes", "gear_class")
            .required("gear_class label material immersion freezing source")
            .optional("max_temp_c harmed_by water_g area_m2 drying_factor note")
            .mayAllBeAbsent()
            .makes(GearClassTable::gearClass);

    private static final Words<Material> MATERIALS = Words.of(Material.class);
    private static final Words<Immersion> IMMERSIONS = Words.of(Immersion.class);
    private static final Range TEMP_C = Range.of(0, 150, "°C");
    private static final Range WATER_G = Range.of(0, 100_000, "g");
    private static final Range AREA_M2 = Range.of(0.001, 100, "m²");
    private static final Range FACTOR = Range.of(0.1, 100, "times");

    private GearClassTable() {}

    private static GearClass gearClass(Row row) {
        return new GearClass(
                row.text("gear_class"),
                row.text("label"),
                row.word("material", MATERIALS),
                row.word("immersion", IMMERSIONS),
                row.optionalDecimal("max_temp_c", TEMP_C),
                Collections.unmodifiableSet(new LinkedHashSet<>(row.optionalList("harmed_by"))),
                row.flag("freezing"),
                row.optionalDecimal("water_g", WATER_G),
                row.optionalDecimal("area_m2", AREA_M2),
                row.optionalDecimal("drying_factor", FACTOR),
                row.optionalText("note"),
                row.text("source"));
    }
}
