package org.wadeplan.geo.terrain;

import java.util.Locale;
import java.util.OptionalDouble;
import org.wadeplan.geo.crs.GridSystem;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * Heights of the ground on a grid of cells, asked for in the round's metric system.
 *
 * <p>Between the centres of four cells the height is bilinear; in the outer half of the outermost cells it is that of the
 * nearest centre line. There is no height outside the grid, nor where one of the cells that count has none. Immutable; safe
 * to share between threads.
 */
public final class ElevationGrid implements Elevation {

    private final GridCells cells;
    private final GridSystem system;
    private final double cellM;
    private final double verticalStepM;
    private final String datum;

    /**
     * @param cellM side of a cell on the ground, metres: the mean of both sides where they differ
     * @param verticalStepM smallest difference of height that the grid can hold, metres
     * @param datum what heights are counted from, in words
     */
    ElevationGrid(GridCells cells, GridSystem system, double cellM, double verticalStepM, String datum) {
        this.cells = cells;
        this.system = system;
        this.cellM = cellM;
        this.verticalStepM = verticalStepM;
        this.datum = datum;
    }

    @Override
    public OptionalDouble elevationM(MetricPoint place) {
        double[] at = new double[2];
        if (!system.locate(place.eastM(), place.northM(), at)) {
            return OptionalDouble.empty();
        }
        double height =
                bilinear(cells.frame().column(at[0], at[1]), cells.frame().row(at[0], at[1]));
        return Double.isNaN(height) ? OptionalDouble.empty() : OptionalDouble.of(height);
    }

    private double bilinear(double column, double row) {
        int columns = cells.frame().columns();
        int rows = cells.frame().rows();
        if (!(column >= -0.5 && column <= columns - 0.5 && row >= -0.5 && row <= rows - 0.5)) {
            return Double.NaN;
        }
        double inColumn = Math.min(Math.max(column, 0), columns - 1.0);
        double inRow = Math.min(Math.max(row, 0), rows - 1.0);
        int left = Math.min((int) inColumn, Math.max(0, columns - 2));
        int top = Math.min((int) inRow, Math.max(0, rows - 2));
        double upper = mixed(left, top, inColumn - left);
        double share = inRow - top;
        return share == 0 ? upper : upper + share * (mixed(left, top + 1, inColumn - left) - upper);
    }

    /** A cell that does not count must not blot out the height with its missing value. */
    private double mixed(int left, int row, double share) {
        double from = cells.height(left, row);
        return share == 0
                ? from
                : share == 1 ? cells.height(left + 1, row) : from + share * (cells.height(left + 1, row) - from);
    }

    /** Side of a cell on the ground in the middle of the grid, metres; the mean of both sides where they differ. */
    public double cellM() {
        return cellM;
    }

    /** Smallest difference of height that the grid can hold, metres. */
    public double verticalStepM() {
        return verticalStepM;
    }

    /** What heights are counted from, in words. */
    public String datum() {
        return datum;
    }

    /** With its cell size and step, for whoever fits slopes. */
    public Ground ground() {
        return new Ground(this, cellM, verticalStepM);
    }

    /** {@code 336 × 288 cells of about 77 m, heights in steps of 1 m above …, in WGS 84 (EPSG:4326)}. */
    public String words() {
        return String.format(
                Locale.ROOT,
                "%d × %d cells of about %s m, heights in steps of %s m, counted from %s, in %s",
                cells.frame().columns(),
                cells.frame().rows(),
                Metres.words(cellM),
                Metres.words(verticalStepM),
                datum,
                system.words());
    }

    @Override
    public String toString() {
        return words();
    }
}
