package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;

/** The stretches of lines that lie within the circles around places to keep clear of. */
final class StraightBlocks {

    /** A segment longer than so many cells is looked up in parts, so that its box stays small. */
    private static final int CELLS_AT_ONCE = 8;

    /** Two segments' shares of one circle meet at their vertex but for rounding, in metres. */
    private static final double ROUNDING_M = 1e-6;

    private final LineParts parts;
    private final LineSet lines;
    private final List<Hindrance.Near> places;
    private final int firstHindrance;
    private final double widestM;
    private final PointGrid grid;
    private final double[] eastM;
    private final double[] northM;
    private final double[] clearM;
    private final double[] openFromM;
    private final double[] openToM;
    private final int[] openOn;
    private final List<Integer> open = new ArrayList<>();

    /**
     * @param places with a distance above 0
     * @param firstHindrance number of the first place as a hindrance
     */
    StraightBlocks(LineParts parts, List<Hindrance.Near> places, int firstHindrance) {
        this.parts = parts;
        this.lines = parts.lines();
        this.places = places;
        this.firstHindrance = firstHindrance;
        this.widestM = places.stream().mapToDouble(Hindrance.Near::clearM).max().orElse(0);
        List<MetricPoint> points = places.stream().map(Hindrance.Near::at).toList();
        this.grid = new PointGrid(points, 2 * widestM);
        this.eastM = points.stream().mapToDouble(MetricPoint::eastM).toArray();
        this.northM = points.stream().mapToDouble(MetricPoint::northM).toArray();
        this.clearM = places.stream().mapToDouble(Hindrance.Near::clearM).toArray();
        this.openFromM = new double[places.size()];
        this.openToM = new double[places.size()];
        this.openOn = new int[places.size()];
        Arrays.fill(openOn, -1);
    }

    /** All blocks on one line. */
    void of(int line, Consumer<Block> found) {
        if (places.isEmpty()) {
            return;
        }
        for (int vertex = lines.firstVertex(line) + 1; vertex < lines.endVertex(line); vertex++) {
            segment(line, vertex, found);
        }
        open.forEach(place -> close(line, place, found));
        open.clear();
    }

    private void segment(int line, int vertex, Consumer<Block> found) {
        double lengthM = lines.chainageM(vertex) - lines.chainageM(vertex - 1);
        int count = (int) Math.ceil(lengthM / (CELLS_AT_ONCE * 2 * widestM));
        for (int part = 0; part < count; part++) {
            look(line, vertex, (double) part / count, (double) (part + 1) / count, found);
        }
    }

    private void look(int line, int end, double fromShare, double toShare, Consumer<Block> found) {
        double e0 = lines.eastM(end - 1);
        double n0 = lines.northM(end - 1);
        double de = lines.eastM(end) - e0;
        double dn = lines.northM(end) - n0;
        double ea = e0 + fromShare * de;
        double eb = e0 + toShare * de;
        double na = n0 + fromShare * dn;
        double nb = n0 + toShare * dn;
        grid.near(
                Math.min(ea, eb) - widestM,
                Math.min(na, nb) - widestM,
                Math.max(ea, eb) + widestM,
                Math.max(na, nb) + widestM,
                place -> circle(line, end, place, found));
    }

    /** Where the segment runs inside the circle: the roots of a quadratic in the share along the segment. */
    private void circle(int line, int end, int place, Consumer<Block> found) {
        double de = lines.eastM(end) - lines.eastM(end - 1);
        double dn = lines.northM(end) - lines.northM(end - 1);
        double pe = lines.eastM(end - 1) - eastM[place];
        double pn = lines.northM(end - 1) - northM[place];
        double a = de * de + dn * dn;
        double b = pe * de + pn * dn;
        double c = pe * pe + pn * pn - clearM[place] * clearM[place];
        double root = b * b - a * c;
        if (root <= 0) {
            return;
        }
        double square = Math.sqrt(root);
        double from = Math.max(0, (-b - square) / a);
        double to = Math.min(1, (-b + square) / a);
        if (to > from) {
            double startM = lines.chainageM(end - 1);
            double lengthM = lines.chainageM(end) - startM;
            inside(line, place, startM + from * lengthM, startM + to * lengthM, found);
        }
    }

    private void inside(int line, int place, double fromM, double toM, Consumer<Block> found) {
        if (openOn[place] == line && fromM <= openToM[place] + ROUNDING_M) {
            openToM[place] = Math.max(openToM[place], toM);
            return;
        }
        if (openOn[place] == line) {
            close(line, place, found);
        } else {
            open.add(place);
        }
        openOn[place] = line;
        openFromM[place] = fromM;
        openToM[place] = toM;
    }

    private void close(int line, int place, Consumer<Block> found) {
        parts.split(
                new LineStretch(line, openFromM[place], openToM[place]),
                (run, fromM, toM) -> found.accept(Block.covering(run, fromM, toM, firstHindrance + place)));
        openOn[place] = -1;
    }
}
