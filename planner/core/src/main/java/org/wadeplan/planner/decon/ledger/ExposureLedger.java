package org.wadeplan.planner.decon.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.kit.KitPlan;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/**
 * What each kit set and each item outside a set touches and how it is treated, before the round and in a week.
 *
 * @param lanes kit sets in the store's order, then items in the store's order
 */
public record ExposureLedger(List<Lane> lanes) {

    /** The ledger of a week: the agreed or planned one, with what is on record in the place of what was planned. */
    public static ExposureLedger of(Round round, WeekPlan week, KitPlan kit) {
        List<Lane> lanes = new ArrayList<>();
        SetLanes sets = new SetLanes(round, week);
        for (KitSet set : round.store().kitSets()) {
            lanes.add(sets.of(set));
        }
        lanes.addAll(new ItemLanes(round, week, kit, List.copyOf(lanes)).all());
        return new ExposureLedger(List.copyOf(lanes));
    }

    public Optional<Lane> lane(String id) {
        return lanes.stream().filter(lane -> lane.id().equals(id)).findFirst();
    }

    /** Items outside the sets that are cleaned together with one, in the store's order. */
    public List<LooseItem> looseWith(DeconTask task) {
        return lanes.stream().flatMap(lane -> LooseItem.of(lane, task).stream()).toList();
    }

    public List<Lane> kitSets() {
        return lanes.stream().filter(lane -> !lane.item()).toList();
    }
}
