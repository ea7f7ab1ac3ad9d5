package org.wadeplan.planner.reach;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.geo.network.LineMeasure;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.search.LandToClear;
import org.wadeplan.geo.search.LineStretch;
import org.wadeplan.geo.search.LineTraits;
import org.wadeplan.geo.search.PlaceToClear;
import org.wadeplan.geo.search.ReasonKind;
import org.wadeplan.geo.search.SearchGround;
import org.wadeplan.geo.search.StretchToClear;
import org.wadeplan.planner.round.Barrier;
import org.wadeplan.planner.round.Consent;
import org.wadeplan.planner.round.LineKindSpan;
import org.wadeplan.planner.round.Parcel;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.SearchSettings;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Water;

/** What a search in a round keeps clear of: barriers, tidal water, land without consent, the reaches of its sites. */
final class RoundGround {

    /** A barrier farther off its stream than this lies on no line; only its straight distance counts. Metres. */
    private static final double ON_LINE_M = 100;

    private final Round round;
    private final SearchSettings settings;
    private final StreamNetwork network;
    private final List<Problem> problems = new ArrayList<>();

    RoundGround(Round round, SearchSettings settings) {
        this.round = round;
        this.settings = settings;
        this.network = round.terrain().network();
    }

    /** What was noticed on the way. */
    List<Problem> problems() {
        return List.copyOf(problems);
    }

    /**
     * The ground.
     *
     * @param taken reaches that are there already
     */
    SearchGround ground(List<Reach> taken) {
        List<PlaceToClear> places = new ArrayList<>();
        round.terrain().barriers().forEach(barrier -> places.add(place(barrier)));
        List<StretchToClear> stretches = new ArrayList<>();
        if (settings.tidalRuledOut()) {
            round.waters().stream().filter(Water::tidal).forEach(water -> tidal(water, places, stretches));
        }
        round.terrain().lineKinds().forEach(span -> lineKind(span).ifPresent(stretches::add));
        taken.forEach(reach -> stretches.add(taken(reach)));
        return new SearchGround(network.graph(), places, land(), stretches, new RoundFacts(round), new Traits(round));
    }

    private PlaceToClear place(Barrier barrier) {
        String kind = barrier.kind().toLowerCase(Locale.ROOT);
        return new PlaceToClear(
                ReasonKind.OBSTACLE, kind, barrier.id(), barrier.at(), onLine(barrier), settings.clearM(kind));
    }

    private Optional<LinePlace> onLine(Barrier barrier) {
        if (network.number(barrier.stream()).isEmpty()) {
            return Optional.empty();
        }
        LineMeasure.Foot foot = network.measure(barrier.stream()).foot(barrier.at());
        if (foot.distanceM() > ON_LINE_M) {
            problems.add(Problem.warning(
                    "barrier-off-line",
                    SourcePlace.part("barriers.csv", barrier.id()),
                    String.format(
                            Locale.ROOT,
                            "it lies %.0f m from %s; only its straight distance keeps reaches clear of it",
                            foot.distanceM(),
                            barrier.stream()),
                    "within 100 m of its stream line",
                    "check its coordinates and its stream"));
            return Optional.empty();
        }
        return Optional.of(new LinePlace(network.number(barrier.stream()).getAsInt(), foot.chainageM()));
    }

    private void tidal(Water water, List<PlaceToClear> places, List<StretchToClear> stretches) {
        if (network.number(water.stream()).isEmpty()) {
            return;
        }
        int line = network.number(water.stream()).getAsInt();
        double lengthM = network.measure(water.stream()).lengthM();
        double fromM = lengthM - Math.min(lengthM, water.fromMouthMaxM());
        double toM = lengthM - Math.min(lengthM, water.fromMouthMinM());
        if (toM > fromM) {
            stretches.add(new StretchToClear(
                    ReasonKind.TIDAL,
                    "in tidal water",
                    "the tidal water " + water.id(),
                    new LineStretch(line, fromM, toM),
                    0));
        }
        if (fromM > 0) {
            places.add(new PlaceToClear(
                    ReasonKind.TIDAL,
                    "tidal limit",
                    "of " + water.id(),
                    network.at(water.stream(), fromM),
                    Optional.of(new LinePlace(line, fromM)),
                    settings.clearM("tidal-limit")));
        }
    }

    private Optional<StretchToClear> lineKind(LineKindSpan span) {
        if (!settings.limits().lineKindsRuledOut().contains(span.kind()) || !(span.toM() > span.fromM())) {
            return Optional.empty();
        }
        return Optional.of(new StretchToClear(
                ReasonKind.LINE_KIND,
                "on a line mapped as " + span.kind(),
                "a line mapped as " + span.kind(),
                new LineStretch(network.number(span.stream()).orElseThrow(), span.fromM(), span.toM()),
                0));
    }

    private StretchToClear taken(Reach reach) {
        return new StretchToClear(
                ReasonKind.TAKEN,
                "taken by a site's reach",
                "the reach of " + reach.site(),
                new LineStretch(
                        network.number(reach.stream()).orElseThrow(),
                        reach.end().chainageM(),
                        reach.start().chainageM()),
                settings.minGapM());
    }

    private List<LandToClear> land() {
        Set<String> refused = refusedParcels();
        List<LandToClear> land = new ArrayList<>();
        for (Parcel parcel : round.terrain().parcels()) {
            String state = parcel.consentStatus().orElse("none").toLowerCase(Locale.ROOT);
            boolean refusedAtSite = refused.contains(parcel.id());
            if (refusedAtSite || settings.withoutConsent().contains(state)) {
                land.add(new LandToClear(
                        parcel.id(),
                        "consent " + (refusedAtSite ? "refused" : state),
                        parcel.area(),
                        settings.clearM("parcel")));
            }
        }
        return land;
    }

    /** Parcels of sites whose consent was refused, whatever the map still says. */
    private Set<String> refusedParcels() {
        Set<String> parcels = new TreeSet<>();
        for (Consent consent : round.consents()) {
            if (consent.status() == Consent.ConsentStatus.REFUSED) {
                round.site(consent.site()).flatMap(Site::parcel).ifPresent(parcels::add);
            }
        }
        return parcels;
    }

    /** Waters by place, else the stream's catchment. */
    private record Traits(Round round) implements LineTraits {

        @Override
        public String group(LinePlace place) {
            return RoundGround.water(round, place)
                    .map(Water::id)
                    .orElseGet(() ->
                            round.terrain().network().lines().get(place.line()).catchment());
        }
    }

    /** The water that holds a place on a stream. */
    static Optional<Water> water(Round round, LinePlace place) {
        StreamNetwork network = round.terrain().network();
        String stream = network.lines().get(place.line()).code();
        double fromMouthM = network.measure(stream).lengthM() - place.chainageM();
        return round.waters().stream()
                .filter(water -> water.stream().equals(stream)
                        && fromMouthM >= water.fromMouthMinM()
                        && fromMouthM <= water.fromMouthMaxM())
                .findFirst();
    }
}
