package org.wadeplan.planner.round;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/** The weather expected on a day, as somebody gave it to us. */
public record DayForecast(
        LocalDate date,
        OptionalDouble airTempMinC,
        OptionalDouble airTempMaxC,
        OptionalDouble humidityPct,
        OptionalDouble windKmH,
        OptionalDouble rainMm,
        Optional<Boolean> thunder,
        String source) {}
