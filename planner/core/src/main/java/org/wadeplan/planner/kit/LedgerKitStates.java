package org.wadeplan.planner.kit;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wadeplan.planner.decon.ledger.ExposureLedger;
import org.wadeplan.planner.decon.ledger.KitState;
import org.wadeplan.planner.decon.ledger.Lane;
import org.wadeplan.planner.decon.ledger.LaneMoment;
import org.wadeplan.planner.decon.ledger.OpenExposure;
import org.wadeplan.planner.decon.ledger.OpenExposures;
import org.wadeplan.planner.decon.ledger.Treated;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.WeekPlan;

/** By the exposure ledger: the week in force, with what is on record in the place of what was planned. */
final class LedgerKitStates implements KitStates {

    private final Round round;
    private final ExposureLedger ledger;
    private final OpenExposures exposures;
    private final ZoneId zone;

    LedgerKitStates(Round round, WeekPlan week, KitPlan kit) {
        this.round = round;
        this.ledger = ExposureLedger.of(round, week, kit);
        this.exposures = new OpenExposures(round);
        this.zone = round.header().zone();
    }

    @Override
    public Optional<String> against(String id, Instant at, List<String> toWaters) {
        return ledger.lane(id).flatMap(lane -> against(lane, at, toWaters));
    }

    private Optional<String> against(Lane lane, Instant at, List<String> toWaters) {
        LaneMoment moment = LaneMoment.of(round, lane, exposures, at);
        if (moment.state() != KitState.CLEAN_DRY && moment.state() != KitState.RELEASED) {
            String released = moment.released()
                    .filter(at::isBefore)
                    .map(time -> ", released at " + KitWords.moment(time, zone))
                    .orElse("");
            return Optional.of(lane.id() + " is " + moment.state().word() + " since "
                    + KitWords.moment(moment.since(), zone) + " (" + moment.why() + ")" + released);
        }
        return toWaters.stream()
                .flatMap(water -> open(lane, at, water).stream())
                .findFirst();
    }

    private Optional<String> open(Lane lane, Instant at, String water) {
        List<OpenExposure> open = exposures.on(lane, at, water);
        return open.isEmpty()
                ? Optional.empty()
                : Optional.of(lane.id() + " is not cleared for " + water + ": "
                        + open.stream()
                                .map(one -> one.pest() + " from " + one.where())
                                .distinct()
                                .collect(Collectors.joining(", ")));
    }

    @Override
    public Optional<String> restsOn(String id, Instant at) {
        Optional<Treated> last = ledger.lane(id).flatMap(lane -> lane.treated().stream()
                .filter(one -> !one.start().isAfter(at))
                .max(Comparator.comparing(Treated::start)));
        return last.map(one -> one.onRecord()
                ? "the cleaning on record: " + one.what() + ", " + one.by()
                : "the plan: nobody recorded the cleaning of " + KitWords.moment(one.start(), zone));
    }
}
