package org.wadeplan.geo.demo;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;

/**
 * Turns control vertices into a winding line: a smooth curve through every vertex, swung sideways by 15 to 40 m, with no
 * swing at sites, source and mouth, so that it passes exactly through them. The same seed gives the same line on any
 * machine, because only StrictMath is used and vertices are rounded to the centimetre.
 *
 * <p>Winding makes the line longer than its control line, so a site's chainage on it differs from the control chainage.
 */
final class Meander {

    private static final double STEP_M = 14;
    private static final double CALM_M = 140;
    private static final double LEAST_SWING_M = 15;
    private static final double MOST_SWING_M = 40;

    private final List<Coordinate> control;
    private final Collection<Coordinate> sites;
    private final Random random;
    private final double[] alongM;
    private final List<Double> calmAtM = new ArrayList<>();
    private double phase;
    private double wavelengthM;
    private double swingM;
    private double swingFromM;
    private double swingToM;

    Meander(List<Coordinate> control, Collection<Coordinate> sites, long seed) {
        this.control = control;
        this.sites = sites;
        this.random = new Random(seed);
        this.alongM = new double[control.size()];
        for (int i = 0; i < control.size(); i++) {
            alongM[i] = i == 0 ? 0 : alongM[i - 1] + control.get(i - 1).distance(control.get(i));
            if (isExact(i)) {
                calmAtM.add(alongM[i]);
            }
        }
        nextSwing(0);
        swingFromM = swingM;
    }

    private boolean isExact(int vertex) {
        return vertex == 0 || vertex == control.size() - 1 || sites.contains(control.get(vertex));
    }

    /** A new half-swing begins: draw its wavelength and how far it swings. */
    private void nextSwing(double atPhase) {
        phase = atPhase;
        swingFromM = swingToM;
        wavelengthM = 260 + 200 * random.nextDouble();
        swingToM = LEAST_SWING_M + (MOST_SWING_M - LEAST_SWING_M) * random.nextDouble();
        swingM = swingToM;
    }

    List<Coordinate> vertices() {
        List<Coordinate> made = new ArrayList<>();
        made.add(control.get(0));
        for (int span = 0; span < control.size() - 1; span++) {
            double lengthM = alongM[span + 1] - alongM[span];
            int steps = (int) StrictMath.ceil(lengthM / STEP_M);
            for (int step = 1; step < steps; step++) {
                made.add(swung(span, (double) step / steps, lengthM / steps));
            }
            Coordinate end = swung(span, 1, lengthM / steps);
            made.add(isExact(span + 1) ? control.get(span + 1) : end);
        }
        return made;
    }

    private Coordinate swung(int span, double share, double stepM) {
        phase += 2 * StrictMath.PI * stepM / wavelengthM;
        if (phase >= StrictMath.PI) {
            nextSwing(phase - StrictMath.PI);
            side = -side;
        }
        Coordinate on = curve(span, share);
        Coordinate ahead = curve(span, share + 0.001);
        double dx = ahead.x - on.x;
        double dy = ahead.y - on.y;
        double length = StrictMath.sqrt(dx * dx + dy * dy);
        double mix = phase / StrictMath.PI;
        double reachM = swingFromM + (swingToM - swingFromM) * mix;
        double atM = alongM[span] + share * (alongM[span + 1] - alongM[span]);
        double swing = side * reachM * StrictMath.sin(phase) * calm(atM);
        return new Coordinate(toCentimetre(on.x - dy / length * swing), toCentimetre(on.y + dx / length * swing));
    }

    private int side = 1;

    /** From 0 at a site to 1 well away from it, without a kink. */
    private double calm(double atM) {
        double nearestM = calmAtM.stream()
                .mapToDouble(site -> StrictMath.abs(site - atM))
                .min()
                .orElse(CALM_M);
        double share = StrictMath.min(1, nearestM / CALM_M);
        return share * share * (3 - 2 * share);
    }

    /** Cubic Hermite through the control vertices, tangents from the neighbours, scaled to the span. */
    private Coordinate curve(int span, double share) {
        Coordinate from = control.get(span);
        Coordinate to = control.get(span + 1);
        double lengthM = alongM[span + 1] - alongM[span];
        Coordinate out = tangent(span, lengthM);
        Coordinate in = tangent(span + 1, lengthM);
        double t2 = share * share;
        double t3 = t2 * share;
        double h1 = 2 * t3 - 3 * t2 + 1;
        double h2 = t3 - 2 * t2 + share;
        double h3 = -2 * t3 + 3 * t2;
        double h4 = t3 - t2;
        return new Coordinate(
                h1 * from.x + h2 * out.x + h3 * to.x + h4 * in.x, h1 * from.y + h2 * out.y + h3 * to.y + h4 * in.y);
    }

    private Coordinate tangent(int vertex, double lengthM) {
        int before = StrictMath.max(0, vertex - 1);
        int after = StrictMath.min(control.size() - 1, vertex + 1);
        double dx = control.get(after).x - control.get(before).x;
        double dy = control.get(after).y - control.get(before).y;
        double norm = StrictMath.sqrt(dx * dx + dy * dy);
        return new Coordinate(dx / norm * lengthM, dy / norm * lengthM);
    }

    private static double toCentimetre(double metres) {
        return StrictMath.rint(metres * 100) / 100;
    }
}
