package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;

/** Finds loose ends that stop just short of another stream, and offers to join each by a straight line. */
final class GapCheck {

    /** Arithmetic alone puts a foot this far beside its line, metres: no gap. */
    private static final double ROUNDING_M = 1e-6;

    private static final int NOTHING = -1;

    private final List<DrawnPiece> pieces;
    private final LineSet lines;
    private final SharedVertices shared;
    private final EndContacts contacts;
    private final double meetsM;
    private final SuspectedFaults faults;

    GapCheck(List<DrawnPiece> pieces, StreamRules rules, SuspectedFaults faults) {
        this.pieces = pieces;
        this.lines = PieceLines.of(pieces);
        this.shared = SharedVertices.of(lines);
        this.meetsM = Math.max(ROUNDING_M, rules.snapToleranceM());
        this.contacts =
                EndContacts.of(lines, Math.max(meetsM, rules.gapMaxM()), end -> shared.isLoose(shared.placeOfEnd(end)));
        this.faults = faults;
    }

    /** The pieces in their order, those whose gap may be closed with one vertex more. */
    List<DrawnPiece> closed() {
        List<DrawnPiece> closed = new ArrayList<>(pieces);
        for (int line = 0; line < pieces.size(); line++) {
            for (int end = 2 * line; end <= 2 * line + 1; end++) {
                int contact = gap(end);
                if (contact != NOTHING && !isReportedFromTheOtherSide(end, contact) && mayJoin(end, contact)) {
                    closed.set(line, joined(closed.get(line), end, contact));
                }
            }
        }
        return closed;
    }

    /** The nearest line across a gap; nothing where the end meets a line, or only its own stub's. */
    private int gap(int end) {
        int nearest = NOTHING;
        for (int contact = contacts.first(end); contact >= 0; contact = contacts.next(contact)) {
            if (contacts.distanceM(contact) <= meetsM) {
                return NOTHING;
            }
            boolean nearer = nearest == NOTHING || contacts.distanceM(contact) <= contacts.distanceM(nearest);
            if (nearer && !isStub(end, contact)) {
                nearest = contact;
            }
        }
        return nearest;
    }

    /** A short line that joins the other with its other end has its source near it, and no gap. */
    private boolean isStub(int end, int contact) {
        boolean isShort = lines.lengthM(end >> 1) <= LooseEnds.STUB_TOLERANCES * contacts.distanceM(contact);
        return isShort && meets(end ^ 1, contacts.line(contact));
    }

    private boolean meets(int end, int line) {
        if (shared.holds(shared.placeOfEnd(end), line)) {
            return true;
        }
        for (int contact = contacts.first(end); contact >= 0; contact = contacts.next(contact)) {
            if (contacts.line(contact) == line && contacts.distanceM(contact) <= meetsM) {
                return true;
            }
        }
        return false;
    }

    /** Of two loose ends that face each other, the gap is told once, with the line that comes first. */
    private boolean isReportedFromTheOtherSide(int end, int contact) {
        int other = contacts.line(contact);
        if (other > end >> 1) {
            return false;
        }
        for (int facing = 2 * other; facing <= 2 * other + 1; facing++) {
            int back = shared.isLoose(shared.placeOfEnd(facing)) ? gap(facing) : NOTHING;
            boolean faces = back != NOTHING
                    && contacts.line(back) == end >> 1
                    && Math.abs(contacts.chainageM(contact) - chainageOf(facing)) <= meetsM;
            if (faces) {
                return true;
            }
        }
        return false;
    }

    private double chainageOf(int end) {
        return lines.chainageM(EndContacts.vertex(lines, end));
    }

    private boolean mayJoin(int end, int contact) {
        DrawnPiece piece = pieces.get(end >> 1);
        boolean isLast = (end & 1) == 1;
        int vertex = EndContacts.vertex(lines, end);
        return faults.mayImprove(
                (isLast ? "join-end:" : "join-start:") + piece.code(),
                "stream-near-miss",
                piece.place(),
                String.format(
                        Locale.ROOT,
                        "its %s vertex meets no line and lies %.1f m from %s near %.0f, %.0f",
                        isLast ? "last" : "first",
                        contacts.distanceM(contact),
                        pieces.get(contacts.line(contact)).code(),
                        lines.eastM(vertex),
                        lines.northM(vertex)),
                "the two are joined by a straight line");
    }

    private DrawnPiece joined(DrawnPiece piece, int end, int contact) {
        MetricPoint foot = lines.at(contacts.line(contact), contacts.chainageM(contact));
        List<Coordinate> vertices = new ArrayList<>(Arrays.asList(piece.line().getCoordinates()));
        vertices.add((end & 1) == 0 ? 0 : vertices.size(), new Coordinate(foot.eastM(), foot.northM()));
        LineString longer = piece.line().getFactory().createLineString(vertices.toArray(new Coordinate[0]));
        return piece.with(longer);
    }
}
