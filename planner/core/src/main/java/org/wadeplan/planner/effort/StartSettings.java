package org.wadeplan.planner.effort;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.wadeplan.planner.round.ElectricSettings;
import org.wadeplan.planner.round.VoltageCeiling;

/**
 * The settings to start from: last visit's, with advice for today's water beside them. Advice is never an order: start
 * low and raise only as far as fish need.
 *
 * @param last what was used last time
 * @param lastDate when
 * @param lastAmbientUsCm ambient conductivity then, uS/cm
 * @param todayAmbientUsCm ambient conductivity expected, uS/cm
 * @param adviceVoltageV the last voltage rescaled by power transfer to today's conductivity, never above the ceiling; empty
 *     where none is advised
 * @param explanation the sum, in words, with its source
 * @param cautions what to mind: a stop or a ceiling reached, low or high conductivity, warm or cold water, large salmonids
 * @param ceiling the round's own ceiling for today's water; empty where no row covers it
 */
public record StartSettings(
        ElectricSettings last,
        LocalDate lastDate,
        OptionalDouble lastAmbientUsCm,
        OptionalDouble todayAmbientUsCm,
        OptionalInt adviceVoltageV,
        String explanation,
        List<String> cautions,
        Optional<VoltageCeiling> ceiling) {}
