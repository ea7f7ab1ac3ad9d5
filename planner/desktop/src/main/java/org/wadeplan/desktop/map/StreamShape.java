package org.wadeplan.desktop.map;

import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;

/** A line to draw, with its box so that what is out of sight is passed over. A stream's runs from source to mouth. */
public record StreamShape(String code, String label, LineString line, Envelope box) {

    static StreamShape of(String code, String label, LineString line) {
        return new StreamShape(code, label, line, line.getEnvelopeInternal());
    }

    private CoordinateSequence vertices() {
        return line.getCoordinateSequence();
    }

    int size() {
        return vertices().size();
    }

    double eastM(int vertex) {
        return vertices().getX(vertex);
    }

    double northM(int vertex) {
        return vertices().getY(vertex);
    }
}
