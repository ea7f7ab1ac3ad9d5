package org.wadeplan.planner.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.io.ColumnMapping;
import org.wadeplan.geo.io.Feature;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.io.LineKind;
import org.wadeplan.geo.network.LineMeasure;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.planner.round.LineKindSpan;

/** Where along the streams the map's features are no open stream: a feature may be only part of its stream's line. */
final class LineKindReader {

    private LineKindReader() {}

    static List<LineKindSpan> read(FeatureLayer layer, StreamNetwork network) {
        List<LineKindSpan> spans = new ArrayList<>();
        for (Feature feature : layer.features()) {
            Optional<String> kind = feature.text(ColumnMapping.KIND)
                    .map(word -> word.toLowerCase(Locale.ROOT))
                    .filter(word -> !word.equals(LineKind.STREAM.word()));
            Optional<String> code =
                    feature.text("code").filter(known -> network.line(known).isPresent());
            if (kind.isPresent() && code.isPresent() && feature.geometry().isPresent()) {
                spans.add(span(code.get(), kind.get(), feature.geometry().get(), network.measure(code.get())));
            }
        }
        return List.copyOf(spans);
    }

    private static LineKindSpan span(String code, String kind, Geometry shape, LineMeasure measure) {
        double fromM = measure.lengthM();
        double toM = 0;
        for (Coordinate vertex : shape.getCoordinates()) {
            double atM = measure.foot(new MetricPoint(vertex.x, vertex.y)).chainageM();
            fromM = Math.min(fromM, atM);
            toM = Math.max(toM, atM);
        }
        return new LineKindSpan(code, kind, fromM, toM);
    }
}
