package org.wadeplan.planner.pack.map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * A piece of ground on a piece of paper, north up.
 *
 * @param ground what is shown, metres in the round's coordinate system
 * @param scale metres on the ground for each metre of paper: 1000 means 1:1000
 */
record MapFrame(Envelope ground, int scale) {

    /** Scales that people can measure on with a ruler. */
    private static final int[] SCALES = {
        250, 500, 750, 1000, 1250, 1500, 2000, 2500, 4000, 5000, 7500, 10000, 15_000, 20_000, 25_000, 40_000, 50_000,
        75_000, 100_000, 150_000, 200_000, 250_000, 300_000, 400_000, 500_000, 750_000, 1_000_000, 2_000_000, 5_000_000
    };

    private static final double MM_PER_M = 1000;

    /** The largest scale at which {@code wanted}, with a margin, fits on the paper; centred. */
    static MapFrame around(Envelope wanted, double widthMm, double heightMm, double marginMm) {
        int scale = SCALES[SCALES.length - 1];
        for (int i = SCALES.length - 1; i >= 0; i--) {
            double mmPerM = MM_PER_M / SCALES[i];
            if (wanted.getWidth() * mmPerM <= widthMm - 2 * marginMm
                    && wanted.getHeight() * mmPerM <= heightMm - 2 * marginMm) {
                scale = SCALES[i];
            }
        }
        double halfWidthM = widthMm * scale / MM_PER_M / 2;
        double halfHeightM = heightMm * scale / MM_PER_M / 2;
        Coordinate centre = centre(wanted);
        return new MapFrame(
                new Envelope(
                        centre.x - halfWidthM, centre.x + halfWidthM, centre.y - halfHeightM, centre.y + halfHeightM),
                scale);
    }

    private static Coordinate centre(Envelope box) {
        return new Coordinate((box.getMinX() + box.getMaxX()) / 2, (box.getMinY() + box.getMaxY()) / 2);
    }

    /** Millimetres on the paper for a length on the ground. */
    double mm(double lengthM) {
        return lengthM * MM_PER_M / scale;
    }

    double x(double eastM) {
        return mm(eastM - ground.getMinX());
    }

    double y(double northM) {
        return mm(ground.getMaxY() - northM);
    }

    Coordinate paper(Coordinate place) {
        return new Coordinate(x(place.x), y(place.y));
    }

    Coordinate paper(MetricPoint place) {
        return new Coordinate(x(place.eastM()), y(place.northM()));
    }

    boolean shows(MetricPoint place) {
        return ground.contains(place.eastM(), place.northM());
    }
}
