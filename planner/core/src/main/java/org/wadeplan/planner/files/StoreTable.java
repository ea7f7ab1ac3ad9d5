package org.wadeplan.planner.files;

import java.util.List;
import org.wadeplan.planner.round.ItemDetail;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;

/** {@code store.csv}: every item and consumable; certificates stand in another table. */
final class StoreTable {

    static final TableKind<StoreItem> KIND = TableKind.named("store", "item")
            .required("item kind label quantity unit material state")
            .optional("kit_set state_note available_from available_until expires health_pct")
            .later("gear_class mass_kg exposed_to wet_since payload_kg charge_h")
            .makes(StoreTable::storeItem);

    private static final Range MASS_KG = Range.of(0, 10_000, "kg");
    private static final Range PAYLOAD_KG = Range.of(1, 10_000, "kg");
    private static final Range CHARGE_H = Range.of(0.1, 48, "h");
    private static final Words<Material> MATERIALS = Words.of(Material.class);
    private static final Words<StoreState> STATES = Words.of(StoreState.class);

    private StoreTable() {}

    private static StoreItem storeItem(Row row) {
        StoreItem item = new StoreItem(
                row.text("item"),
                row.text("kind"),
                row.text("label"),
                row.decimal("quantity", Range.COUNT),
                row.text("unit"),
                row.optionalText("kit_set"),
                row.word("material", MATERIALS),
                row.word("state", STATES),
                row.optionalText("state_note"),
                row.optionalInstant("available_from"),
                row.optionalInstant("available_until"),
                row.optionalDate("expires"),
                row.optionalDecimal("health_pct", Range.PERCENT),
                List.of(),
                new ItemDetail(
                        row.optionalText("gear_class"),
                        row.optionalDecimal("mass_kg", MASS_KG),
                        row.optionalList("exposed_to"),
                        row.optionalInstant("wet_since"),
                        row.optionalDecimal("payload_kg", PAYLOAD_KG),
                        row.optionalDecimal("charge_h", CHARGE_H)));
        Spans.check(row, "available_from", item.availableFrom(), "available_until", item.availableUntil());
        return item;
    }
}
