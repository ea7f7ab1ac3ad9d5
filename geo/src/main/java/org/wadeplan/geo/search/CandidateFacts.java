package org.wadeplan.geo.search;

import java.util.Optional;
import java.util.OptionalInt;
import org.wadeplan.geo.access.WalkIn;
import org.wadeplan.geo.reach.MeanWidth;
import org.wadeplan.geo.terrain.Slope;

/**
 * What is known about stretches of lines. All of it may be unknown. Answers must depend on the stretch alone, never on
 * what was asked before.
 */
public interface CandidateFacts {

    /** Knows nothing. */
    CandidateFacts UNKNOWN = new CandidateFacts() {
        @Override
        public boolean knowsSlopes() {
            return false;
        }

        @Override
        public boolean knowsWalkIns() {
            return false;
        }
    };

    /** Whether a slope is known anywhere; where not, no start is held back for one that might be good. */
    default boolean knowsSlopes() {
        return true;
    }

    /** Whether a walk-in is known anywhere. */
    default boolean knowsWalkIns() {
        return true;
    }

    /** Strahler order of the piece between nodes that holds the stretch. */
    default OptionalInt order(LineStretch stretch) {
        return OptionalInt.empty();
    }

    /** Mean wetted width on the stretch. */
    default Optional<MeanWidth> width(LineStretch stretch) {
        return Optional.empty();
    }

    /** How steeply the stretch falls; may take long. */
    default Optional<Slope> slope(LineStretch stretch) {
        return Optional.empty();
    }

    /** The way on foot to the stretch's lower end; may take long. */
    default Optional<WalkIn> walkIn(LineStretch stretch) {
        return Optional.empty();
    }

    /** Everything at once. */
    default StretchFacts all(LineStretch stretch) {
        return new StretchFacts(order(stretch), width(stretch), slope(stretch), walkIn(stretch));
    }
}
