package org.wadeplan.geo.network;

import java.util.Map;
import org.wadeplan.geo.crs.MetricPoint;

/**
 * What the round knows about its streams apart from their map file.
 *
 * @param mouths roughly where each stream ends, by stream code; streams may be missing
 * @param names what each stream is called, by stream code; streams may be missing
 */
public record StreamHints(Map<String, MetricPoint> mouths, Map<String, String> names) {

    public static final StreamHints NONE = new StreamHints(Map.of(), Map.of());

    public StreamHints {
        mouths = Map.copyOf(mouths);
        names = Map.copyOf(names);
    }
}
