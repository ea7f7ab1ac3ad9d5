package org.wadeplan.planner.week.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.planner.week.Unplaced;

/** Why a job found no place: for each part and crew-day the first rule in the way, same reasons told once. */
final class UnplacedReasons {

    private final WeekModel model;
    private final WeekEvaluator evaluator;
    private final WeekState state;

    UnplacedReasons(WeekModel model, WeekEvaluator evaluator, WeekState state) {
        this.model = model;
        this.evaluator = evaluator;
        this.state = state;
    }

    List<Unplaced> all() {
        List<Unplaced> unplaced = new ArrayList<>();
        for (Job job : model.jobs()) {
            if (!placed(job)) {
                unplaced.add(new Unplaced(job.site().id(), job.stops().get(0).method(), reasons(job)));
            }
        }
        return unplaced;
    }

    private boolean placed(Job job) {
        int first = job.stops().get(0).id();
        for (int[] day : state.stops()) {
            for (int stop : day) {
                if (stop == first) {
                    return true;
                }
            }
        }
        return false;
    }

    private List<String> reasons(Job job) {
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        for (Stop stop : job.stops()) {
            for (Slot slot : model.slots()) {
                String part = job.stops().size() > 1 ? stop.part().part().word() + ": " : "";
                if (!stop.fits(slot.index())) {
                    String reason = stop.whyNot().get(slot.index()).get(0);
                    byReason.computeIfAbsent(part + reason, key -> new ArrayList<>())
                            .add(slot.name());
                } else if (stop.orderInJob() == 0 && sameDayFits(job, slot)) {
                    dynamic(job, slot).ifPresent(reason -> byReason.computeIfAbsent(reason, key -> new ArrayList<>())
                            .add(slot.name()));
                }
            }
        }
        if (byReason.isEmpty()) {
            return List.of(
                    "Every part fits some crew-day, but no two crew-days fit together within the gap and what else"
                            + " is planned.");
        }
        return byReason.entrySet().stream()
                .map(entry -> String.join(", ", entry.getValue()) + ": " + entry.getKey())
                .toList();
    }

    /** Where another part of the same crew-day cannot stand at all, that part's own reason says more. */
    private static boolean sameDayFits(Job job, Slot slot) {
        return job.stops().stream()
                .allMatch(stop -> (stop.orderInJob() > 0 && stop.onLaterDay()) || stop.fits(slot.index()));
    }

    /** The line starts with the crew-day already. */
    private static String withoutName(String reason, Slot slot) {
        String name = slot.name() + ": ";
        return reason.startsWith(name) ? reason.substring(name.length()) : reason;
    }

    /** What breaks where the parts of one day are added at the end of that crew-day's visits, all else as planned. */
    private Optional<String> dynamic(Job job, Slot slot) {
        Optional<String> first = Optional.empty();
        for (int position = state.stops()[slot.index()].length; position >= 0; position--) {
            WeekState tried = state.copy();
            int at = position;
            for (Stop stop : job.stops()) {
                if (stop.orderInJob() == 0 || !stop.onLaterDay()) {
                    tried.insert(slot.index(), at++, stop.id());
                }
            }
            Optional<String> broken = evaluator.firstBroken(tried).map(reason -> withoutName(reason, slot));
            if (broken.isEmpty()) {
                return Optional.of("fits here, but a later part of it does not");
            }
            first = first.isPresent() ? first : broken;
        }
        return first;
    }
}
