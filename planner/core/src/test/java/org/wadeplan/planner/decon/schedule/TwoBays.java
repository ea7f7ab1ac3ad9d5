package org.wadeplan.planner.decon.schedule;

import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.DeconResource;

/** The same tables with a second hot bay. */
final class TwoBays {

    private TwoBays() {}

    static Biosecurity of(Biosecurity tables) {
        return new Biosecurity(
                tables.pests(),
                tables.waterPests(),
                tables.treatments(),
                tables.steps(),
                tables.resources().stream().map(TwoBays::roomier).toList(),
                tables.gear(),
                tables.rules(),
                tables.jurisdiction());
    }

    private static DeconResource roomier(DeconResource one) {
        return one.id().equals("hot-bay")
                ? new DeconResource(one.id(), one.label(), 2, one.agent(), one.volumeL(), one.strengthGL(), one.note())
                : one;
    }
}
