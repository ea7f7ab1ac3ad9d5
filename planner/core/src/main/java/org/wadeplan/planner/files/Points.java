package org.wadeplan.planner.files;

import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.problem.Problem;

/** Reads places that stand in two cells, both or neither. */
final class Points {

    private static final Range LON_DEG = Range.of(-180, 180, "degrees");
    private static final Range LAT_DEG = Range.of(-90, 90, "degrees");

    private Points() {}

    static Optional<MetricPoint> optionalMetric(Row row, String eastColumn, String northColumn) {
        OptionalDouble eastM = row.optionalDecimal(eastColumn, Range.METRES_ON_GRID);
        OptionalDouble northM = row.optionalDecimal(northColumn, Range.METRES_ON_GRID);
        reportHalf(row, eastColumn, northColumn);
        return eastM.isPresent() && northM.isPresent()
                ? Optional.of(new MetricPoint(eastM.getAsDouble(), northM.getAsDouble()))
                : Optional.empty();
    }

    static Optional<LonLat> optionalLonLat(Row row, String lonColumn, String latColumn) {
        OptionalDouble lonDeg = row.optionalDecimal(lonColumn, LON_DEG);
        OptionalDouble latDeg = row.optionalDecimal(latColumn, LAT_DEG);
        reportHalf(row, lonColumn, latColumn);
        return lonDeg.isPresent() && latDeg.isPresent()
                ? Optional.of(new LonLat(lonDeg.getAsDouble(), latDeg.getAsDouble()))
                : Optional.empty();
    }

    private static void reportHalf(Row row, String first, String second) {
        if (row.raw(first).isEmpty() != row.raw(second).isEmpty()) {
            String blank = row.raw(first).isEmpty() ? first : second;
            row.report(Problem.error(
                    "point-half",
                    row.place().column(blank),
                    "only one of the two coordinates is there",
                    first + " and " + second + " together, or neither",
                    "fill in the other, or clear both"));
        }
    }
}
