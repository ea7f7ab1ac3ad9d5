package org.wadeplan.geo.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.draw.DrawnUnit.Role;

class BalancedDrawTest {

    private static final DrawFrame WHOLE = DrawFrames.INVENTED.whole();
    private static final DrawFrame BY_SIZE = DrawFrames.INVENTED.byOrder();

    private static DrawDesign design(int size, int reservePct, Allocation allocation, long seed) {
        return new DrawDesign(size, reservePct, allocation, DrawDesign.USUAL_UNIT_M, 150, seed);
    }

    private static Draw draw(DrawFrame frame, DrawDesign design) {
        return BalancedDraw.draw(frame, design).value().orElseThrow();
    }

    private static List<DrawnUnit> units(Draw draw, Role role) {
        return draw.units().stream().filter(unit -> unit.role() == role).toList();
    }

    @Test
    void theSameSeedGivesTheSameDrawAndAnotherGivesAnother() {
        Draw first = draw(WHOLE, design(20, 50, new Allocation.Proportional(), 5));

        assertThat(draw(WHOLE, design(20, 50, new Allocation.Proportional(), 5)))
                .isEqualTo(first);
        assertThat(draw(WHOLE, design(20, 50, new Allocation.Proportional(), 6)).units())
                .isNotEqualTo(first.units());
    }

    /** Pinned, so that a change to the draw on any machine or in any version is seen. */
    @Test
    void theDrawOfSeed20270906IsTheOneOnRecord() {
        Draw draw = draw(WHOLE, design(4, 50, new Allocation.Proportional(), 20270906));

        assertThat(draw.units().stream()
                        .map(unit -> unit.code() + " " + WHOLE.lines().id(unit.line()) + " "
                                + Math.round(unit.chainageM() * 1000))
                        .toList())
                .containsExactly(
                        "D001 L17-9-28 599748",
                        "D002 L7-24-20 1288668",
                        "D003 L27-11-93 1752837",
                        "D004 L4-10-8 676627",
                        "R001 L11-25-5 633414",
                        "R002 L19-5-7 830457");
    }

    @Test
    void moreReservesChangeNeitherTheBaseNorTheReservesBeforeThem() {
        Draw few = draw(BY_SIZE, design(21, 25, new Allocation.Equal(), 9));
        Draw many = draw(BY_SIZE, design(21, 100, new Allocation.Equal(), 9));

        assertThat(units(few, Role.BASE)).hasSize(21).isEqualTo(units(many, Role.BASE));
        assertThat(units(few, Role.RESERVE)).hasSize(6);
        assertThat(units(many, Role.RESERVE)).hasSize(21).containsAll(units(few, Role.RESERVE));
    }

    @Test
    void noUnitIsDrawnTwiceAndCodesAreShortAndDiffer() {
        Draw draw = draw(BY_SIZE, design(60, 100, new Allocation.Proportional(), 2));
        Set<String> places = draw.units().stream()
                .map(unit -> unit.line() + " " + unit.unitFromM())
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> codes = draw.units().stream().map(DrawnUnit::code).collect(Collectors.toCollection(TreeSet::new));

        assertThat(places).hasSize(120);
        assertThat(codes).hasSize(120).contains("D001", "D060", "R001", "R060");
    }

    @Test
    void everyUnitStatesItsChanceAndWhatItStandsFor() {
        Draw draw = draw(BY_SIZE, design(30, 25, new Allocation.Equal(), 4));

        for (StratumRecord stratum : draw.strata()) {
            assertThat(stratum.size()).isEqualTo(15);
            assertThat(stratum.reserves()).isEqualTo(4);
            assertThat(stratum.weightM()).isEqualTo(stratum.lengthM() / 15, within(1e-9));
        }
        for (DrawnUnit unit : draw.units()) {
            StratumRecord own = draw.strata().stream()
                    .filter(stratum -> stratum.stratum().equals(unit.stratum()))
                    .findFirst()
                    .orElseThrow();
            assertThat(unit.inclusionProbability()).isEqualTo(15 * unit.unitLengthM() / own.lengthM(), within(1e-12));
            assertThat(unit.weightM()).isEqualTo(own.weightM());
            assertThat(unit.chainageM()).isBetween(unit.unitFromM(), unit.unitFromM() + unit.unitLengthM());
            assertThat(unit.at()).isEqualTo(BY_SIZE.lines().at(unit.line(), unit.chainageM()));
        }
        assertThat(draw.strata().stream().mapToDouble(StratumRecord::lengthM).sum())
                .isEqualTo(draw.frame().eligibleM(), within(1e-6));
    }

    @Test
    void whatHappensInOneStratumLeavesTheOthersAlone() {
        List<DrawnUnit> alone = draw(BY_SIZE, design(30, 25, given(10, 20), 4)).units();
        List<DrawnUnit> fewer = draw(BY_SIZE, design(25, 25, given(10, 15), 4)).units();

        assertThat(inStratum(fewer, "large")).isEqualTo(inStratum(alone, "large"));
        assertThat(inStratum(fewer, "small")).isNotEqualTo(inStratum(alone, "small"));
    }

    private static Allocation given(int large, int small) {
        return new Allocation.Given(Map.of("large", large, "small", small));
    }

    private static List<DrawnUnit> inStratum(List<DrawnUnit> units, String stratum) {
        return units.stream().filter(unit -> unit.stratum().equals(stratum)).toList();
    }

    @Test
    void aFrameThatHasJustRoomIsDrawnFrom() {
        DrawFrame tight = FrameCutter.cut(
                WHOLE.lines(),
                List.of(),
                IntStream.range(1, WHOLE.lines().lineCount())
                        .mapToObj(line ->
                                new FrameCutter.Exclusion(line, 0, WHOLE.lines().lengthM(line), Standing.DRY, "dry"))
                        .toList());
        int room = (int) (WHOLE.lines().lengthM(0) / 300);

        assertThat(draw(tight, design(room, 100, new Allocation.Proportional(), 1))
                        .units())
                .hasSize(2 * room);
        assertThat(BalancedDraw.draw(tight, design(room + 1, 100, new Allocation.Proportional(), 1))
                        .problems())
                .extracting(problem -> problem.code())
                .containsExactly("draw-size-over-frame");
    }

    @Test
    void theMeaningOfABalanceFollowsFromWhatChanceGivesOnTheSameFrame() {
        assertThat(new BalanceRecord(0.1, 0.35, 0.2, 0.5, 9).meaning())
                .isEqualTo("Balance 0.100 (0 is perfect). Simple random draws of the same size from the same frame:"
                        + " mean 0.350, from 0.200 to 0.500 in 9 draws. So the draw covers the frame far more evenly"
                        + " than chance would.");
        assertThat(new BalanceRecord(0.25, 0.35, 0.2, 0.5, 9).meaning()).contains("somewhat more evenly");
        assertThat(new BalanceRecord(0.35, 0.35, 0.2, 0.5, 9).meaning()).contains("hardly more evenly");
        assertThat(new BalanceRecord(0, 0, 0, 0, 9).meaning()).contains("single unit");
    }
}
