package org.wadeplan.planner.effort;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.planner.effort.Compared.Likeness;
import org.wadeplan.planner.round.Conditions;
import org.wadeplan.planner.round.PastVisit;

/** Last visit's water and settings beside today's. */
final class ComparedSettings {

    /** Two readings of one water differ by about so much from meter to meter; ours. */
    private static final double LIKE_SHARE = 0.05;

    private static final double LIKE_C = 1;

    private ComparedSettings() {}

    static List<Compared> of(StartSettings start, Optional<PastVisit> visit, Conditions today) {
        return List.of(
                number(
                        "ambient conductivity",
                        start.lastAmbientUsCm(),
                        start.todayAmbientUsCm(),
                        "µS/cm",
                        LIKE_SHARE * start.lastAmbientUsCm().orElse(0)),
                number(
                        "water temperature",
                        visit.map(PastVisit::waterTempC).orElse(OptionalDouble.empty()),
                        today.waterTempC(),
                        "°C",
                        LIKE_C),
                voltage(start),
                kept("frequency", start.last().frequencyHz(), "Hz"),
                kept("pulse", start.last().pulseWidthMs(), "ms"),
                kept("duty", start.last().dutyPct(), "%"));
    }

    private static Compared number(String what, OptionalDouble last, OptionalDouble today, String unit, double like) {
        String lastWords = words(last, unit);
        String todayWords = words(today, unit);
        if (last.isEmpty() || today.isEmpty()) {
            return new Compared(what, lastWords, todayWords, Likeness.NOT_KNOWN, "");
        }
        double change = today.getAsDouble() - last.getAsDouble();
        boolean same = Math.abs(change) <= like;
        return new Compared(
                what, lastWords, todayWords, same ? Likeness.SAME : Likeness.DIFFERS, signed(change, 1) + " " + unit);
    }

    private static Compared voltage(StartSettings start) {
        String last = Plain.number(start.last().voltageV(), 0) + " V";
        if (start.adviceVoltageV().isEmpty()) {
            return new Compared("voltage", last, "none advised", Likeness.NOT_KNOWN, "");
        }
        double change = start.adviceVoltageV().getAsInt() - start.last().voltageV();
        return new Compared(
                "voltage",
                last,
                "advice " + start.adviceVoltageV().getAsInt() + " V",
                change == 0 ? Likeness.SAME : Likeness.DIFFERS,
                signed(change, 0) + " V");
    }

    private static Compared kept(String what, double last, String unit) {
        String words = Plain.number(last, 2) + " " + unit;
        return new Compared(what, words, "keep " + words, Likeness.SAME, "");
    }

    private static String words(OptionalDouble value, String unit) {
        return value.isPresent() ? Plain.number(value.getAsDouble(), 1) + " " + unit : Compared.UNKNOWN;
    }

    private static String signed(double change, int decimals) {
        String number = Plain.number(change, decimals);
        return change > 0 && !number.equals("0") ? "+" + number : number;
    }
}
