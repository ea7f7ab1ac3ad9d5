package org.wadeplan.planner.pack.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wadeplan.planner.kit.DayWeights;
import org.wadeplan.planner.kit.WeightCheck;
import org.wadeplan.planner.week.CrewDay;

/** What a load weighs on the vehicle and on each walk, in lines for the page. */
final class LoadWeights {

    private LoadWeights() {}

    static List<String> lines(PlanSource source, CrewDay day) {
        List<String> lines = new ArrayList<>();
        for (DayWeights weights :
                WeightCheck.of(source.round(), List.of(day), source.plan().kit())) {
            if (weights.gear().kg() > 0) {
                lines.add(vehicle(weights));
                weights.walks().forEach(walk -> lines.add(walk(walk)));
            }
        }
        return List.copyOf(lines);
    }

    private static String vehicle(DayWeights weights) {
        String payload = weights.payloadKg().isPresent()
                ? (weights.overPayload() ? ", OVER the payload of " : " of ")
                        + kg(weights.payloadKg().getAsDouble())
                : ", payload not known";
        String unknown = weights.gear().notWeighed().isEmpty()
                ? ""
                : "; not weighed: " + String.join(", ", weights.gear().notWeighed());
        return "On " + weights.vehicle() + ": gear " + kg(weights.gear().kg()) + ", people " + kg(weights.peopleKg())
                + ", " + kg(weights.totalKg()) + payload + unknown;
    }

    private static String walk(DayWeights.Walk walk) {
        String far = walk.walkInM().isPresent()
                ? String.format(Locale.ROOT, "%.0f m", walk.walkInM().getAsDouble())
                : "walk not known";
        return "To " + walk.site() + ", " + far + ": " + kg(walk.perPersonKg()) + " for each of " + walk.people()
                + (walk.heavy()
                        ? ", HEAVY (above " + kg(WeightCheck.LOOK_CLOSER_KG) + "): walk twice or take less"
                        : "");
    }

    private static String kg(double value) {
        return String.format(Locale.ROOT, "%.0f kg", value);
    }
}
