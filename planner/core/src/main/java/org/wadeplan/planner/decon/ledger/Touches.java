package org.wadeplan.planner.decon.ledger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.WeekPlan;

/** Reads out of a week which water each visit is in. A site that no row of the waters holds is a water of its own. */
final class Touches {

    private Touches() {}

    /** A visit of the week with its crew and water. */
    record Visit(CrewDay day, Activity activity, String water) {

        Touch touch() {
            return new Touch(
                    water,
                    activity.site().orElse("?")
                            + activity.part().map(part -> " " + part.word()).orElse(""),
                    activity.site(),
                    Optional.of(day.crew()),
                    activity.kitSets(),
                    activity.start(),
                    activity.end());
        }
    }

    /** By start. */
    static List<Visit> visits(Round round, WeekPlan week) {
        List<Visit> visits = new ArrayList<>();
        for (CrewDay day : week.crewDays()) {
            for (Activity activity : day.visits()) {
                String site = activity.site().orElse("?");
                String water =
                        round.site(site).flatMap(round::waterOf).map(Water::id).orElse("unknown water of " + site);
                visits.add(new Visit(day, activity, water));
            }
        }
        visits.sort(Comparator.comparing(visit -> visit.activity().start()));
        return visits;
    }

    /** What was touched before the round, at the time on file or else at its beginning. */
    static List<Touch> before(Round round, List<String> waters, Optional<Instant> wetSince) {
        Instant begins =
                round.header().firstDay().atStartOfDay(round.header().zone()).toInstant();
        Instant at = wetSince.filter(begins::isAfter).orElse(begins);
        return waters.stream()
                .map(water -> new Touch(water, Touch.BEFORE, Optional.empty(), Optional.empty(), List.of(), at, at))
                .toList();
    }

    /** The touches with traps left in the water until they are lifted. */
    static List<Touch> withSoaks(List<Visit> visits, List<Touch> touches) {
        List<Touch> soaked = new ArrayList<>();
        for (Touch touch : touches) {
            Optional<Instant> lifted = visits.stream()
                    .filter(visit -> isSetBy(touch, visits))
                    .filter(visit -> visit.activity().part().equals(Optional.of(VisitPart.LIFT))
                            && visit.activity().site().equals(touch.site())
                            && visit.activity().start().isAfter(touch.from())
                            && touches.contains(visit.touch()))
                    .map(visit -> visit.activity().start())
                    .min(Comparator.naturalOrder());
            soaked.add(lifted.map(until -> until(touch, until)).orElse(touch));
        }
        return List.copyOf(soaked);
    }

    private static boolean isSetBy(Touch touch, List<Visit> visits) {
        return visits.stream()
                .anyMatch(visit -> visit.activity().part().equals(Optional.of(VisitPart.SET))
                        && visit.touch().equals(touch));
    }

    private static Touch until(Touch touch, Instant until) {
        return new Touch(touch.water(), touch.where(), touch.site(), touch.crew(), touch.with(), touch.from(), until);
    }
}
