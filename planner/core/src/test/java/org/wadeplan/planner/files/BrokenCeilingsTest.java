package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.files.BrokenRound.Case;
import org.wadeplan.planner.round.ElectricLimits;
import org.wadeplan.planner.round.Round;

/** Faults in what bounds current in water, from the ceilings to what was set last time. */
class BrokenCeilingsTest {

    private static final String FIRST = "0,1100,100,70,10,";
    private static final String BATTERY = "\"packWh\": 168, ";

    @TempDir
    Path temp;

    static Stream<Case> cases() {
        return Stream.concat(ceilings(), others());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void eachFaultGivesItsSentenceAndNoOther(Case broken) {
        assertThat(broken.fault().apply(BrokenRound.in(temp)).sentences())
                .containsExactlyElementsOf(broken.sentences());
    }

    private static Stream<Case> ceilings() {
        return Stream.of(
                new Case(
                        round -> round.with("voltage_ceilings.csv", FIRST, "0,1100,1200,70,10,"),
                        "ERROR start-above-ceiling voltage_ceilings.csv, line 2 (0), column voltage_start_v: \"1200\" is above the row's own ceiling, 1100. Allowed: a voltage up to voltage_max_v. Do: check both; they may be swapped"),
                new Case(
                        round -> round.with("voltage_ceilings.csv", FIRST, "0,-1100,100,70,10,"),
                        "ERROR out-of-range voltage_ceilings.csv, line 2 (0), column voltage_max_v: \"-1100\" is too low. Allowed: a number from 0 to 1200 V. Do: check the value and its unit"),
                new Case(
                        round -> round.with("voltage_ceilings.csv", FIRST, "0,,100,70,10,"),
                        "ERROR blank voltage_ceilings.csv, line 2 (0), column voltage_max_v: the cell is blank. Allowed: a value: this column is required. Do: fill it in"),
                new Case(
                        round -> round.plus("voltage_ceilings.csv", "300,350,100,70,10,\"second thought\""),
                        "ERROR duplicate voltage_ceilings.csv, line 5 (300), column conductivity_min_us_cm: \"300\" stands on line 4 already: voltage_max_v 400 there and 350 here; source invented agency rule, demo only; voltages after a guideline of 2000, from memory there and second thought here. Allowed: each once. Do: find out which row is right and delete or rename the other"));
    }

    private static Stream<Case> others() {
        return Stream.of(
                new Case(
                        round -> round.with("past_visits.csv", "60,4.0,24,215,65,", "60,4.0,24,-215,65,"),
                        "ERROR out-of-range past_visits.csv, line 2 (HSK-01 2024-09-02), column voltage_v: \"-215\" is too low. Allowed: a number from 0 to 1200 V. Do: check the value and its unit",
                        "WARNING settings-incomplete past_visits.csv, line 2 (HSK-01 2024-09-02): some of the unit's settings are known and some are not, so they count as not known. Allowed: frequency_hz, pulse_width_ms, duty_pct and voltage_v together, or none. Do: look them up in the field sheet"),
                new Case(
                        round -> round.with("past_visits.csv", "215,65,ambient,14.0", "215,65,meter,14.0"),
                        "ERROR word-unknown past_visits.csv, line 2 (HSK-01 2024-09-02), column conductivity_basis: \"meter\" is not a word known here. Allowed: ambient, 25C. Do: choose one of them"),
                new Case(
                        round -> round.with("past_visits.csv", "215,65,ambient,14.0", "215,65,ambient,57.2"),
                        "ERROR out-of-range past_visits.csv, line 2 (HSK-01 2024-09-02), column water_temp_c: \"57.2\" is too high. Allowed: a number from -5 to 40 °C. Do: check the value and its unit"),
                new Case(
                        round -> round.with("round.json", "\"stopC\": 23", "\"stopC\": 17"),
                        "ERROR limits-not-rising round.json, electricity: the limits do not rise. Allowed: lowUsCm, highUsCm, veryHighUsCm and coldC, warmC, stopC, none below the one before. Do: put them in order"),
                new Case(
                        round -> round.with("round.json", BATTERY, ""),
                        "ERROR json-key-missing round.json, battery.packWh: this key is missing. Allowed: a number from 1 to 5000 Wh. Do: add it"));
    }

    @Test
    void aRoundWithoutThemTakesTheDefaultsAndNoCeiling() {
        Round round = RoundReader.read(
                        BrokenRound.in(temp)
                                .with("round.json", "\"electricity\"", "\"electricity_not_yet\"")
                                .without("voltage_ceilings.csv")
                                .folder(),
                        Set.of())
                .value()
                .orElseThrow();
        assertThat(round.header().electric().limits()).isEqualTo(ElectricLimits.DEFAULT);
        assertThat(round.store().voltageCeilings()).isEmpty();
    }

    @Test
    void columnsThatCameLaterMayBeMissingWithoutAWord() {
        assertThat(BrokenRound.in(temp).sentences()).isEmpty();
    }
}
