package org.wadeplan.geo.terrain;

/**
 * Where the cells of a grid lie in the grid's own coordinate system.
 *
 * <p>Column 0, row 0 is the first cell; a whole number is a cell's centre, so -0.5 is the grid's edge. Rows and columns may
 * be turned against the axes: {@code x = originX + columnX * column + rowX * row}, and y alike.
 *
 * @param columns number of columns, 1 or more
 * @param rows number of rows, 1 or more
 * @param originX x of the centre of the first cell
 * @param originY y of the centre of the first cell
 */
record GridFrame(
        int columns,
        int rows,
        double originX,
        double originY,
        double columnX,
        double columnY,
        double rowX,
        double rowY) {

    /** North up, as nearly every grid is. */
    static GridFrame northUp(int columns, int rows, double firstX, double firstY, double width, double height) {
        return new GridFrame(columns, rows, firstX, firstY, width, 0, 0, -height);
    }

    /** Whether cells have an area, so that places can be turned into columns and rows. */
    boolean isRegular() {
        double area = determinant();
        return Double.isFinite(area) && area != 0 && Double.isFinite(originX) && Double.isFinite(originY);
    }

    private double determinant() {
        return columnX * rowY - rowX * columnY;
    }

    double column(double x, double y) {
        return ((x - originX) * rowY - (y - originY) * rowX) / determinant();
    }

    double row(double x, double y) {
        return ((y - originY) * columnX - (x - originX) * columnY) / determinant();
    }

    double x(double column, double row) {
        return originX + columnX * column + rowX * row;
    }

    double y(double column, double row) {
        return originY + columnY * column + rowY * row;
    }

    /** The same cells, numbered from another first one. */
    GridFrame part(GridWindow window) {
        return new GridFrame(
                window.columns(),
                window.rows(),
                x(window.firstColumn(), window.firstRow()),
                y(window.firstColumn(), window.firstRow()),
                columnX,
                columnY,
                rowX,
                rowY);
    }

    GridWindow whole() {
        return new GridWindow(0, 0, columns, rows);
    }
}
