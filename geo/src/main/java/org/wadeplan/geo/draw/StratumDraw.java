package org.wadeplan.geo.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The draw within one stratum: twice the size at first, then half of that as the base.
 *
 * <p>The first draw is always for as many reserves as base units, however few are asked for: so more reserves never change
 * the base nor the reserves before them.
 */
final class StratumDraw {

    /** A unit is at most this part of the mean length between base units: twice the draw then still has room. */
    private static final int UNITS_A_GAP = 4;

    private final String stratum;
    private final int size;
    private final FrameUnits units;
    private final long seed;
    private final int[] base;
    private final int[] reserves;

    private StratumDraw(String stratum, int size, FrameUnits units, long seed) {
        this.stratum = stratum;
        this.size = size;
        this.units = units;
        this.seed = seed;
        SplitMix64 random = SplitMix64.forPart(seed, stratum);
        int[] both = LocalPivot.draw(units.shares(2 * size), units.allMm(), units.eastM(), units.northM(), random);
        NestedOrder nested = new NestedOrder(units.eastM(), units.northM(), random);
        int[] split = nested.drawnFirst(both, size);
        this.base = nested.order(Arrays.copyOf(split, size));
        this.reserves = nested.order(Arrays.copyOfRange(split, size, split.length));
    }

    static StratumDraw of(DrawFrame frame, String stratum, int size, long lengthMm, DrawDesign design) {
        long longestMm = Math.min(Math.round(design.longestUnitM() * 1000), lengthMm / ((long) UNITS_A_GAP * size));
        return new StratumDraw(stratum, size, FrameUnits.of(frame, stratum, Math.max(1, longestMm)), design.seed());
    }

    FrameUnits units() {
        return units;
    }

    /** Numbers of the base units, in order. */
    int[] base() {
        return base.clone();
    }

    /** Numbers of all reserves, as many as base units, in order. */
    int[] reserves() {
        return reserves.clone();
    }

    int size() {
        return size;
    }

    /** The chance of each unit to be in the base. */
    double[] probabilities() {
        double[] probability = new double[units.count()];
        for (int unit = 0; unit < probability.length; unit++) {
            probability[unit] = probability(unit);
        }
        return probability;
    }

    private double probability(int unit) {
        return size * (double) units.lengthMm(unit) / units.allMm();
    }

    /** As many units drawn simply at random by length, each at most once. */
    int[] simplyAtRandom(SplitMix64 random) {
        long[] endMm = new long[units.count()];
        long sumMm = 0;
        for (int unit = 0; unit < endMm.length; unit++) {
            sumMm += units.lengthMm(unit);
            endMm[unit] = sumMm;
        }
        int[] drawn = new int[size];
        boolean[] taken = new boolean[endMm.length];
        int count = 0;
        while (count < size) {
            int found = Arrays.binarySearch(endMm, random.below(sumMm) + 1);
            int unit = found >= 0 ? found : -found - 1;
            if (!taken[unit]) {
                taken[unit] = true;
                drawn[count++] = unit;
            }
        }
        return drawn;
    }

    StratumRecord record(DrawDesign design) {
        double balance = SpatialBalance.of(base, units.eastM(), units.northM(), probabilities());
        long longestMm = 0;
        for (int unit = 0; unit < units.count(); unit++) {
            longestMm = Math.max(longestMm, units.lengthMm(unit));
        }
        return new StratumRecord(
                stratum,
                units.allMm() / 1000.0,
                size,
                design.reserves(size),
                weightM(),
                units.count(),
                longestMm / 1000.0,
                balance);
    }

    private double weightM() {
        return units.allMm() / 1000.0 / size;
    }

    /**
     * Base, then as many reserves as asked for.
     *
     * @param before number of base units in the strata before this one, so that codes run on
     */
    List<DrawnUnit> drawn(int reserveCount, int before) {
        SplitMix64 random = SplitMix64.forPart(seed, stratum + " place in the unit");
        List<DrawnUnit> drawn = new ArrayList<>();
        for (int turn = 0; turn < size; turn++) {
            drawn.add(unit(base[turn], DrawnUnit.Role.BASE, turn, before, random));
        }
        for (int turn = 0; turn < reserveCount; turn++) {
            drawn.add(unit(reserves[turn], DrawnUnit.Role.RESERVE, turn, before, random));
        }
        return drawn;
    }

    private DrawnUnit unit(int unit, DrawnUnit.Role role, int turn, int before, SplitMix64 random) {
        int line = units.line(unit);
        long atMm = units.fromMm(unit) + random.below(units.lengthMm(unit));
        String code = String.format(Locale.ROOT, "%s%03d", role == DrawnUnit.Role.BASE ? "D" : "R", before + turn + 1);
        return new DrawnUnit(
                code,
                role,
                stratum,
                turn + 1,
                line,
                units.chainageM(line, atMm),
                units.at(line, atMm),
                units.fromMm(unit) / 1000.0,
                units.lengthMm(unit) / 1000.0,
                probability(unit),
                weightM());
    }
}
