package org.wadeplan.planner.effort;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.round.Conditions;
import org.wadeplan.planner.round.ConductivityRule;
import org.wadeplan.planner.round.Site;

/**
 * What the meter showed on arrival. A conductivity needs its basis: nobody can tell from a number whether it is ambient
 * or referred to 25 degrees C, so it is asked and never guessed.
 *
 * @param conductivityUsCm as shown, uS/cm
 * @param basis the word given: ambient or 25C; empty where none was
 * @param waterTempC degrees C
 */
public record ArrivalReading(OptionalDouble conductivityUsCm, Optional<String> basis, OptionalDouble waterTempC) {

    private static final double MOST_US_CM = 60_000;
    private static final double COLDEST_C = -5;
    private static final double WARMEST_C = 40;
    private static final String AMBIENT = "ambient";
    private static final String AT_25 = "25c";

    /** The site with what was read in place of what was planned, or everything that is wrong with the reading. */
    public Checked<Site> at(Site site, ConductivityRule rule) {
        List<Problem> problems = new ArrayList<>();
        conductivity().ifPresent(problems::add);
        basisFault().ifPresent(problems::add);
        temperature().ifPresent(problems::add);
        if (!problems.isEmpty()) {
            return Checked.failed(problems);
        }
        Conditions planned = site.conditions();
        OptionalDouble tempC = waterTempC.isPresent() ? waterTempC : planned.waterTempC();
        OptionalDouble ambient = conductivityUsCm.isPresent() ? ambient(tempC, rule) : planned.conductivityUsCm();
        return Checked.of(with(site, ambient, tempC));
    }

    private Optional<Problem> conductivity() {
        boolean fits = conductivityUsCm.isEmpty()
                || (conductivityUsCm.getAsDouble() > 0 && conductivityUsCm.getAsDouble() <= MOST_US_CM);
        return fits
                ? Optional.empty()
                : Optional.of(problem(
                        "reading-out-of-range",
                        "--conductivity",
                        Plain.number(conductivityUsCm.getAsDouble(), 2) + " µS/cm is no conductivity of a stream",
                        "above 0, up to 60000 µS/cm",
                        "read the meter again, and its unit: mS/cm times 1000 is µS/cm"));
    }

    private Optional<Problem> basisFault() {
        if (basis.isPresent() && !known(basis.get())) {
            return Optional.of(problem(
                    "basis-unknown",
                    "--basis",
                    "\"" + basis.get() + "\" is no basis of a conductivity",
                    "ambient, 25C",
                    "look on the meter: 25C where it shows specific conductance, ambient where it does not correct"));
        }
        return conductivityUsCm.isPresent() && basis.isEmpty()
                ? Optional.of(problem(
                        "basis-not-stated",
                        "--basis",
                        "nobody said which was read: ambient conductivity or specific conductance at 25 °C",
                        "ambient, 25C",
                        "look on the meter; in cold water the two differ by a third and more"))
                : Optional.empty();
    }

    private Optional<Problem> temperature() {
        if (waterTempC.isPresent()
                && !(waterTempC.getAsDouble() >= COLDEST_C && waterTempC.getAsDouble() <= WARMEST_C)) {
            return Optional.of(problem(
                    "reading-out-of-range",
                    "--water-temp",
                    Plain.number(waterTempC.getAsDouble(), 1) + " °C is no temperature of a stream",
                    "from -5 to 40 °C",
                    "read the thermometer again, and its unit"));
        }
        return specific() && waterTempC.isEmpty()
                ? Optional.of(problem(
                        "temperature-missing",
                        "--water-temp",
                        "a reading at 25 °C cannot be turned into ambient without the water's temperature",
                        "the water's temperature as measured, °C",
                        "measure it where the conductivity was read"))
                : Optional.empty();
    }

    private boolean specific() {
        return basis.filter(word -> word.toLowerCase(Locale.ROOT).equals(AT_25)).isPresent();
    }

    private static boolean known(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        return lower.equals(AMBIENT) || lower.equals(AT_25);
    }

    private OptionalDouble ambient(OptionalDouble tempC, ConductivityRule rule) {
        return specific()
                ? OptionalDouble.of(ConductivityConversion.of(rule)
                        .orElseThrow(() -> new IllegalArgumentException("No such rule: " + rule.name()))
                        .toAmbient(conductivityUsCm.orElseThrow(), tempC.orElseThrow())
                        .valueUsCm())
                : conductivityUsCm;
    }

    private static Problem problem(String code, String option, String found, String expected, String remedy) {
        return Problem.error(code, SourcePlace.file(option), found, expected, remedy);
    }

    private static Site with(Site site, OptionalDouble ambientUsCm, OptionalDouble tempC) {
        Conditions planned = site.conditions();
        return site.with(new Conditions(
                planned.widthM(),
                planned.wetState(),
                planned.depthVelocityM2S(),
                planned.maxDepthM(),
                planned.maxDepthSdM(),
                ambientUsCm,
                planned.conductivitySdUsCm(),
                planned.clarityM(),
                tempC));
    }
}
