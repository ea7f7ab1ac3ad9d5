package org.wadeplan.geo.bench;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What one run over all steps found, and the seconds that each step took.
 *
 * @param counts what was found
 * @param seconds by step
 * @param processorSeconds of all cores together, for all steps; 0 where it was not asked for
 */
record Run(Counts counts, Map<Step, Double> seconds, double processorSeconds) {

    /**
     * What two programs must agree on.
     *
     * @param lines lines with a length
     * @param meanSnapM mean distance of the places from the nearest line
     * @param meanStationEastM mean easting of all stations
     * @param meanStationNorthM mean northing of all stations
     */
    record Counts(
            long lines,
            long reaches,
            long stations,
            long confluences,
            long kept,
            double meanSnapM,
            double meanStationEastM,
            double meanStationNorthM) {}

    Run {
        seconds = new EnumMap<>(seconds);
    }

    double seconds(Step step) {
        return seconds.getOrDefault(step, 0.0);
    }

    /** Everything after loading. */
    double workSeconds() {
        return allSeconds() - seconds(Step.LOAD);
    }

    double allSeconds() {
        return seconds.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    static double best(List<Run> runs, Part part) {
        return runs.stream().mapToDouble(part::seconds).min().orElseThrow();
    }

    static double median(List<Run> runs, Part part) {
        double[] sorted = runs.stream().mapToDouble(part::seconds).sorted().toArray();
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    /** Which part of a run to look at. */
    @FunctionalInterface
    interface Part {
        double seconds(Run run);
    }
}
