package org.wadeplan.geo.search;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.network.LinePlace;

/** Something that rules stretches out. */
sealed interface Hindrance {

    ReasonKind kind();

    /** Reasons of one group are added up together. */
    String group();

    /**
     * Too near to a place.
     *
     * @param noun {@code culvert}
     * @param name {@code the culvert HSK-CULVERT}
     * @param on where it lies on a line, or empty for a node or a place beside all lines
     * @param node the graph's node that it is, or -1
     */
    record Near(
            ReasonKind kind, String noun, String name, MetricPoint at, Optional<LinePlace> on, int node, double clearM)
            implements Hindrance {

        @Override
        public String group() {
            String article = noun.matches("(?i)[aeiou].*") ? "an " : "a ";
            return String.format(Locale.ROOT, "within %s m of %s%s", Bounds.number(clearM), article, noun);
        }

        /** Rounded down, so that a distance too small never reads as the one allowed. */
        Reason reason(double foundM, ClearBy clearBy) {
            return new Reason(
                    kind,
                    group(),
                    String.format(Locale.ROOT, "%.0f m from %s", Math.floor(foundM + 1e-9), name),
                    String.format(Locale.ROOT, "at least %s m %s", Bounds.number(clearM), clearBy.words()),
                    OptionalDouble.of(foundM));
        }
    }

    /**
     * What was found is in words already.
     *
     * @param found {@code order 1}
     * @param allowed {@code at least 2}
     */
    record Stated(ReasonKind kind, String group, String found, String allowed) implements Hindrance {

        Reason reason() {
            return new Reason(kind, group, found, allowed, OptionalDouble.empty());
        }
    }
}
