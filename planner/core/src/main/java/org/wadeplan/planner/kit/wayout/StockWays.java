package org.wadeplan.planner.kit.wayout;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.kit.KitWords;
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.round.WaterPest.PestStatus;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.DeconTask;

/** Ways out for what is used up: leave out a cleaning that nothing on file asks for. */
final class StockWays {

    private final Replan replan;
    private final Round round;

    StockWays(Replan replan) {
        this.replan = replan;
        this.round = replan.round();
    }

    /**
     * Cleanings between two visits to one water in which no pest is known or suspected. They are good practice all the same,
     * so they are named one by one and never left out silently.
     */
    List<Change> optionalCleanings(String kind, String unit) {
        List<Change> changes = new ArrayList<>();
        for (DeconTask task : replan.before().week().decon()) {
            Optional<Water> same = sameWaterNext(task);
            if (same.isPresent()) {
                changes.add(leftOut(task, same.get(), kind, unit));
            }
        }
        return changes;
    }

    private Change leftOut(DeconTask task, Water water, String kind, String unit) {
        List<AgreedTask> tasks = replan.tasks().stream()
                .filter(line -> !(line.cleaning()
                        && line.start().equals(task.start())
                        && line.kitSets().equals(List.of(task.kitSet()))))
                .toList();
        double before = replan.before().shortBy(kind);
        return new Change(
                WayCost.NONE,
                "leave out the cleaning of " + task.kitSet() + " on "
                        + KitWords.moment(task.start(), round.header().zone()) + ": it goes back into " + water.name()
                        + ", where no pest is known or suspected",
                round,
                tasks,
                trial -> "it saves " + KitWords.quantity(before - trial.shortBy(kind), unit)
                        + "; check and rinse it all the same, and let it dry");
    }

    /** The water, where the set was in one water without a known or suspected pest and goes back into it next. */
    private Optional<Water> sameWaterNext(DeconTask task) {
        if (task.fromWaters().size() != 1) {
            return Optional.empty();
        }
        String from = task.fromWaters().get(0);
        boolean pest = round.biosecurity().waterPests().stream()
                .anyMatch(row -> row.water().equals(from)
                        && (row.status() == PestStatus.KNOWN || row.status() == PestStatus.SUSPECTED));
        Optional<String> next = next(task.kitSet(), task.start());
        return pest || !next.equals(Optional.of(from)) ? Optional.empty() : round.water(from);
    }

    private Optional<String> next(String kitSet, Instant after) {
        return replan.before().week().crewDays().stream()
                .flatMap(day -> day.visits().stream())
                .filter(visit ->
                        visit.kitSets().contains(kitSet) && visit.start().isAfter(after))
                .min(Comparator.comparing(Activity::start))
                .flatMap(visit -> round.site(visit.place()))
                .flatMap(round::waterOf)
                .map(Water::id);
    }
}
