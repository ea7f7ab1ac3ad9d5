package org.wadeplan.geo.io;

import java.util.Optional;
import org.wadeplan.geo.io.LayerShape.Kind;

/**
 * The kinds of shape in a shapefile. Source: ESRI Shapefile Technical Description, July 1998, page 4.
 *
 * <p>Heights (Z) and measures (M) follow the plane coordinates in a record, so that all can be read as in the plane.
 */
enum ShpType {
    POINT(Kind.POINT, 1, 11, 21),
    LINE(Kind.GEOMETRY, 3, 13, 23),
    AREA(Kind.GEOMETRY, 5, 15, 25),
    POINTS(Kind.MULTIPOINT, 8, 18, 28);

    /** The number of a record without a shape. */
    static final int NULL_SHAPE = 0;

    private final Kind kind;
    private final int plane;
    private final int withHeight;
    private final int withMeasure;

    ShpType(Kind kind, int plane, int withHeight, int withMeasure) {
        this.kind = kind;
        this.plane = plane;
        this.withHeight = withHeight;
        this.withMeasure = withMeasure;
    }

    Kind kind() {
        return kind;
    }

    static Optional<ShpType> of(int number) {
        for (ShpType type : values()) {
            if (number == type.plane || number == type.withHeight || number == type.withMeasure) {
                return Optional.of(type);
            }
        }
        return Optional.empty();
    }

    static boolean isInThePlane(int number) {
        return of(number).filter(type -> type.plane == number).isPresent();
    }
}
