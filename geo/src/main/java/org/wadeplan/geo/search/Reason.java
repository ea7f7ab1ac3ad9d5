package org.wadeplan.geo.search;

import java.util.OptionalDouble;

/**
 * One reason why a stretch was rejected.
 *
 * @param group reasons of one group are added up together: {@code within 50 m of a culvert}
 * @param found what was found there: {@code 31 m from the culvert HSK-CULVERT}
 * @param allowed what would be allowed: {@code at least 50 m along the stream}
 * @param foundM the distance found, metres; empty where the reason is no distance
 */
public record Reason(ReasonKind kind, String group, String found, String allowed, OptionalDouble foundM) {

    /** {@code 31 m from the culvert HSK-CULVERT, at least 50 m along the stream}. */
    public String sentence() {
        return allowed.isBlank() ? found : found + ", " + allowed;
    }
}
