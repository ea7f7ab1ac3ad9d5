package org.wadeplan.geo.io;

import java.util.List;

/**
 * A whole layer in memory.
 *
 * @param shape its name, system and columns
 * @param features in the file's order
 */
public record FeatureLayer(LayerShape shape, List<Feature> features) {

    public FeatureLayer {
        features = List.copyOf(features);
    }
}
