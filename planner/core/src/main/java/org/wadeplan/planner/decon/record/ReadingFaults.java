package org.wadeplan.planner.decon.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.planner.decon.AgentKind;
import org.wadeplan.planner.decon.Recipe;
import org.wadeplan.planner.decon.Words;
import org.wadeplan.planner.round.BathRecord;
import org.wadeplan.planner.round.CleaningRecord;

/** What was measured, against what one way of applying a treatment asks for. What was not measured was not reached. */
final class ReadingFaults {

    private final CleaningRecord record;
    private final Recipe recipe;
    private final Optional<BathRecord> bath;
    private final ClockWords clock;
    private final List<String> faults = new ArrayList<>();

    private ReadingFaults(CleaningRecord record, Recipe recipe, Optional<BathRecord> bath, ClockWords clock) {
        this.record = record;
        this.recipe = recipe;
        this.bath = bath;
        this.clock = clock;
    }

    static List<String> of(CleaningRecord record, Recipe recipe, Optional<BathRecord> bath, ClockWords clock) {
        ReadingFaults readings = new ReadingFaults(record, recipe, bath, clock);
        if (recipe.strength().isPresent()) {
            readings.strength(
                    recipe.strength().getAsDouble(), recipe.strengthBasis().orElse("(basis not stated)"));
        }
        if (recipe.tempC().isPresent()) {
            readings.temperature("start", record.tempStartC(), recipe.tempC().getAsDouble());
            readings.temperature("end", record.tempEndC(), recipe.tempC().getAsDouble());
        }
        if (recipe.kind() == AgentKind.CHEMICAL && !record.rinsed()) {
            readings.faults.add("it was not rinsed, which " + recipe.agent() + " asks for");
        }
        return List.copyOf(readings.faults);
    }

    private void strength(double target, String basis) {
        String asked = Words.number(target) + " " + basis;
        if (bath.isEmpty()) {
            faults.add("no bath on file is named, so nothing says what its readings are of (asked: " + asked + ")");
        } else {
            basis(bath.get(), basis, asked);
            latestReading(bath.get(), target, asked);
        }
        reading("start", record.strengthStart(), target, asked);
        reading("end", record.strengthEnd(), target, asked);
    }

    private void basis(BathRecord held, String basis, String asked) {
        Optional<String> stated = held.strengthBasis();
        if (stated.isEmpty()) {
            faults.add("bath " + held.id() + " states no basis of its strength (asked: " + asked + ")");
        } else if (!plain(stated.get()).equals(plain(basis))) {
            faults.add("bath " + held.id() + " is in " + stated.get() + ", and the row asks for " + asked
                    + ": the two cannot be compared");
        }
    }

    private void latestReading(BathRecord held, double target, String asked) {
        boolean weak = held.measuredStrength().isPresent()
                && held.measuredStrength().getAsDouble() < target
                && held.measuredAt().map(at -> !at.isAfter(record.endedAt())).orElse(true);
        if (weak) {
            faults.add("bath " + held.id() + " read "
                    + Words.number(held.measuredStrength().getAsDouble())
                    + held.measuredAt().map(at -> " at " + clock.at(at)).orElse("") + ", under its target of " + asked
                    + ": such a bath is tipped out");
        }
    }

    private void reading(String when, OptionalDouble found, double target, String asked) {
        if (found.isEmpty()) {
            faults.add("the strength at the " + when + " was not measured (asked: " + asked + ")");
        } else if (found.getAsDouble() < target) {
            faults.add(
                    "the strength at the " + when + " was " + Words.number(found.getAsDouble()) + ", under " + asked);
        }
    }

    private void temperature(String when, OptionalDouble found, double hold) {
        boolean cold = recipe.kind() == AgentKind.FREEZE;
        String asked = Words.number(hold) + " °C" + (cold ? " or colder" : "");
        if (found.isEmpty()) {
            faults.add("the temperature at the " + when + " was not measured (asked: " + asked + ")");
        } else if (cold ? found.getAsDouble() > hold : found.getAsDouble() < hold) {
            faults.add("the temperature at the " + when + " was " + Words.number(found.getAsDouble()) + " °C, and "
                    + asked + " must hold to the end");
        }
    }

    private static String plain(String basis) {
        return basis.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").strip();
    }
}
