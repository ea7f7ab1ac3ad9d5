package org.wadeplan.geo.terrain;

import org.locationtech.jts.geom.Envelope;
import org.wadeplan.geo.crs.GridSystem;

/**
 * A rectangle of cells: only these are read and held.
 *
 * @param firstColumn column of its first cell in the whole grid
 * @param firstRow row of its first cell in the whole grid
 * @param columns 1 or more
 * @param rows 1 or more
 */
record GridWindow(int firstColumn, int firstRow, int columns, int rows) {

    /** Places along each side of the area that are looked up: a straight side is curved in another system. */
    private static final int PLACES_PER_SIDE = 21;

    long cellCount() {
        return (long) columns * rows;
    }

    /**
     * The cells that an area needs, with two to spare around.
     *
     * @param area in the round's metric system
     * @return the whole grid where the area lies outside it: what is missing is then said place by place
     */
    static GridWindow covering(Envelope area, GridFrame frame, GridSystem system) {
        Envelope cells = new Envelope();
        double[] at = new double[2];
        for (int i = 0; i < PLACES_PER_SIDE; i++) {
            for (int j = 0; j < PLACES_PER_SIDE; j++) {
                double eastM = area.getMinX() + area.getWidth() * i / (PLACES_PER_SIDE - 1);
                double northM = area.getMinY() + area.getHeight() * j / (PLACES_PER_SIDE - 1);
                if (system.locate(eastM, northM, at)) {
                    cells.expandToInclude(frame.column(at[0], at[1]), frame.row(at[0], at[1]));
                }
            }
        }
        cells.expandBy(2);
        Envelope common = cells.intersection(new Envelope(0, frame.columns() - 1, 0, frame.rows() - 1));
        return common.isNull() ? frame.whole() : within(common, frame);
    }

    private static GridWindow within(Envelope cells, GridFrame frame) {
        int firstColumn = (int) Math.floor(cells.getMinX());
        int firstRow = (int) Math.floor(cells.getMinY());
        int endColumn = Math.min(frame.columns(), (int) Math.ceil(cells.getMaxX()) + 1);
        int endRow = Math.min(frame.rows(), (int) Math.ceil(cells.getMaxY()) + 1);
        return new GridWindow(firstColumn, firstRow, endColumn - firstColumn, endRow - firstRow);
    }
}
