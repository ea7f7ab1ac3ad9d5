package org.wadeplan.geo.terrain;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * How steeply the stations of a window fall, and how sure that is.
 *
 * @param fromM chainage of the window's first station, metres
 * @param toM chainage of its last
 * @param percent slope of the straight line nearest to the falling course, 0 or more
 * @param leastPercent what the grid can tell: the largest slope that heights off by {@code strayM} could make out of nothing
 * @param strayM half a vertical step, or how far heights stray from the falling course where that is more, metres
 * @param riseM how much higher the last station is than the first in the straight line through the raw heights, metres
 * @param unknownShare share of stations without a height, 0 to 1
 */
record FallLine(
        double fromM,
        double toM,
        double percent,
        double leastPercent,
        double strayM,
        double riseM,
        double unknownShare) {

    /** Over the stations from one chainage to another, both taken outwards to the next station. */
    static FallLine over(LineProfile profile, double fromM, double toM, double verticalStepM) {
        int last = profile.stationCount() - 1;
        int first = (int) Math.max(0, Math.floor(fromM / profile.stepM() + 1e-9));
        int end = (int) Math.min(last, Math.ceil(toM / profile.stepM() - 1e-9));
        int[] known = IntStream.rangeClosed(first, end)
                .filter(station -> !Double.isNaN(profile.heightM(station)))
                .toArray();
        double unknown = 1 - (double) known.length / (end - first + 1);
        double[] raw = Arrays.stream(known)
                .mapToDouble(station -> profile.heightM(station))
                .toArray();
        double[] fit = MonotoneFit.falling(raw);
        double[] weights = weights(known, profile.stepM());
        double strayM = Math.max(verticalStepM / 2, strayM(raw, fit));
        double lengthM = (end - first) * profile.stepM();
        return new FallLine(
                first * profile.stepM(),
                end * profile.stepM(),
                -100 * dot(weights, fit) + 0.0,
                100 * strayM * Arrays.stream(weights).map(Math::abs).sum(),
                strayM,
                dot(weights, raw) * lengthM,
                unknown);
    }

    /** What each height counts in the slope of the least-squares line: distance from the middle over its sum of squares. */
    private static double[] weights(int[] stations, double stepM) {
        double middle = Arrays.stream(stations).average().orElse(0);
        double squares = Arrays.stream(stations)
                .mapToDouble(station -> (station - middle) * (station - middle))
                .sum();
        return Arrays.stream(stations)
                .mapToDouble(station -> squares == 0 ? 0 : (station - middle) / squares / stepM)
                .toArray();
    }

    private static double dot(double[] weights, double[] heights) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * heights[i];
        }
        return sum;
    }

    /** Root of the mean square of what the fit leaves over. */
    private static double strayM(double[] raw, double[] fit) {
        double squares = 0;
        for (int i = 0; i < raw.length; i++) {
            squares += (raw[i] - fit[i]) * (raw[i] - fit[i]);
        }
        return raw.length == 0 ? 0 : Math.sqrt(squares / raw.length);
    }

    double lengthM() {
        return toM - fromM;
    }

    /** Whether the slope stands out from what the grid's own coarseness could make. */
    boolean tells() {
        return percent >= leastPercent && percent > 0;
    }
}
