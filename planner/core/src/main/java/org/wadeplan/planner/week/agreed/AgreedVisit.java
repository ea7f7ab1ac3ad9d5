package org.wadeplan.planner.week.agreed;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.wadeplan.planner.effort.PartEffort;
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.MethodPart;
import org.wadeplan.planner.round.Site;

/** A line of the agreed week that is a part of a visit, with the method that the round's table gives the site. */
record AgreedVisit(AgreedTask task, Site site, String method, MethodPart part, PartEffort effort) {

    Instant start() {
        return task.start();
    }

    /** When it ends in four cases of five. */
    Instant end() {
        return start().plus(Duration.ofMinutes(effort.p80Min()));
    }

    Instant p50End() {
        return start().plus(Duration.ofMinutes(effort.p50Min()));
    }

    List<String> kitSets() {
        return task.kitSets();
    }

    String name() {
        return site.id() + " " + part.part().word();
    }
}
