package org.wadeplan.planner.files;

import org.wadeplan.planner.round.Light;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.VisitPart;

/** {@code method_parts.csv}: the parts of each method, with who and how long they take. */
final class MethodPartTable {

    static final TableKind<MethodPartTable.PartOf> KIND = TableKind.named("method_parts", "method part")
            .required("method part order light crew_min operators_min netters_min first_aiders_min "
                    + "in_water_min p50_fixed_min p50_per_width_m_min p80_factor source")
            .optional("latest_finish gap_min_min gap_max_min")
            .later("p50_per_fish_min")
            .makes(MethodPartTable::PartOf);

    private static final Words<VisitPart> PARTS = Words.of(VisitPart.class, VisitPart::word);
    private static final Words<Light> LIGHTS = Words.of(Light.class);
    private static final Range ORDER = Range.of(1, 20, "");
    private static final Range PEOPLE = Range.of(0, 50, "people");
    private static final Range FACTOR = Range.of(1, 10, "times the median");
    private static final Range PER_FISH_MIN = Range.of(0, 60, "minutes");
    private static final Range GAP_MIN = Range.of(0, 20_160, "minutes");

    private MethodPartTable() {}

    private static MethodPartTable.PartOf PartOf(Row row) {
        return new PartOf(
                row.text("method"),
                new MethodPart(
                        row.word("part", PARTS),
                        row.integer("order", ORDER),
                        row.word("light", LIGHTS),
                        row.optionalTime("latest_finish"),
                        row.integer("crew_min", PEOPLE),
                        row.integer("operators_min", PEOPLE),
                        row.integer("netters_min", PEOPLE),
                        row.integer("first_aiders_min", PEOPLE),
                        row.integer("in_water_min", Range.MINUTES_OF_DAY),
                        row.decimal("p50_fixed_min", Range.MINUTES_OF_DAY),
                        row.decimal("p50_per_width_m_min", Range.MINUTES_OF_DAY),
                        row.optionalDecimal("p50_per_fish_min", PER_FISH_MIN).orElse(0),
                        row.decimal("p80_factor", FACTOR),
                        row.optionalInteger("gap_min_min", GAP_MIN),
                        row.optionalInteger("gap_max_min", GAP_MIN),
                        row.text("source")));
    }

    /** A part with the method that it belongs to. */
    record PartOf(String method, MethodPart part) {}
}
