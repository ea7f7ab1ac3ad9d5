package org.wadeplan.geo.search;

import java.util.Optional;
import java.util.OptionalInt;
import org.wadeplan.geo.access.WalkIn;
import org.wadeplan.geo.reach.MeanWidth;
import org.wadeplan.geo.terrain.Slope;

/**
 * What is known of a stretch. Empty is unknown, which counts neither for nor against it.
 *
 * @param order Strahler order
 * @param width mean wetted width
 * @param slope over the stretch
 * @param walkIn to its lower end
 */
public record StretchFacts(
        OptionalInt order, Optional<MeanWidth> width, Optional<Slope> slope, Optional<WalkIn> walkIn) {

    public static final StretchFacts UNKNOWN =
            new StretchFacts(OptionalInt.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
