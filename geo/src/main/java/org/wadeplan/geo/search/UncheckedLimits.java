package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.terrain.Slope;

/** Names limits that could not be checked because a figure is not known. */
final class UncheckedLimits {

    private UncheckedLimits() {}

    static List<String> of(SearchLimits limits, StretchFacts known) {
        List<String> names = new ArrayList<>();
        if (!limits.order().allowsAll() && known.order().isEmpty()) {
            names.add("not checked: stream order, " + limits.order().words(""));
        }
        if (!limits.widthM().allowsAll() && known.width().isEmpty()) {
            names.add("not checked: width, " + limits.widthM().words("m"));
        }
        boolean slopeKnown =
                known.slope().filter(Slope.Fitted.class::isInstance).isPresent();
        if (!limits.slopePercent().allowsAll() && !slopeKnown) {
            names.add("not checked: slope, " + limits.slopePercent().words("%"));
        }
        if (!limits.walkInM().allowsAll() && known.walkIn().isEmpty()) {
            names.add("not checked: walk-in, " + limits.walkInM().words("m"));
        }
        if (limits.walkInOnConsentedLand() && known.walkIn().isEmpty()) {
            names.add("not checked: whether the walk-in crosses land without consent");
        }
        return names;
    }
}
