package org.wadeplan.geo.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;

/** Small graphs for tests, noded where lines share vertices of which at least one is an end. */
public final class TestGraphs {

    private TestGraphs() {}

    /** From lines by id, each from source to mouth. */
    public static StreamGraph of(Map<String, String> wktById) {
        Map<String, LineString> shapes = new LinkedHashMap<>();
        wktById.forEach((id, wkt) -> shapes.put(id, line(wkt)));
        return ofShapes(shapes);
    }

    public static LineString line(String wkt) {
        try {
            return (LineString) new WKTReader().read(wkt);
        } catch (ParseException wrong) {
            throw new AssertionError(wrong);
        }
    }

    /** From shapes by id, each from source to mouth. */
    public static StreamGraph ofShapes(Map<String, LineString> shapes) {
        LineSetBuilder builder = new LineSetBuilder();
        shapes.forEach(builder::add);
        return of(builder.build());
    }

    /** From lines that run downstream. */
    public static StreamGraph of(LineSet lines) {
        Map<MetricPoint, Integer> nodes = new LinkedHashMap<>();
        for (int line = 0; line < lines.lineCount(); line++) {
            nodes.putIfAbsent(vertex(lines, lines.firstVertex(line)), nodes.size());
            nodes.putIfAbsent(vertex(lines, lines.endVertex(line) - 1), nodes.size());
        }
        int[] firstPiece = new int[lines.lineCount() + 1];
        List<double[]> measures = new ArrayList<>();
        List<int[]> ends = new ArrayList<>();
        for (int line = 0; line < lines.lineCount(); line++) {
            firstPiece[line] = measures.size();
            TreeSet<Integer> cuts = new TreeSet<>();
            for (int vertex = lines.firstVertex(line); vertex < lines.endVertex(line); vertex++) {
                if (nodes.containsKey(vertex(lines, vertex))) {
                    cuts.add(vertex);
                }
            }
            int upper = cuts.pollFirst();
            for (int lower : cuts) {
                measures.add(new double[] {lines.chainageM(upper), lines.chainageM(lower)});
                ends.add(new int[] {nodes.get(vertex(lines, upper)), nodes.get(vertex(lines, lower))});
                upper = lower;
            }
        }
        firstPiece[lines.lineCount()] = measures.size();
        return new StreamGraph(
                lines,
                nodes.keySet().toArray(MetricPoint[]::new),
                firstPiece,
                measures.stream().mapToDouble(each -> each[0]).toArray(),
                measures.stream().mapToDouble(each -> each[1]).toArray(),
                ends.stream().mapToInt(each -> each[0]).toArray(),
                ends.stream().mapToInt(each -> each[1]).toArray());
    }

    private static MetricPoint vertex(LineSet lines, int vertex) {
        return new MetricPoint(lines.eastM(vertex), lines.northM(vertex));
    }
}
