package org.wadeplan.planner.decon;

import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.Round;

/** A demo round with one table replaced. */
final class DemoCopies {

    private DemoCopies() {}

    static Round withBiosecurity(Round round, Biosecurity biosecurity) {
        return new Round(
                round.folder(),
                round.header(),
                round.terrain(),
                round.waters(),
                round.sites(),
                round.pastVisits(),
                round.travel(),
                round.methods(),
                round.methodTable(),
                round.store(),
                round.people(),
                round.roster(),
                round.permits(),
                round.consents(),
                biosecurity,
                round.tides(),
                round.siteHazards(),
                round.forecast(),
                round.care(),
                round.hash());
    }
}
