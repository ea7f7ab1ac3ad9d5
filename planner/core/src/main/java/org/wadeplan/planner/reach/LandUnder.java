package org.wadeplan.planner.reach;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.index.strtree.STRtree;
import org.wadeplan.planner.round.Parcel;

/** Whose land a reach runs over, as far as the map of parcels tells. */
final class LandUnder {

    /** Less of a reach than this on a parcel is a difference of drawing, metres. */
    private static final double LEAST_M = 0.5;

    private final List<Parcel> parcels;
    private final STRtree boxes = new STRtree();

    LandUnder(List<Parcel> parcels) {
        this.parcels = parcels;
        for (int i = 0; i < parcels.size(); i++) {
            boxes.insert(parcels.get(i).area().getEnvelopeInternal(), i);
        }
        boxes.build();
    }

    /** {@code 150 m on L-OUN-01, consent yes}; what lies on no parcel is said too. */
    List<String> under(LineString line) {
        List<Integer> near = new ArrayList<>();
        for (Object index : boxes.query(line.getEnvelopeInternal())) {
            near.add((Integer) index);
        }
        near.sort(null);
        List<String> words = new ArrayList<>();
        double onParcelsM = 0;
        for (int index : near) {
            Parcel parcel = parcels.get(index);
            double onM = line.intersection(parcel.area()).getLength();
            if (onM >= LEAST_M) {
                onParcelsM += onM;
                words.add(String.format(
                        Locale.ROOT,
                        "%.0f m on %s, consent %s",
                        onM,
                        parcel.id(),
                        parcel.consentStatus().orElse("not stated")));
            }
        }
        double leftM = line.getLength() - onParcelsM;
        if (leftM >= LEAST_M) {
            words.add(String.format(Locale.ROOT, "%.0f m on no parcel of the map: consent not checked", leftM));
        }
        return words;
    }
}
