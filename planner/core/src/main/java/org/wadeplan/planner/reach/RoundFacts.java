package org.wadeplan.planner.reach;

import java.util.Optional;
import java.util.OptionalInt;
import org.wadeplan.geo.access.WalkIn;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.network.StreamGraph;
import org.wadeplan.geo.network.StreamOrder;
import org.wadeplan.geo.reach.MeanWidth;
import org.wadeplan.geo.search.CandidateFacts;
import org.wadeplan.geo.search.LineStretch;
import org.wadeplan.geo.terrain.Slope;
import org.wadeplan.geo.terrain.SlopeFit;
import org.wadeplan.planner.round.Round;

/** What a round knows of any stretch of its streams. */
final class RoundFacts implements CandidateFacts {

    private final StreamGraph graph;
    private final StreamOrder orders;
    private final Widths widths;
    private final RoundAccess access;
    private final Optional<SlopeFit> slopes;

    RoundFacts(Round round) {
        this.graph = round.terrain().network().graph();
        this.orders = StreamOrder.of(graph);
        this.widths = new Widths(round);
        this.access = RoundAccess.of(round);
        this.slopes = round.terrain().elevation().map(grid -> new SlopeFit(graph.lines(), grid.ground()));
    }

    @Override
    public boolean knowsSlopes() {
        return slopes.isPresent();
    }

    @Override
    public boolean knowsWalkIns() {
        return !access.equals(RoundAccess.NONE);
    }

    @Override
    public OptionalInt order(LineStretch stretch) {
        return orders.strahler(graph.pieceAt(stretch.line(), (stretch.fromM() + stretch.toM()) / 2));
    }

    @Override
    public Optional<MeanWidth> width(LineStretch stretch) {
        return widths.of(stretch);
    }

    @Override
    public Optional<Slope> slope(LineStretch stretch) {
        return slopes.map(fit -> fit.slope(stretch.line(), stretch.fromM(), stretch.toM()));
    }

    @Override
    public Optional<WalkIn> walkIn(LineStretch stretch) {
        return access.walkIn(new LinePlace(stretch.line(), stretch.toM()));
    }
}
