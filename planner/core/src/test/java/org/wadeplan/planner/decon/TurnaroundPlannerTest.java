package org.wadeplan.planner.decon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.round.WaterPest;

/** The recipes of the Ilvermoor scenario, section 4.4 and trouble 9 of section 4.9. */
class TurnaroundPlannerTest {

    private static final Round ROUND = DemoRound.resolved();
    private static final TurnaroundTable TABLE = TurnaroundPlanner.table(ROUND);

    private static Turnaround turnaround(String kitSet, String from, String to) {
        return TABLE.find(kitSet, from, to).orElseThrow();
    }

    private static String steps(Turnaround turnaround) {
        return turnaround.steps().stream()
                .map(step -> step.step() + " " + step.minutes())
                .collect(Collectors.joining(", "));
    }

    @ParameterizedTest
    @CsvSource({
        "K1, BRN, TOL, 'brush 20, soak 20, rinse 10, hang 10, dry 720', 60",
        "K4, HSK, TOL, 'brush 20, soak 20, rinse 10, hang 10, dry 720', 60",
        "K4, TOL, PEL, 'brush 20, soak 40, rinse 30, dry 720', 90",
        "K3, TOL, OUN-U, 'brush 20, soak 40, rinse 30, dry 720', 90",
        "K5, PEL, BRN, 'brush 20, pick 15, soak 15, rinse 10, hang 15, dry 720', 75",
        "K2, OUN-U, OUN-L, 'brush 20, soak 20, rinse 10, hang 10, dry 720', 60",
        "K1, BRN, BRN, 'check-rinse 15', 15"
    })
    void givesTheRecipesOfTheScenario(String kitSet, String from, String to, String steps, int crewMin) {
        Turnaround turnaround = turnaround(kitSet, from, to);
        assertThat(steps(turnaround)).isEqualTo(steps);
        assertThat(turnaround.crewMin()).isEqualTo(crewMin);
        assertThat(turnaround.unattendedMin()).isEqualTo(from.equals(to) ? 0 : 720);
        assertThat(turnaround.possible()).isTrue();
    }

    @Test
    void soaksAgainstTheCombSnailAndRefusesTheSpray() {
        Turnaround turnaround = turnaround("K1", "OUN-L", "TOL");
        assertThat(steps(turnaround)).contains("soak 15").doesNotContain("spray");
        assertThat(turnaround.reason()).contains("oxidiser-spray (spray) is refused for CSN: tested and not effective");
    }

    @Test
    void namesTargetsAndPlaces() {
        assertThat(turnaround("K4", "TOL", "PEL").steps())
                .anySatisfy(step -> assertThat(step.target()).hasValue("60 °C"))
                .anySatisfy(step -> assertThat(step.resource()).hasValue("hot-bay"));
        assertThat(turnaround("K1", "BRN", "TOL").steps())
                .anySatisfy(step -> assertThat(step.target()).hasValue("20 g/L product"))
                .anySatisfy(step -> assertThat(step.resource()).hasValue("oxidiser-tub"));
    }

    @Test
    void latticeWeedFoundInTheTollowAddsTheFifteenMinutesOfPicking() {
        Round found = withPest(new WaterPest(
                "TOL", "LTW", WaterPest.PestStatus.KNOWN, ROUND.header().firstDay(), "event"));
        Turnaround turnaround =
                new TransferRules(found).needed(found.store().kitSet("K4").orElseThrow(), List.of("TOL"), "PEL");
        assertThat(steps(turnaround)).isEqualTo("brush 20, pick 15, soak 40, rinse 30, dry 720");
        assertThat(turnaround.crewMin()).isEqualTo(105);
    }

    private static Round withPest(WaterPest row) {
        Biosecurity old = ROUND.biosecurity();
        List<WaterPest> rows = new ArrayList<>(old.waterPests());
        rows.add(row);
        Biosecurity biosecurity =
                new Biosecurity(old.pests(), List.copyOf(rows), old.treatments(), old.steps(), old.resources());
        return RoundCopies.with(ROUND, "biosecurity", biosecurity);
    }

    @Test
    void hasEveryKitSetAndOrderedPairOfWatersOnce() {
        List<String> keys = new ArrayList<>();
        for (KitSet kitSet : ROUND.store().kitSets()) {
            for (Water from : ROUND.waters()) {
                ROUND.waters().forEach(to -> keys.add(kitSet.id() + " " + from.id() + " " + to.id()));
            }
        }
        assertThat(TABLE.rows().stream().map(row -> row.kitSet() + " " + row.fromWater() + " " + row.toWater()))
                .containsExactlyElementsOf(keys);
        assertThat(TABLE.rows()).allSatisfy(row -> assertThat(row.possible()).isTrue());
    }

    @Test
    void comesOutTheSameEveryTime() {
        assertThat(TurnaroundPlanner.table(ROUND)).isEqualTo(TABLE);
    }
}
