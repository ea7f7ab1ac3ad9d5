package org.wadeplan.planner.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.wadeplan.geo.draw.AreaSpans;
import org.wadeplan.geo.draw.DrawFrame;
import org.wadeplan.geo.draw.FrameCutter;
import org.wadeplan.geo.draw.RoadSpans;
import org.wadeplan.geo.draw.Standing;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.network.OrderedPiece;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.reach.ReachProtocol.Sizing;
import org.wadeplan.planner.reach.SiteReaches;
import org.wadeplan.planner.round.Consent.ConsentStatus;
import org.wadeplan.planner.round.LineKindSpan;
import org.wadeplan.planner.round.Parcel;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.SearchSettings;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.round.WetState;

/**
 * The frame of a round: all its stream lines, less what the round knows to be closed, dry, tidal or no stream.
 *
 * <p>What a search for reaches rules out, {@code search} in {@code round.json}, is left out here too. Land where nobody asked stays in, because leave is asked for once a place is
 * drawn; each drawn place says how its land stands.
 */
final class RoundFrame {

    private static final String WHOLE = "all";

    private final Round round;
    private final StreamNetwork network;
    private final LineSet lines;
    private final SearchSettings settings;

    private RoundFrame(Round round) {
        this.round = round;
        this.network = round.terrain().network();
        this.lines = network.graph().lines();
        this.settings = round.header().search();
    }

    /** The frame of a request; where it asks for roads and the round has none, nothing is far from one. */
    static DrawFrame of(Round round, DrawRequest request) {
        RoundFrame frame = new RoundFrame(round);
        List<FrameCutter.Exclusion> exclusions = frame.exclusions();
        if (request.filtersByRoad()) {
            frame.addFarFromRoads(request.roadM(), exclusions);
        }
        return FrameCutter.cut(frame.lines, frame.parts(request), exclusions);
    }

    private List<FrameCutter.Part> parts(DrawRequest request) {
        return switch (request.strataBy()) {
            case NONE -> wholeLines(WHOLE);
            case ORDER -> orders();
            case CATCHMENT -> catchments();
            case WATER -> waters();
            case ROAD -> byRoad(request.roadM());
        };
    }

    private List<FrameCutter.Part> wholeLines(String stratum) {
        List<FrameCutter.Part> parts = new ArrayList<>();
        for (int line = 0; line < lines.lineCount(); line++) {
            parts.add(new FrameCutter.Part(line, 0, lines.lengthM(line), stratum));
        }
        return parts;
    }

    /** The far stretches first: where two parts overlap the first holds. */
    private List<FrameCutter.Part> byRoad(double withinM) {
        List<FrameCutter.Part> parts = new ArrayList<>();
        farFromRoads(withinM)
                .forEach(span -> parts.add(new FrameCutter.Part(span.line(), span.fromM(), span.toM(), "far")));
        parts.addAll(wholeLines("near-road"));
        return parts;
    }

    private List<AreaSpans.Span> farFromRoads(double withinM) {
        return round.terrain()
                .roads()
                .map(roads -> RoadSpans.beyond(lines, roads, withinM))
                .orElse(List.of());
    }

    private void addFarFromRoads(double withinM, List<FrameCutter.Exclusion> exclusions) {
        String reason = String.format(Locale.ROOT, "over %.0f m from a road, straight", withinM);
        farFromRoads(withinM)
                .forEach(span -> exclusions.add(
                        new FrameCutter.Exclusion(span.line(), span.fromM(), span.toM(), Standing.FILTERED, reason)));
    }

    private List<FrameCutter.Part> orders() {
        List<FrameCutter.Part> parts = new ArrayList<>();
        for (OrderedPiece piece : network.orders()) {
            parts.add(new FrameCutter.Part(
                    number(piece.code()), piece.fromM(), piece.toM(), Integer.toString(piece.strahler())));
        }
        return parts;
    }

    private List<FrameCutter.Part> catchments() {
        List<FrameCutter.Part> parts = new ArrayList<>();
        for (int line = 0; line < lines.lineCount(); line++) {
            String catchment = network.lines().get(line).catchment();
            if (!catchment.isBlank()) {
                parts.add(new FrameCutter.Part(line, 0, lines.lengthM(line), catchment));
            }
        }
        return parts;
    }

    private List<FrameCutter.Part> waters() {
        List<FrameCutter.Part> parts = new ArrayList<>();
        for (Water water : round.waters()) {
            network.number(water.stream()).ifPresent(line -> {
                double lengthM = lines.lengthM(line);
                parts.add(new FrameCutter.Part(
                        line, lengthM - water.fromMouthMaxM(), lengthM - water.fromMouthMinM(), water.id()));
            });
        }
        return parts;
    }

    private List<FrameCutter.Exclusion> exclusions() {
        List<FrameCutter.Exclusion> exclusions = new ArrayList<>();
        addClosedLand(exclusions);
        addDryReaches(exclusions);
        addLineKinds(exclusions);
        if (settings.tidalRuledOut()) {
            addTidalWaters(exclusions);
        }
        return exclusions;
    }

    private void addClosedLand(List<FrameCutter.Exclusion> exclusions) {
        Map<String, String> closed = closedParcels(round);
        AreaSpans spans = new AreaSpans(lines);
        for (Parcel parcel : round.terrain().parcels()) {
            Optional.ofNullable(closed.get(parcel.id())).ifPresent(state -> spans.of(parcel.area())
                    .forEach(span -> exclusions.add(new FrameCutter.Exclusion(
                            span.line(),
                            span.fromM(),
                            span.toM(),
                            Standing.DENIED,
                            "consent " + state + " on parcel " + parcel.id()))));
        }
    }

    /** What the map itself calls no stream, by the words that a search rules out. */
    private void addLineKinds(List<FrameCutter.Exclusion> exclusions) {
        for (LineKindSpan span : round.terrain().lineKinds()) {
            boolean ruledOut = settings.limits().lineKindsRuledOut().contains(span.kind());
            if (ruledOut && network.number(span.stream()).isPresent()) {
                exclusions.add(new FrameCutter.Exclusion(
                        number(span.stream()),
                        span.fromM(),
                        span.toM(),
                        Standing.NON_TARGET,
                        "mapped as " + span.kind()));
            }
        }
    }

    private void addTidalWaters(List<FrameCutter.Exclusion> exclusions) {
        round.waters().stream().filter(Water::tidal).forEach(water -> network.number(water.stream())
                .ifPresent(line -> {
                    double lengthM = lines.lengthM(line);
                    exclusions.add(new FrameCutter.Exclusion(
                            line,
                            lengthM - water.fromMouthMaxM(),
                            lengthM - water.fromMouthMinM(),
                            Standing.NON_TARGET,
                            "the tidal water " + water.id()));
                }));
    }

    /** As far as the reach of a dry site goes: nobody said that more of the stream is dry. */
    private void addDryReaches(List<FrameCutter.Exclusion> exclusions) {
        SiteReaches reaches = new SiteReaches(round);
        for (Site site : round.sites()) {
            boolean dry = site.conditions().wetState().equals(Optional.of(WetState.DRY));
            if (dry && network.number(site.stream()).isPresent()) {
                double startM = network.chainageM(site.stream(), site.start());
                double reachM = reaches.sizing(site) instanceof Sizing.Sized sized
                        ? sized.rule().lengthM()
                        : round.header().reach().protocol().leastLengthM();
                exclusions.add(new FrameCutter.Exclusion(
                        number(site.stream()),
                        startM - reachM,
                        startM,
                        Standing.DRY,
                        "the reach of " + site.id() + " is dry"));
            }
        }
    }

    private int number(String stream) {
        return network.number(stream).orElseThrow();
    }

    /** Parcels where nobody may go, with how consent stands: by their own row, or refused for a site on them. */
    static Map<String, String> closedParcels(Round round) {
        Map<String, String> closed = new TreeMap<>();
        for (Parcel parcel : round.terrain().parcels()) {
            String state = parcel.consentStatus().orElse("none").toLowerCase(Locale.ROOT);
            if (round.header().search().withoutConsent().contains(state)) {
                closed.put(parcel.id(), state);
            }
        }
        round.consents().stream()
                .filter(consent -> consent.status() == ConsentStatus.REFUSED)
                .flatMap(consent -> round.site(consent.site()).stream())
                .flatMap(site -> site.parcel().stream())
                .forEach(parcel -> closed.put(parcel, "refused"));
        return closed;
    }
}
