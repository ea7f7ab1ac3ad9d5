package org.wadeplan.geo.io;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/**
 * One thing on a map: a shape and what the table says about it.
 *
 * @param id what the file calls it: its row number in a GeoPackage, its id or position in GeoJSON
 * @param geometry the shape; empty where the file has none
 * @param attributes by column name, in the file's order; a null in the file is left out
 */
public record Feature(String id, Optional<Geometry> geometry, Map<String, Attribute> attributes) {

    public Feature {
        attributes = Collections.unmodifiableMap(new LinkedHashMap<>(attributes));
    }

    public static Feature of(String id, Geometry geometry, Map<String, Attribute> attributes) {
        return new Feature(id, Optional.of(geometry), attributes);
    }

    /** The attribute of that name in any mix of upper and lower case: programs differ in how they spell columns. */
    public Optional<Attribute> attribute(String name) {
        return attributes.entrySet().stream()
                .filter(entry -> entry.getKey().equalsIgnoreCase(name))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** The attribute in words; empty where it is missing, null or blank. */
    public Optional<String> text(String name) {
        return attribute(name).map(value -> value.words().strip()).filter(words -> !words.isEmpty());
    }

    public Feature withGeometry(Geometry changed) {
        return new Feature(id, Optional.of(changed), attributes);
    }
}
