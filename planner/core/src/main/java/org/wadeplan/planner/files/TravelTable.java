package org.wadeplan.planner.files;

import org.wadeplan.planner.round.TravelLeg;

/** {@code travel.csv}: drives between places, in either direction. */
final class TravelTable {

    static final TableKind<TravelLeg> KIND = TableKind.named("travel", "from to")
            .required("from to minutes source")
            .makes(TravelTable::travelLeg);

    private TravelTable() {}

    private static TravelLeg travelLeg(Row row) {
        return new TravelLeg(
                row.text("from"), row.text("to"), row.integer("minutes", Range.MINUTES_OF_DAY), row.text("source"));
    }
}
