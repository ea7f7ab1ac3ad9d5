package org.wadeplan.planner.week.verify;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.effort.BatteryNeed;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.round.VisitPart;

/** Packs are charged overnight: the visits of one date ask for no more than the store has in service. */
final class BatteryRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        long packs = facts.round().store().items().stream()
                .filter(item -> item.kind().equals("battery-pack") && item.state() != StoreState.OUT_OF_SERVICE)
                .count();
        TreeMap<LocalDate, Integer> asked = new TreeMap<>();
        for (PlanFacts.Visit visit : facts.visits()) {
            if (visit.activity().part().filter(part -> part == VisitPart.SURVEY).isPresent()) {
                int need = visit.site()
                        .flatMap(site -> facts.plan().effort(site.id()))
                        .flatMap(VisitEffort::batteries)
                        .map(BatteryNeed::packs)
                        .orElse(0);
                asked.merge(visit.day().date(), need, Integer::sum);
            }
        }
        List<Problem> problems = new ArrayList<>();
        asked.forEach((date, need) -> {
            if (need > packs) {
                problems.add(PlanFacts.broken(
                        "battery", date.toString(), need + " battery packs asked for", packs + " in service"));
            }
        });
        return problems;
    }
}
