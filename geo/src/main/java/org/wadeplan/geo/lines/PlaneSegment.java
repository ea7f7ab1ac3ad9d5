package org.wadeplan.geo.lines;

/** Arithmetic on one straight segment in the plane. */
final class PlaneSegment {

    private PlaneSegment() {}

    /** How far along the segment, from 0 to 1, the point nearest to a place lies. */
    static double share(double eastM, double northM, double east0, double north0, double east1, double north1) {
        double east = east1 - east0;
        double north = north1 - north0;
        double share = ((eastM - east0) * east + (northM - north0) * north) / (east * east + north * north);
        return share > 0 ? Math.min(1, share) : 0;
    }

    /** Between two values; at 0 and 1 exactly one of them, so that lines which share a vertex are equally far from a place. */
    static double at(double from, double to, double share) {
        return share == 1 ? to : from + share * (to - from);
    }
}
