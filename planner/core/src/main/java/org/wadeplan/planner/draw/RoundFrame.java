package org.wadeplan.planner.draw;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wadeplan.geo.draw.AreaSpans;
import org.wadeplan.geo.draw.DrawFrame;
import org.wadeplan.geo.draw.FrameCutter;
import org.wadeplan.geo.draw.Standing;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.network.OrderedPiece;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.planner.round.Consent.ConsentStatus;
import org.wadeplan.planner.round.Parcel;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.round.WetState;

/**
 * The frame of a round: all its stream lines, less what the round knows to be closed or dry.
 *
 * <p>Land whose holder refused is left out. Land where nobody asked stays in, because leave is asked for once a place is
 * drawn; each drawn place says how its land stands.
 */
final class RoundFrame {

    private static final String WHOLE = "all";

    private final Round round;
    private final StreamNetwork network;
    private final LineSet lines;

    private RoundFrame(Round round) {
        this.round = round;
        this.network = round.terrain().network();
        this.lines = network.graph().lines();
    }

    static DrawFrame of(Round round, StrataBy strataBy) {
        RoundFrame frame = new RoundFrame(round);
        return FrameCutter.cut(frame.lines, frame.parts(strataBy), frame.exclusions());
    }

    private List<FrameCutter.Part> parts(StrataBy strataBy) {
        return switch (strataBy) {
            case NONE -> wholeLines();
            case ORDER -> orders();
            case CATCHMENT -> catchments();
            case WATER -> waters();
        };
    }

    private List<FrameCutter.Part> wholeLines() {
        List<FrameCutter.Part> parts = new ArrayList<>();
        for (int line = 0; line < lines.lineCount(); line++) {
            parts.add(new FrameCutter.Part(line, 0, lines.lengthM(line), WHOLE));
        }
        return parts;
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
        Set<String> refused = refusedParcels(round);
        AreaSpans spans = new AreaSpans(lines);
        for (Parcel parcel : round.terrain().parcels()) {
            if (refused.contains(parcel.id())) {
                String reason = "consent refused on parcel " + parcel.id();
                spans.of(parcel.area())
                        .forEach(span -> exclusions.add(new FrameCutter.Exclusion(
                                span.line(), span.fromM(), span.toM(), Standing.DENIED, reason)));
            }
        }
        round.sites().stream()
                .filter(site -> site.conditions().wetState().equals(Optional.of(WetState.DRY)))
                .forEach(site -> exclusions.add(dry(site)));
        return exclusions;
    }

    /** As far as the reach of the dry site goes: nobody said that more of the stream is dry. */
    private FrameCutter.Exclusion dry(Site site) {
        double startM = network.chainageM(site.stream(), site.start());
        double reachM = round.header().reachRule().lengthM();
        return new FrameCutter.Exclusion(
                number(site.stream()), startM - reachM, startM, Standing.DRY, "the reach of " + site.id() + " is dry");
    }

    private int number(String stream) {
        return network.number(stream).orElseThrow();
    }

    /** Parcels whose own row says so, and those of sites whose consent was refused. */
    static Set<String> refusedParcels(Round round) {
        Set<String> refused = new LinkedHashSet<>();
        round.terrain().parcels().stream()
                .filter(parcel -> parcel.consentStatus()
                        .filter(ConsentStatus.REFUSED.name()::equalsIgnoreCase)
                        .isPresent())
                .forEach(parcel -> refused.add(parcel.id()));
        round.consents().stream()
                .filter(consent -> consent.status() == ConsentStatus.REFUSED)
                .flatMap(consent -> round.site(consent.site()).stream())
                .flatMap(site -> site.parcel().stream())
                .forEach(refused::add);
        return refused;
    }
}
