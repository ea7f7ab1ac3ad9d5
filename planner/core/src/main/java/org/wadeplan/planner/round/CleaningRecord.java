package org.wadeplan.planner.round;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One treatment of one kit set as it was really done, typed in from the signed sheet.
 *
 * @param treatment a treatment of the round's table
 * @param mode how it was applied, which may differ from what was planned
 * @param bath the bath it lay in; empty where there was none
 * @param tempStartC the bath with the gear in, degrees C
 * @param picked whether every item was looked over and fragments picked off
 * @param dryAt when it was dry to the touch inside and out, as somebody found it; empty: not yet
 * @param overrideBy who let it go although this record does not clear it, with {@code overrideReason}
 */
public record CleaningRecord(
        String id,
        String kitSet,
        String treatment,
        TreatmentMode mode,
        Optional<String> bath,
        Instant startedAt,
        Instant endedAt,
        OptionalDouble tempStartC,
        OptionalDouble tempEndC,
        OptionalDouble strengthStart,
        OptionalDouble strengthEnd,
        boolean picked,
        boolean rinsed,
        Optional<Instant> dryAt,
        String operator,
        Optional<String> checker,
        Optional<String> overrideBy,
        Optional<String> overrideReason,
        Optional<String> note) {}
