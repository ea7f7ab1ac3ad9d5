package org.wadeplan.planner.reach;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.network.Drainage;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.network.StreamGraph;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.reach.MeanWidth;
import org.wadeplan.geo.reach.WidthCurve;
import org.wadeplan.geo.search.LineStretch;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;

/** Mean widths of a round's streams, with how each is known. */
final class Widths {

    /** A site's width tells nothing of water farther off than this along the same piece, metres; common practice. */
    private static final double NEAR_SITE_M = 1000;

    private record AtSite(LinePlace start, String site, MeanWidth width) {}

    private final Round round;
    private final StreamNetwork network;
    private final Optional<WidthCurve> curve;
    private final Optional<Drainage> drainage;
    private final List<AtSite> sites = new ArrayList<>();

    Widths(Round round) {
        this.round = round;
        this.network = round.terrain().network();
        this.curve = round.header().reach().widthCurve();
        this.drainage = curve.map(given -> Drainage.of(network.graph()));
        for (Site site : round.sites()) {
            if (network.number(site.stream()).isPresent()) {
                LinePlace start = new LinePlace(
                        network.number(site.stream()).getAsInt(), network.chainageM(site.stream(), site.start()));
                known(site).ifPresent(width -> sites.add(new AtSite(start, site.id(), width)));
            }
        }
    }

    /** Measured at the site now or on past visits. */
    Optional<MeanWidth> known(Site site) {
        List<Double> past = round.pastVisits().stream()
                .filter(visit -> visit.site().equals(site.id())
                        && visit.widthM().isPresent()
                        && visit.widthM().getAsDouble() > 0)
                .map(visit -> visit.widthM().getAsDouble())
                .toList();
        return MeanWidth.best(site.conditions().widthM(), past, Optional.empty());
    }

    /** By the round's regional curve, from the length of stream above; empty without a curve. */
    Optional<MeanWidth> byCurve(LinePlace place) {
        StreamGraph graph = network.graph();
        int piece = graph.pieceAt(place.line(), place.chainageM());
        return curve.flatMap(known -> known.width(
                OptionalDouble.empty(),
                drainage.map(flow -> OptionalDouble.of(flow.upstreamLengthM(piece)))
                        .orElse(OptionalDouble.empty())));
    }

    /** Of the nearest site on the same piece, else by the curve. */
    Optional<MeanWidth> of(LineStretch stretch) {
        StreamGraph graph = network.graph();
        int piece = graph.pieceAt(stretch.line(), (stretch.fromM() + stretch.toM()) / 2);
        Optional<MeanWidth> nearest = Optional.empty();
        double nearestM = NEAR_SITE_M;
        for (AtSite site : sites) {
            double offM = Math.max(
                    0,
                    Math.max(
                            stretch.fromM() - site.start().chainageM(),
                            site.start().chainageM() - stretch.toM()));
            boolean samePiece = site.start().line() == stretch.line()
                    && graph.pieceAt(site.start().line(), site.start().chainageM()) == piece;
            if (samePiece && (offM < nearestM || (offM == nearestM && nearest.isEmpty()))) {
                nearestM = offM;
                nearest = Optional.of(labelled(site, offM));
            }
        }
        return nearest.or(() -> byCurve(new LinePlace(stretch.line(), stretch.toM())));
    }

    private static MeanWidth labelled(AtSite site, double offM) {
        String where = offM == 0
                ? "at " + site.site()
                : String.format(Locale.ROOT, "of %s, %.0f m off on the same water", site.site(), offM);
        return new MeanWidth(site.width().widthM(), where + ", " + site.width().basis());
    }
}
