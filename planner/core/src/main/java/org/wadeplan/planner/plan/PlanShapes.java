package org.wadeplan.planner.plan;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.draw.Allocation;
import org.wadeplan.geo.search.SearchRules;
import org.wadeplan.geo.terrain.Slope;
import org.wadeplan.planner.method.MethodOutcome;

/** How the few values that are not plain records look in {@code plan.json}. */
final class PlanShapes extends SimpleModule {

    private static final long serialVersionUID = 1L;

    PlanShapes() {
        addSerializer(LineString.class, new LineWriter());
        addDeserializer(LineString.class, new LineReader());
        setMixInAnnotation(MethodOutcome.class, NamedOutcome.class);
        setMixInAnnotation(Slope.class, NamedSlope.class);
        setMixInAnnotation(SearchRules.Layout.class, NamedLayout.class);
        setMixInAnnotation(Allocation.class, NamedAllocation.class);
    }

    /** A sealed outcome carries its name. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "outcome")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = MethodOutcome.Chosen.class, name = "chosen"),
        @JsonSubTypes.Type(value = MethodOutcome.Undecided.class, name = "undecided"),
        @JsonSubTypes.Type(value = MethodOutcome.NoRule.class, name = "no-rule"),
        @JsonSubTypes.Type(value = MethodOutcome.Clash.class, name = "clash")
    })
    private interface NamedOutcome {}

    /** A slope, or why there is none. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "slope")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Slope.Fitted.class, name = "fitted"),
        @JsonSubTypes.Type(value = Slope.Unresolved.class, name = "unresolved")
    })
    private interface NamedSlope {}

    /** Where a search lets reaches start. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "layout")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = SearchRules.Fitted.class, name = "fitted"),
        @JsonSubTypes.Type(value = SearchRules.EndToEnd.class, name = "end-to-end")
    })
    private interface NamedLayout {}

    /** How a draw's size was shared says so itself. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "how")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = Allocation.Proportional.class, name = "proportional"),
        @JsonSubTypes.Type(value = Allocation.Equal.class, name = "equal"),
        @JsonSubTypes.Type(value = Allocation.Given.class, name = "given")
    })
    private interface NamedAllocation {}

    /** A line as {@code [[east, north], ...]} to the millimetre. */
    private static final class LineWriter extends StdSerializer<LineString> {

        private static final long serialVersionUID = 1L;

        LineWriter() {
            super(LineString.class);
        }

        @Override
        public void serialize(LineString line, JsonGenerator json, SerializerProvider provider) throws IOException {
            json.writeStartArray();
            for (Coordinate vertex : line.getCoordinates()) {
                json.writeArray(new double[] {toMillimetre(vertex.x), toMillimetre(vertex.y)}, 0, 2);
            }
            json.writeEndArray();
        }

        private static double toMillimetre(double metres) {
            return Math.round(metres * 1000) / 1000.0;
        }
    }

    private static final class LineReader extends StdDeserializer<LineString> {

        private static final long serialVersionUID = 1L;

        LineReader() {
            super(LineString.class);
        }

        @Override
        public LineString deserialize(JsonParser json, DeserializationContext context) throws IOException {
            double[][] vertices = json.readValueAs(double[][].class);
            Coordinate[] coordinates = new Coordinate[vertices.length];
            for (int i = 0; i < vertices.length; i++) {
                if (vertices[i].length != 2) {
                    throw context.weirdStringException("vertex " + i, LineString.class, "a vertex is [east, north]");
                }
                coordinates[i] = new Coordinate(vertices[i][0], vertices[i][1]);
            }
            return new GeometryFactory().createLineString(coordinates);
        }
    }
}
