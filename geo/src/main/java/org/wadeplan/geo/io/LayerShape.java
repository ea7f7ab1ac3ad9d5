package org.wadeplan.geo.io;

import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.crs.StatedSystem;

/**
 * What a layer is, apart from its features.
 *
 * @param name the layer's name
 * @param crs what the file says of its coordinate system; empty where it says nothing
 * @param kind what shapes it holds
 * @param fields its columns without the shape, in the file's order
 */
public record LayerShape(String name, Optional<StatedSystem> crs, Kind kind, List<Field> fields) {

    public LayerShape {
        fields = List.copyOf(fields);
    }

    /** The shapes of a layer, by the names of the GeoPackage standard. */
    public enum Kind {
        POINT,
        LINESTRING,
        POLYGON,
        MULTIPOINT,
        MULTILINESTRING,
        MULTIPOLYGON,
        GEOMETRY,
        /** A plain table without shapes. */
        NONE
    }
}
