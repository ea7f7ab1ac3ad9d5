package org.wadeplan.planner.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.ConductivityRule;
import org.wadeplan.planner.round.Site;

class ArrivalReadingTest {

    private static final ConductivityRule LINEAR = new ConductivityRule("linear", 0.02, "invented");
    private static final OptionalDouble NOT_READ = OptionalDouble.empty();

    /** Demo scenario 4.6: a meter that shows 700 at 25 degrees means 609 in water of 18.5 degrees. */
    @Test
    void aReadingAt25DegreesIsTurnedIntoAmbient() {
        Site site = read(OptionalDouble.of(700), Optional.of("25C"), OptionalDouble.of(18.5))
                .value()
                .orElseThrow();
        assertThat(site.conditions().conductivityUsCm()).hasValueCloseTo(609.0, within(1e-9));
        assertThat(site.conditions().waterTempC()).hasValue(18.5);
        assertThat(site.conditions().widthM()).hasValue(4);
    }

    @Test
    void anAmbientReadingIsTakenAsItIs() {
        Site site = read(OptionalDouble.of(88), Optional.of("Ambient"), NOT_READ)
                .value()
                .orElseThrow();
        assertThat(site.conditions().conductivityUsCm()).hasValue(88);
        assertThat(site.conditions().waterTempC()).hasValue(15);
    }

    @Test
    void whatWasNotReadStaysAsPlanned() {
        Site site = read(NOT_READ, Optional.empty(), NOT_READ).value().orElseThrow();
        assertThat(site).isEqualTo(EffortFixture.site(96));
    }

    @Test
    void asksWhichWasReadAndNeverGuesses() {
        assertThat(sentences(read(OptionalDouble.of(700), Optional.empty(), OptionalDouble.of(18.5))))
                .containsExactly(
                        "--basis: nobody said which was read: ambient conductivity or specific conductance at 25"
                                + " °C. Allowed: ambient, 25C. Do: look on the meter; in cold water the two differ by a third and"
                                + " more");
    }

    @Test
    void saysEverythingThatIsWrongAtOnce() {
        assertThat(sentences(read(OptionalDouble.of(-5), Optional.of("meter"), OptionalDouble.of(99))))
                .containsExactlyInAnyOrder(
                        "--conductivity: -5 µS/cm is no conductivity of a stream. Allowed: above 0, up to 60000 µS/cm. Do:"
                                + " read the meter again, and its unit: mS/cm times 1000 is µS/cm",
                        "--basis: \"meter\" is no basis of a conductivity. Allowed: ambient, 25C. Do: look on the meter:"
                                + " 25C where it shows specific conductance, ambient where it does not correct",
                        "--water-temp: 99 °C is no temperature of a stream. Allowed: from -5 to 40 °C. Do: read the"
                                + " thermometer again, and its unit");
    }

    @Test
    void aReadingAt25DegreesNeedsTheTemperatureThatWasMeasuredWithIt() {
        assertThat(sentences(read(OptionalDouble.of(700), Optional.of("25c"), NOT_READ)))
                .containsExactly("--water-temp: a reading at 25 °C cannot be turned into ambient without the water's"
                        + " temperature. Allowed: the water's temperature as measured, °C. Do: measure it where the"
                        + " conductivity was read");
    }

    private static Checked<Site> read(OptionalDouble conductivity, Optional<String> basis, OptionalDouble tempC) {
        return new ArrivalReading(conductivity, basis, tempC).at(EffortFixture.site(96), LINEAR);
    }

    private static List<String> sentences(Checked<Site> refused) {
        assertThat(refused.value()).isEmpty();
        return refused.problems().stream().map(Problem::sentence).toList();
    }
}
