package org.wadeplan.planner.files;

import org.wadeplan.planner.round.DayForecast;

/** {@code forecast.csv}: the weather expected, by day. */
final class ForecastTable {

    static final TableKind<DayForecast> KIND = TableKind.named("forecast", "date")
            .required("date source")
            .optional("air_temp_min_c air_temp_max_c humidity_pct wind_km_h rain_mm thunder")
            .mayAllBeAbsent()
            .makes(ForecastTable::day);

    private static final Range AIR_TEMP_C = Range.of(-60, 60, "°C");
    private static final Range WIND_KM_H = Range.of(0, 400, "km/h");
    private static final Range RAIN_MM = Range.of(0, 2000, "mm");

    private ForecastTable() {}

    private static DayForecast day(Row row) {
        return new DayForecast(
                row.date("date"),
                row.optionalDecimal("air_temp_min_c", AIR_TEMP_C),
                row.optionalDecimal("air_temp_max_c", AIR_TEMP_C),
                row.optionalDecimal("humidity_pct", Range.PERCENT),
                row.optionalDecimal("wind_km_h", WIND_KM_H),
                row.optionalDecimal("rain_mm", RAIN_MM),
                row.optionalFlag("thunder"),
                row.text("source"));
    }
}
