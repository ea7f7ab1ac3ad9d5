package org.wadeplan.geo.draw;

import java.util.Arrays;
import java.util.List;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;

/**
 * One stratum of a frame in short units: what the draw picks from. A unit's place is its middle, to the millimetre.
 *
 * <p>Each stretch falls into as few equal units as keep within the longest length, so no metre of stream is left over and
 * units of one stretch differ by a millimetre at most.
 */
final class FrameUnits {

    private final LineSet lines;
    private int[] line = new int[1024];
    private long[] fromMm = new long[1024];
    private long[] lengthMm = new long[1024];
    private double[] eastM = new double[1024];
    private double[] northM = new double[1024];
    private int count;
    private long allMm;

    private FrameUnits(LineSet lines) {
        this.lines = lines;
    }

    /** The eligible stretches of a stratum, cut. */
    static FrameUnits of(DrawFrame frame, String stratum, long longestMm) {
        FrameUnits units = new FrameUnits(frame.lines());
        for (FrameStretch stretch : frame.stretches()) {
            if (stretch.standing() == Standing.ELIGIBLE && stretch.stratum().equals(stratum)) {
                units.cut(stretch, longestMm);
            }
        }
        units.trim();
        return units;
    }

    /** Units of several strata in a row. */
    static FrameUnits joined(List<FrameUnits> strata, LineSet lines) {
        FrameUnits all = new FrameUnits(lines);
        for (FrameUnits stratum : strata) {
            for (int unit = 0; unit < stratum.count; unit++) {
                all.add(
                        stratum.line[unit],
                        stratum.fromMm[unit],
                        stratum.lengthMm[unit],
                        stratum.eastM[unit],
                        stratum.northM[unit]);
            }
        }
        all.trim();
        return all;
    }

    private void cut(FrameStretch stretch, long longestMm) {
        long stretchMm = stretch.lengthMm();
        long parts = (stretchMm + longestMm - 1) / longestMm;
        for (long part = 0; part < parts; part++) {
            long startMm = stretchMm * part / parts;
            long endMm = stretchMm * (part + 1) / parts;
            MetricPoint middle = at(stretch.line(), stretch.fromMm() + (startMm + endMm) / 2);
            add(
                    stretch.line(),
                    stretch.fromMm() + startMm,
                    endMm - startMm,
                    Math.round(middle.eastM() * 1000) / 1000.0,
                    Math.round(middle.northM() * 1000) / 1000.0);
        }
    }

    private void add(int ofLine, long startMm, long longMm, double middleEastM, double middleNorthM) {
        if (count == line.length) {
            grow(count + count / 2);
        }
        line[count] = ofLine;
        fromMm[count] = startMm;
        lengthMm[count] = longMm;
        eastM[count] = middleEastM;
        northM[count] = middleNorthM;
        count++;
        allMm += longMm;
    }

    private void grow(int size) {
        line = Arrays.copyOf(line, size);
        fromMm = Arrays.copyOf(fromMm, size);
        lengthMm = Arrays.copyOf(lengthMm, size);
        eastM = Arrays.copyOf(eastM, size);
        northM = Arrays.copyOf(northM, size);
    }

    private void trim() {
        grow(count);
    }

    int count() {
        return count;
    }

    long allMm() {
        return allMm;
    }

    int line(int unit) {
        return line[unit];
    }

    long fromMm(int unit) {
        return fromMm[unit];
    }

    long lengthMm(int unit) {
        return lengthMm[unit];
    }

    /** East of every unit's middle, metres: not to be changed. */
    double[] eastM() {
        return eastM;
    }

    /** North of every unit's middle, metres: not to be changed. */
    double[] northM() {
        return northM;
    }

    /** A chainage in millimetres as metres, held within its line against rounding. */
    double chainageM(int ofLine, long mm) {
        return Math.min(mm / 1000.0, lines.lengthM(ofLine));
    }

    MetricPoint at(int ofLine, long mm) {
        return lines.at(ofLine, chainageM(ofLine, mm));
    }

    /** The shares of each unit when so many are drawn; the whole is {@link #allMm}. */
    long[] shares(int wanted) {
        long[] shares = new long[count];
        for (int unit = 0; unit < count; unit++) {
            shares[unit] = wanted * lengthMm[unit];
        }
        return shares;
    }
}
