package org.wadeplan.geo.search;

import java.util.List;
import java.util.function.IntConsumer;
import org.wadeplan.geo.crs.MetricPoint;

/** Points in square cells, to find those near a segment. */
final class PointGrid {

    /** Cells beside each other on one axis; more would cost memory and find nothing sooner. */
    private static final int MOST_CELLS = 4096;

    private final double eastM;
    private final double northM;
    private final double cellM;
    private final int columns;
    private final int rows;
    private final int[] first;
    private final int[] points;

    PointGrid(List<MetricPoint> at, double wantedCellM) {
        double minE = at.stream().mapToDouble(MetricPoint::eastM).min().orElse(0);
        double maxE = at.stream().mapToDouble(MetricPoint::eastM).max().orElse(0);
        double minN = at.stream().mapToDouble(MetricPoint::northM).min().orElse(0);
        double maxN = at.stream().mapToDouble(MetricPoint::northM).max().orElse(0);
        this.eastM = minE;
        this.northM = minN;
        this.cellM = Math.max(Math.max(wantedCellM, 1), Math.max(maxE - minE, maxN - minN) / MOST_CELLS);
        this.columns = (int) ((maxE - minE) / cellM) + 1;
        this.rows = (int) ((maxN - minN) / cellM) + 1;
        this.first = new int[columns * rows + 1];
        this.points = new int[at.size()];
        at.forEach(point -> first[cell(point) + 1]++);
        for (int cell = 0; cell < columns * rows; cell++) {
            first[cell + 1] += first[cell];
        }
        int[] next = first.clone();
        for (int point = 0; point < at.size(); point++) {
            points[next[cell(at.get(point))]++] = point;
        }
    }

    private int cell(MetricPoint point) {
        return column(point.eastM()) + columns * row(point.northM());
    }

    private int column(double east) {
        return (int) Math.min(columns - 1, Math.max(0, Math.floor((east - eastM) / cellM)));
    }

    private int row(double north) {
        return (int) Math.min(rows - 1, Math.max(0, Math.floor((north - northM) / cellM)));
    }

    /** Every point in the cells that a box touches, and perhaps some beside it; each once, by rising number per cell. */
    void near(double minE, double minN, double maxE, double maxN, IntConsumer found) {
        if (maxE < eastM || maxN < northM || minE > eastM + columns * cellM || minN > northM + rows * cellM) {
            return;
        }
        for (int row = row(minN); row <= row(maxN); row++) {
            for (int column = column(minE); column <= column(maxE); column++) {
                int cell = column + columns * row;
                for (int i = first[cell]; i < first[cell + 1]; i++) {
                    found.accept(points[i]);
                }
            }
        }
    }
}
