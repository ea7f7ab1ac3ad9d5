package org.wadeplan.planner.week.verify;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.KitNeed;
import org.wadeplan.planner.round.KitPer;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;

/** What needs a certificate is there, certified on the day, for each crew that is out with it at the same time. */
final class CertificateRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        List<Outing> outings = outings(facts);
        for (Outing outing : outings) {
            int together = outings.stream()
                    .filter(other -> other.kind().equals(outing.kind())
                            && other.certificate().equals(outing.certificate()))
                    .filter(other -> !other.from().isAfter(outing.from())
                            && other.until().isAfter(outing.from()))
                    .mapToInt(Outing::quantity)
                    .sum();
            long there = valid(facts, outing)
                    .filter(item ->
                            item.availableUntil().filter(outing.from()::isAfter).isEmpty())
                    .count();
            long throughout = valid(facts, outing)
                    .filter(item -> item.availableUntil()
                            .filter(outing.until()::isAfter)
                            .isEmpty())
                    .count();
            if (together > there || outing.quantity() > throughout) {
                problems.add(PlanFacts.broken(
                        "certificate",
                        outing.day(),
                        together + " " + outing.kind() + " out at " + facts.clock(outing.from()),
                        Math.min(there, throughout) + " with a valid " + outing.certificate()
                                + ", in service and there"));
            }
        }
        return problems;
    }

    /** One kind of item out with one crew from leaving the depot to coming back. */
    private record Outing(CrewDay day, String kind, String certificate, int quantity, Instant from, Instant until) {}

    private static java.util.stream.Stream<StoreItem> valid(PlanFacts facts, Outing outing) {
        return facts.round().store().items().stream()
                .filter(item -> item.kind().equals(outing.kind()) && item.state() != StoreState.OUT_OF_SERVICE)
                .filter(item -> item.certificates().stream()
                        .anyMatch(one -> one.certificate().equals(outing.certificate())
                                && one.validOn(outing.day().date())))
                .filter(item ->
                        item.availableFrom().filter(outing.from()::isBefore).isEmpty());
    }

    private static List<Outing> outings(PlanFacts facts) {
        List<Outing> outings = new ArrayList<>();
        for (CrewDay day : facts.week().crewDays()) {
            List<Activity> out = new ArrayList<>();
            for (Activity activity : day.activities()) {
                out.add(activity);
                if (activity.place().equals(facts.round().header().depot().id())) {
                    addOutings(facts, day, out, outings);
                    out.clear();
                }
            }
        }
        return outings;
    }

    private static void addOutings(PlanFacts facts, CrewDay day, List<Activity> out, List<Outing> outings) {
        Map<String, Integer> most = new LinkedHashMap<>();
        for (Activity visit : out) {
            for (KitNeed need : facts.round().store().needs()) {
                boolean asked = need.certificate().isPresent()
                        && visit.method().filter(need.method()::equals).isPresent()
                        && visit.part().filter(need.part()::equals).isPresent();
                if (asked) {
                    int people = people(facts, day, need.per());
                    most.merge(
                            need.kind() + "\t" + need.certificate().get(),
                            (int) Math.ceil(need.quantity()) * people,
                            Math::max);
                }
            }
        }
        most.forEach((key, quantity) -> {
            String[] words = key.split("\t", 2);
            outings.add(new Outing(
                    day,
                    words[0],
                    words[1],
                    quantity,
                    out.get(0).start(),
                    out.get(out.size() - 1).end()));
        });
    }

    private static int people(PlanFacts facts, CrewDay day, KitPer per) {
        if (per == KitPer.LIVE_CIRCUIT_PERSON) {
            return (int) facts.people(day).stream().filter(Person::liveCircuit).count();
        }
        return per == KitPer.PERSON ? day.people().size() : 1;
    }
}
