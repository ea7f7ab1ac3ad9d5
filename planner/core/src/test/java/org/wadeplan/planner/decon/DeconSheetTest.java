package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.DeconTask;

class DeconSheetTest {

    private static final Round ROUND = DemoRound.resolved();
    private static final Instant START = Instant.parse("2027-09-07T17:50:00Z");

    private static DeconSheetFacts sheet(String kitSet, String from, String to) {
        Turnaround turnaround =
                new TransferRules(ROUND).needed(ROUND.store().kitSet(kitSet).orElseThrow(), List.of(from), to);
        Instant end = START.plus(Duration.ofMinutes(turnaround.crewMin()));
        return DeconSheet.of(
                ROUND,
                new DeconTask(
                        kitSet,
                        "B",
                        List.of(from),
                        START,
                        end,
                        end,
                        turnaround.steps(),
                        turnaround.covers(),
                        turnaround.reason()));
    }

    @Test
    void tellsHowHotToStartAndWhatToWriteDown() {
        DeconSheetFacts.Line dip = sheet("K4", "TOL", "PEL").lines().get(1);
        assertThat(dip.plannedStart()).isEqualTo(START.plus(Duration.ofMinutes(20)));
        assertThat(dip.target()).hasValue("60 °C");
        assertThat(dip.makeUp())
                .hasValueSatisfying(words ->
                        assertThat(words).startsWith("start at 68 °C lidded").contains("estimate"));
        assertThat(dip.boxes()).containsExactly("in, time", "out, time", "°C at start", "°C at end");
    }

    /** Ilvermoor scenario 4.4: 60 L at 20 g/L is 1.2 kg, tipped out after the day. */
    @Test
    void tellsHowMuchPowderGoesIn() {
        DeconSheetFacts.Line bath = sheet("K1", "BRN", "TOL").lines().get(1);
        assertThat(bath.makeUp()).hasValue("1.2 kg made up to 60 L; tip it out after the day");
        assertThat(bath.boxes())
                .contains("batch, expiry", "strength at start", "strength at end")
                .doesNotContain("°C at end");
    }

    @Test
    void carriesCautionsDisposalEvidenceAndTheVersionOfItsTables() {
        DeconSheetFacts sheet = sheet("K4", "TOL", "PEL");
        assertThat(sheet.cautions().stream().map(ChemicalCaution::id))
                .contains("scald", "battery-out", "not-clearance");
        assertThat(sheet.disposal()).contains("never into a stream");
        assertThat(sheet.pests()).containsExactly("ANY", "GSA");
        assertThat(sheet.evidence())
                .contains("GSA on absorbent items: hot-dip-60, grade A (invented agency sheet, demo only)");
        assertThat(sheet.ruleVersion()).contains("treatments.csv ").contains("water_pests.csv ");
        assertThat(sheet.signBoxes()).contains("checked by a second person, signature");
    }
}
