package org.wadeplan.geo.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.function.Function;
import org.wadeplan.geo.problem.Checked;

/** Draws places along lines so that they cover the frame evenly and every metre's chance is known. */
public final class BalancedDraw {

    /** Draws of simple random sampling to compare with; their figures scatter, so one alone would tell little. */
    private static final int SIMPLE_DRAWS = 9;

    private BalancedDraw() {}

    /**
     * Draws base and reserves.
     *
     * @return the draw; or every reason why it cannot be made: size below 1 or more than the frame has room for, reserves
     *     outside 25 to 100 %, nothing to draw from, strata that are unknown, too short or left without units
     */
    public static Checked<Draw> draw(DrawFrame frame, DrawDesign design) {
        SortedMap<String, Long> eligibleMm = frame.eligibleMm();
        return StratumSizes.of(design, eligibleMm).map(sizes -> draw(frame, design, sizes, eligibleMm));
    }

    private static Draw draw(
            DrawFrame frame, DrawDesign design, SortedMap<String, Integer> sizes, SortedMap<String, Long> eligibleMm) {
        List<StratumDraw> strata = new ArrayList<>();
        sizes.forEach((stratum, size) ->
                strata.add(StratumDraw.of(frame, stratum, size, eligibleMm.getOrDefault(stratum, 0L), design)));
        List<StratumRecord> records = new ArrayList<>();
        List<DrawnUnit> units = new ArrayList<>();
        int before = 0;
        for (StratumDraw stratum : strata) {
            records.add(stratum.record(design));
            units.addAll(stratum.drawn(design.reserves(stratum.size()), before));
            before += stratum.size();
        }
        return new Draw(design, frame.print(), frame.lengths(), records, units, balance(frame, strata, design.seed()));
    }

    private static BalanceRecord balance(DrawFrame frame, List<StratumDraw> strata, long seed) {
        FrameUnits all =
                FrameUnits.joined(strata.stream().map(StratumDraw::units).toList(), frame.lines());
        double[] probability = strata.stream()
                .map(StratumDraw::probabilities)
                .flatMapToDouble(Arrays::stream)
                .toArray();
        double figure = figure(all, strata, probability, StratumDraw::base);
        SplitMix64 random = SplitMix64.forPart(seed, "simple random draws to compare with");
        double sum = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int draw = 0; draw < SIMPLE_DRAWS; draw++) {
            double simple = figure(all, strata, probability, stratum -> stratum.simplyAtRandom(random));
            sum += simple;
            least = Math.min(least, simple);
            most = Math.max(most, simple);
        }
        return new BalanceRecord(figure, sum / SIMPLE_DRAWS, least, most, SIMPLE_DRAWS);
    }

    private static double figure(
            FrameUnits all, List<StratumDraw> strata, double[] probability, Function<StratumDraw, int[]> drawnOf) {
        List<Integer> drawn = new ArrayList<>();
        int before = 0;
        for (StratumDraw stratum : strata) {
            for (int unit : drawnOf.apply(stratum)) {
                drawn.add(before + unit);
            }
            before += stratum.units().count();
        }
        int[] numbers = drawn.stream().mapToInt(Integer::intValue).toArray();
        return SpatialBalance.of(numbers, all.eastM(), all.northM(), probability);
    }
}
