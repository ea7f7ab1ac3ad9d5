package org.wadeplan.geo.lines;

import java.util.stream.IntStream;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * Every whole reach that fits onto a set of lines, end to end on each line, with its stations as coordinates.
 *
 * <p>Reaches are numbered from 0, line by line, on each line from where the rule begins; station 0 is a reach's start.
 * Neighbours share a station, which is stored once. The stations are found in one pass along each line, without making a
 * shape of any reach. Immutable; safe to share between threads.
 */
public final class ReachCut {

    private static final int BLOCK_LINES = 4096;

    private final LineSet lines;
    private final CutRule rule;
    private final int[] firstReach;
    private final int[] firstStation;
    private final double[] stationEastM;
    private final double[] stationNorthM;

    /**
     * Cuts, on all cores.
     *
     * @throws IllegalArgumentException where there would be more stations than an array can hold, some two thousand million
     */
    public ReachCut(LineSet lines, CutRule rule) {
        this.lines = lines;
        this.rule = rule;
        this.firstReach = new int[lines.lineCount() + 1];
        this.firstStation = new int[lines.lineCount() + 1];
        long reaches = 0;
        long stations = 0;
        for (int line = 0; line < lines.lineCount(); line++) {
            double fitting = Math.floor(lines.lengthM(line) / rule.lengthM());
            reaches += (long) Math.min(fitting, Integer.MAX_VALUE);
            stations += fitting == 0 ? 0 : (long) Math.min(fitting * rule.subReaches() + 1, Integer.MAX_VALUE);
            if (stations > Integer.MAX_VALUE - 8) {
                throw new IllegalArgumentException("Reaches of " + rule.lengthM() + " m in " + rule.subReaches()
                        + " have more than " + Integer.MAX_VALUE + " stations: cut the lines in parts");
            }
            firstReach[line + 1] = (int) reaches;
            firstStation[line + 1] = (int) stations;
        }
        this.stationEastM = new double[(int) stations];
        this.stationNorthM = new double[(int) stations];
        int blocks = (lines.lineCount() + BLOCK_LINES - 1) / BLOCK_LINES;
        IntStream.range(0, blocks).parallel().forEach(this::stakeBlock);
    }

    public LineSet lines() {
        return lines;
    }

    public CutRule rule() {
        return rule;
    }

    public int reachCount() {
        return firstReach[lines.lineCount()];
    }

    /** Stations of all reaches, those that two neighbours share counted for each. */
    public long stationCount() {
        return (long) reachCount() * rule.stations();
    }

    /** Number of the line's first reach. */
    public int firstReach(int line) {
        return firstReach[line];
    }

    /** Number of the reach after the line's last. */
    public int endReach(int line) {
        return firstReach[line + 1];
    }

    /** Number of the line on which a reach lies. */
    public int line(int reach) {
        if (reach < 0 || reach >= reachCount()) {
            throw new IndexOutOfBoundsException("Reach " + reach + " of " + reachCount());
        }
        int low = 0;
        int high = lines.lineCount() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (firstReach[middle] <= reach) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** Chainage of a station on the reach's line, in metres; station 0 is the reach's start, the last one its end. */
    public double stationM(int reach, int station) {
        int line = line(reach);
        return chainageM(line, (reach - firstReach[line]) * rule.subReaches() + checked(station));
    }

    /** Where a station lies. */
    public MetricPoint station(int reach, int station) {
        int line = line(reach);
        int at = firstStation[line] + (reach - firstReach[line]) * rule.subReaches() + checked(station);
        return new MetricPoint(stationEastM[at], stationNorthM[at]);
    }

    /** The mean of all stations, those that neighbours share counted for each; a check against other programs. */
    public MetricPoint meanStation() {
        double east = 0;
        double north = 0;
        for (int line = 0; line < lines.lineCount(); line++) {
            for (int at = firstStation[line]; at < firstStation[line + 1]; at++) {
                int within = at - firstStation[line];
                boolean shared = within > 0 && at < firstStation[line + 1] - 1 && within % rule.subReaches() == 0;
                east += (shared ? 2 : 1) * stationEastM[at];
                north += (shared ? 2 : 1) * stationNorthM[at];
            }
        }
        return new MetricPoint(east / stationCount(), north / stationCount());
    }

    private int checked(int station) {
        if (station < 0 || station > rule.subReaches()) {
            throw new IndexOutOfBoundsException("Station " + station + " of a reach in " + rule.subReaches());
        }
        return station;
    }

    /** The last may overshoot its line by a rounding where the line is a whole number of reaches long. */
    private double chainageM(int line, int step) {
        double fromStartM = step * rule.subReachM();
        double lengthM = lines.lengthM(line);
        return rule.fromLast() ? Math.max(0, lengthM - fromStartM) : Math.min(lengthM, fromStartM);
    }

    private void stakeBlock(int block) {
        int end = Math.min(lines.lineCount(), (block + 1) * BLOCK_LINES);
        for (int line = block * BLOCK_LINES; line < end; line++) {
            if (firstStation[line] == firstStation[line + 1]) {
                continue;
            }
            if (rule.fromLast()) {
                stakeFromLast(line);
            } else {
                stakeFromFirst(line);
            }
        }
    }

    private void stakeFromLast(int line) {
        int first = lines.firstVertex(line);
        int end = lines.endVertex(line) - 1;
        for (int at = firstStation[line]; at < firstStation[line + 1]; at++) {
            double atM = chainageM(line, at - firstStation[line]);
            while (end > first + 1 && lines.chainageM(end - 1) >= atM) {
                end--;
            }
            stake(at, end, atM);
        }
    }

    private void stakeFromFirst(int line) {
        int last = lines.endVertex(line) - 1;
        int end = lines.firstVertex(line) + 1;
        for (int at = firstStation[line]; at < firstStation[line + 1]; at++) {
            double atM = chainageM(line, at - firstStation[line]);
            while (end < last && lines.chainageM(end) < atM) {
                end++;
            }
            stake(at, end, atM);
        }
    }

    private void stake(int at, int end, double atM) {
        double fromM = lines.chainageM(end - 1);
        double share = (atM - fromM) / (lines.chainageM(end) - fromM);
        stationEastM[at] = PlaneSegment.at(lines.eastM(end - 1), lines.eastM(end), share);
        stationNorthM[at] = PlaneSegment.at(lines.northM(end - 1), lines.northM(end), share);
    }
}
