package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.wadeplan.geo.lines.LineSet;

/** Joins ends that meet nothing exactly to what lies within the snap tolerance. */
final class LooseEnds {

    /** A stub that leaves a line shorter than so many tolerances is not bent back onto it. */
    static final double STUB_TOLERANCES = 3;

    /** Lines as near as the nearest within a millimetre are met as well. */
    private static final double AS_NEAR_M = 0.001;

    private static final double ROUNDING_M = 1e-6;
    private static final int MIDDLE = -1;

    private final LineSet lines;
    private final SharedVertices shared;
    private final LineStops stops;
    private final double toleranceM;

    LooseEnds(LineSet lines, SharedVertices shared, LineStops stops, double toleranceM) {
        this.lines = lines;
        this.shared = shared;
        this.stops = stops;
        this.toleranceM = toleranceM;
    }

    /**
     * What one loose end is joined to.
     *
     * @param place the node, or {@link #MIDDLE} where the line has none near enough
     * @param offM how far the end lies from the line
     */
    private record Target(int end, int line, double atM, int place, double offM) {}

    void join(EndContacts contacts) {
        List<Target> chosen = new ArrayList<>();
        for (int end = 0; end < 2 * lines.lineCount(); end++) {
            choose(end, contacts, chosen);
        }
        // By distance and position, never by number; distances that differ by rounding alone are the same.
        chosen.sort(Comparator.comparingDouble((Target target) -> Math.rint(target.offM() / ROUNDING_M))
                .thenComparingDouble(target -> lines.eastM(EndContacts.vertex(lines, target.end())))
                .thenComparingDouble(target -> lines.northM(EndContacts.vertex(lines, target.end()))));
        chosen.forEach(this::join);
    }

    /** The nearest line, and others that are as near: an end that lies where two lines cross meets both. */
    private void choose(int end, EndContacts contacts, List<Target> chosen) {
        double nearestM = Double.POSITIVE_INFINITY;
        for (int contact = contacts.first(end); contact >= 0; contact = contacts.next(contact)) {
            if (!isStub(end, contacts.line(contact))) {
                nearestM = Math.min(nearestM, contacts.distanceM(contact));
            }
        }
        for (int contact = contacts.first(end); contact >= 0; contact = contacts.next(contact)) {
            if (contacts.distanceM(contact) <= nearestM + AS_NEAR_M && !isStub(end, contacts.line(contact))) {
                chosen.add(target(end, contacts, contact));
            }
        }
    }

    /** Whether the end's own line leaves the other by its other end and is too short to come back to it. */
    private boolean isStub(int end, int other) {
        return lines.lengthM(end >> 1) <= STUB_TOLERANCES * toleranceM && shared.holds(otherEnd(end), other);
    }

    private int otherEnd(int end) {
        return shared.placeOfEnd(end ^ 1);
    }

    private Target target(int end, EndContacts contacts, int contact) {
        int other = contacts.line(contact);
        int vertex = EndContacts.vertex(lines, end);
        int nearest = MIDDLE;
        double nearestM = toleranceM;
        for (int stop = stops.first(other); stop < stops.end(other); stop++) {
            int place = stops.place(stop);
            double offM =
                    Math.hypot(shared.eastM(place) - lines.eastM(vertex), shared.northM(place) - lines.northM(vertex));
            if (offM <= nearestM && (offM < nearestM || nearest == MIDDLE)) {
                nearest = place;
                nearestM = offM;
            }
        }
        return new Target(end, other, contacts.chainageM(contact), nearest, contacts.distanceM(contact));
    }

    private void join(Target target) {
        int own = shared.placeOfEnd(target.end());
        int onOther = target.place() == MIDDLE ? stopNear(target) : target.place();
        if (onOther == MIDDLE) {
            stops.addJoined(target.line(), target.atM(), own);
        } else if (stops.node(onOther) != stops.node(otherEnd(target.end()))) {
            stops.unite(own, onOther);
        }
    }

    /** A node of the other line within the tolerance along it, so that no piece becomes shorter than that. */
    private int stopNear(Target target) {
        int nearest = MIDDLE;
        double nearestM = toleranceM;
        for (int stop = stops.first(target.line()); stop < stops.end(target.line()); stop++) {
            double offM = Math.abs(stops.atM(stop) - target.atM());
            if (offM <= nearestM) {
                nearest = stops.place(stop);
                nearestM = offM;
            }
        }
        for (int joined = stops.latestJoined(target.line()); joined >= 0; joined = stops.previousJoined(joined)) {
            double offM = Math.abs(stops.joinedAtM(joined) - target.atM());
            if (offM < nearestM || (nearest == MIDDLE && offM <= nearestM)) {
                nearest = stops.joinedPlace(joined);
                nearestM = offM;
            }
        }
        return nearest;
    }
}
