package org.wadeplan.geo.search;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.geo.network.StreamGraph;
import org.wadeplan.geo.reach.LengthRule;
import org.wadeplan.geo.reach.MeanWidth;
import org.wadeplan.geo.reach.ReachProtocol;
import org.wadeplan.geo.reach.ReachProtocol.Sizing;

/** How long a reach is on each run, by the width of its lowest piece. */
final class RunSizes {

    private final Sizing[] sizes;

    RunSizes(SearchGround ground, Runs runs, ReachProtocol protocol) {
        StreamGraph graph = ground.graph();
        boolean byWidth = protocol.length() instanceof LengthRule.Widths;
        Map<Optional<MeanWidth>, Sizing> known = new LinkedHashMap<>();
        this.sizes = new Sizing[runs.count()];
        for (int run = 0; run < sizes.length; run++) {
            int piece = runs.lowestPiece(run);
            Optional<MeanWidth> width = byWidth
                    ? ground.facts().width(new LineStretch(graph.line(piece), graph.fromM(piece), graph.toM(piece)))
                    : Optional.empty();
            sizes[run] = known.computeIfAbsent(width, protocol::at);
        }
    }

    Sizing of(int run) {
        return sizes[run];
    }

    /** Metres; infinite where no reach can be sized, so that none fits. */
    double lengthM(int run) {
        return sizes[run] instanceof Sizing.Sized sized ? sized.rule().lengthM() : Double.POSITIVE_INFINITY;
    }
}
