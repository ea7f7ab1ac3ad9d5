package org.wadeplan.planner.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.index.strtree.STRtree;
import org.wadeplan.geo.draw.Loss;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.planner.round.Parcel;
import org.wadeplan.planner.round.Round;

/** On whose land a reach would lie, and how consent stands there. */
final class ReachLand {

    private final LineSet lines;
    private final STRtree parcels = new STRtree();
    private final Map<String, String> closed;

    ReachLand(Round round) {
        this.lines = round.terrain().network().graph().lines();
        this.closed = RoundFrame.closedParcels(round);
        round.terrain().parcels().forEach(parcel -> parcels.insert(parcel.area().getEnvelopeInternal(), parcel));
    }

    /** {@code L-BRN-01: yes} for each parcel under the reach, sorted. */
    List<String> words(ReachRoom.Reach reach) {
        return under(reach).stream()
                .map(parcel -> parcel.id() + ": " + standing(parcel))
                .sorted()
                .toList();
    }

    /** A reach that begins on open land may run onto land where nobody may go. */
    Optional<Loss> refusal(ReachRoom.Reach reach) {
        return under(reach).stream()
                .map(Parcel::id)
                .filter(closed::containsKey)
                .sorted()
                .findFirst()
                .map(parcel -> new Loss(
                        Loss.Ground.DENIED,
                        "its reach would run onto parcel " + parcel + ", consent " + closed.get(parcel)));
    }

    private List<Parcel> under(ReachRoom.Reach reach) {
        LineString line = lines.between(reach.line(), reach.startM(), reach.endM());
        Envelope box = line.getEnvelopeInternal();
        List<Parcel> under = new ArrayList<>();
        for (Object near : parcels.query(box)) {
            Parcel parcel = (Parcel) near;
            if (parcel.area().intersects(line)) {
                under.add(parcel);
            }
        }
        return under;
    }

    private String standing(Parcel parcel) {
        return Optional.ofNullable(closed.get(parcel.id()))
                .or(parcel::consentStatus)
                .orElse("nobody asked");
    }
}
