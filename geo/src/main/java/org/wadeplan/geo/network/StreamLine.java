package org.wadeplan.geo.network;

import java.util.Optional;
import org.locationtech.jts.geom.LineString;

/**
 * One mapped stream, in the round's metric coordinate system, running from source to mouth.
 *
 * @param code short stream code, unique in the round: {@code BRN}
 * @param name what people call it; empty where the file has none
 * @param catchment code of the catchment it drains
 * @param line the line itself, first vertex at the source, last at the mouth; metres
 */
public record StreamLine(String code, Optional<String> name, String catchment, LineString line) {

    /** Measured along the line, in metres. */
    public double lengthM() {
        return line.getLength();
    }
}
