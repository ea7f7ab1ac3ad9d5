package org.wadeplan.planner.kit;

import java.util.List;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;

/** A demo round with other things in its store. */
final class StoreCopies {

    private StoreCopies() {}

    static Round withItems(Round round, List<StoreItem> items) {
        Store old = round.store();
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
                new Store(old.kitSets(), List.copyOf(items), old.needs(), old.packSeconds()),
                round.people(),
                round.roster(),
                round.permits(),
                round.consents(),
                round.biosecurity(),
                round.tides(),
                round.siteHazards(),
                round.forecast(),
                round.care(),
                round.hash());
    }
}
