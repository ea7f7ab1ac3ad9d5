package org.wadeplan.geo.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.geo.reference.ReferenceTable;
import org.wadeplan.geo.reference.ReferenceTable.Row;

/** Published rules for lengths of reaches, and published regional curves of width. */
class ReachProtocolReferenceTest {

    private static final LengthRule.Widths USGS =
            new LengthRule.Widths(20, 150, 300, Optional.of(new LengthRule.WideCap(30, 500)));
    private static final LengthRule.Widths NATIONAL_SURVEY = new LengthRule.Widths(40, 150, 4000, Optional.empty());

    static List<Row> lengths() {
        return ReferenceTable.rows("reach/lengths.csv");
    }

    static List<Row> curves() {
        return ReferenceTable.rows("reach/width_curves.csv");
    }

    @ParameterizedTest
    @MethodSource("lengths")
    void lengthByWidthIsThePublishedOne(Row row) {
        LengthRule.Widths rule = row.text("rule").startsWith("20x") ? USGS : NATIONAL_SURVEY;

        assertThat(rule.lengthM(row.number("width_m"))).isEqualTo(row.number("length_m"));
    }

    @ParameterizedTest
    @MethodSource("curves")
    void widthByAreaIsThePublishedOne(Row row) {
        WidthCurve curve = new WidthCurve(
                row.number("coefficient"),
                row.number("exponent"),
                WidthCurve.AreaUnit.valueOf(row.text("area_unit")),
                WidthCurve.WidthUnit.valueOf(row.text("width_unit")),
                OptionalDouble.empty(),
                row.text("source"));

        assertThat(curve.width(OptionalDouble.of(row.number("area_km2")), OptionalDouble.empty())
                        .orElseThrow()
                        .widthM())
                .isEqualTo(row.number("width_m"), within(row.number("tolerance_m")));
    }
}
