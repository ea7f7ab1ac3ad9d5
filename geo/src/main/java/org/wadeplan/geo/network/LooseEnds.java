package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;

/** Joins ends that meet nothing exactly to what lies within the snap tolerance. */
final class LooseEnds {

    /** A stub that leaves a line shorter than so many tolerances is not bent back onto it. */
    static final double STUB_TOLERANCES = 3;

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
     */
    private record Target(int end, int line, double atM, int place, double offM, MetricPoint at) {

        /** Nodes before middles, the nearer first; ties by position, never by number. */
        static final Comparator<Target> BEST_FIRST = Comparator.comparing((Target target) -> target.place == MIDDLE)
                .thenComparingDouble(Target::offM)
                .thenComparingDouble(target -> target.at.eastM())
                .thenComparingDouble(target -> target.at.northM());
    }

    void join(EndContacts contacts) {
        List<Target> chosen = new ArrayList<>();
        for (int end = 0; end < 2 * lines.lineCount(); end++) {
            best(end, contacts).ifPresent(chosen::add);
        }
        chosen.sort(Target.BEST_FIRST
                .thenComparingDouble(target -> lines.eastM(EndContacts.vertex(lines, target.end())))
                .thenComparingDouble(target -> lines.northM(EndContacts.vertex(lines, target.end()))));
        chosen.forEach(this::join);
    }

    private Optional<Target> best(int end, EndContacts contacts) {
        Optional<Target> best = Optional.empty();
        for (int contact = contacts.first(end); contact >= 0; contact = contacts.next(contact)) {
            if (!isStub(end, contacts.line(contact))) {
                Target target = target(end, contacts, contact);
                boolean better = best.isEmpty() || Target.BEST_FIRST.compare(target, best.get()) < 0;
                best = better ? Optional.of(target) : best;
            }
        }
        return best;
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
        MetricPoint from = new MetricPoint(lines.eastM(vertex), lines.northM(vertex));
        int nearest = MIDDLE;
        double nearestM = Double.POSITIVE_INFINITY;
        for (int stop = stops.first(other); stop < stops.end(other); stop++) {
            int place = stops.place(stop);
            double offM = Math.hypot(shared.eastM(place) - from.eastM(), shared.northM(place) - from.northM());
            if (offM <= toleranceM && offM < nearestM) {
                nearest = place;
                nearestM = offM;
            }
        }
        double atM = contacts.chainageM(contact);
        return nearest == MIDDLE
                ? new Target(end, other, atM, MIDDLE, contacts.distanceM(contact), lines.at(other, atM))
                : new Target(end, other, atM, nearest, nearestM, place(nearest));
    }

    private MetricPoint place(int place) {
        return new MetricPoint(shared.eastM(place), shared.northM(place));
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
