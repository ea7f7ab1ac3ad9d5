package org.wadeplan.planner.week.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.StoreState;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.week.verify.PlanFacts.Visit;

/** Wet work has a kit set in service; no set is in two places; traps that are set come back with their lift. */
final class KitWhereaboutsRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        List<Visit> visits = facts.visits();
        for (Visit visit : visits) {
            if (visit.activity().kitSets().isEmpty()) {
                problems.add(PlanFacts.broken(
                        "kit-set",
                        visit.name(),
                        "no kit set",
                        "a clean kit set: boots carry what lives there, from a dry bed too"));
            }
            visit.activity().kitSets().forEach(id -> checkSet(facts, visit, id, problems));
            if (visit.activity().part().equals(Optional.of(VisitPart.LIFT))
                    && !traps(facts, visit).equals(trapsOfSet(facts, visit, visits))) {
                problems.add(
                        PlanFacts.broken("kit-set", visit.name(), "lifts other traps than were set", "the same traps"));
            }
        }
        return problems;
    }

    private static void checkSet(PlanFacts facts, Visit visit, String id, List<Problem> problems) {
        Optional<KitSet> set = facts.round().store().kitSet(id);
        if (set.filter(one -> one.state() != StoreState.OUT_OF_SERVICE).isEmpty()) {
            problems.add(PlanFacts.broken(
                    "kit-set", visit.name(), id + " is not in the store or out of service", "a set in service"));
        }
        for (Visit other : facts.visits()) {
            boolean meets = other.activity().start().isBefore(visit.activity().end())
                    && visit.activity().start().isBefore(other.activity().end());
            if (!other.equals(visit) && meets && other.activity().kitSets().contains(id)) {
                problems.add(PlanFacts.broken(
                        "kit-set", visit.name(), id + " is at " + other.name() + " too", "one place at a time"));
            }
        }
    }

    private static Set<String> trapsOfSet(PlanFacts facts, Visit lift, List<Visit> visits) {
        Set<String> traps = new TreeSet<>();
        for (Visit visit : visits) {
            if (visit.activity().site().equals(lift.activity().site())
                    && visit.activity().part().equals(Optional.of(VisitPart.SET))) {
                traps.addAll(traps(facts, visit));
            }
        }
        return traps;
    }

    private static Set<String> traps(PlanFacts facts, Visit visit) {
        Set<String> traps = new TreeSet<>(visit.activity().kitSets());
        traps.removeIf(id -> facts.round()
                .store()
                .kitSet(id)
                .filter(set -> set.purpose() == KitPurpose.TRAPS)
                .isEmpty());
        return traps;
    }
}
