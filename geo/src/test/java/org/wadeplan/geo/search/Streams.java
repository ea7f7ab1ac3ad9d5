package org.wadeplan.geo.search;

import java.util.LinkedHashMap;
import java.util.Map;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.wadeplan.geo.lines.LineSetBuilder;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.network.StreamGraph;
import org.wadeplan.geo.network.StreamNoding;

/** Small graphs for tests. */
final class Streams {

    private Streams() {}

    static LineString line(String wkt) {
        try {
            return (LineString) new WKTReader().read(wkt);
        } catch (ParseException wrong) {
            throw new AssertionError(wrong);
        }
    }

    /** Id, then the vertices from source to mouth: {@code "BRN", "0 1000, 0 0"}. */
    static StreamGraph graph(String... idsAndVertices) {
        Map<String, LineString> shapes = new LinkedHashMap<>();
        for (int i = 0; i < idsAndVertices.length; i += 2) {
            shapes.put(idsAndVertices[i], line("LINESTRING (" + idsAndVertices[i + 1] + ")"));
        }
        return graph(shapes);
    }

    static StreamGraph graph(Map<String, LineString> shapes) {
        LineSetBuilder builder = new LineSetBuilder();
        shapes.forEach(builder::add);
        return StreamNoding.graph(builder.build(), StreamNoding.SNAP_TOLERANCE_M);
    }

    static int number(StreamGraph graph, String id) {
        for (int line = 0; line < graph.lines().lineCount(); line++) {
            if (graph.lines().id(line).equals(id)) {
                return line;
            }
        }
        throw new AssertionError("no line " + id);
    }

    static LinePlace place(StreamGraph graph, String id, double chainageM) {
        return new LinePlace(number(graph, id), chainageM);
    }
}
