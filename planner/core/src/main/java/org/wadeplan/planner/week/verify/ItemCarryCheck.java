package org.wadeplan.planner.week.verify;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.kit.CrewDayLoad;
import org.wadeplan.planner.kit.LoadLine;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.EvidenceGrade;
import org.wadeplan.planner.round.GearClass;
import org.wadeplan.planner.round.Immersion;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.Treatment;
import org.wadeplan.planner.round.TreatmentMode;
import org.wadeplan.planner.round.Water;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.verify.PlanFacts.Visit;

/**
 * Items outside kit sets that go out with another set, into another water, before a cleaning of the set that they were last
 * used with. Warnings, because a plan schedules no cleaning of single items: people do that, or keep the item to one water.
 * Lines of the store that stand for several pieces are left out: nobody can tell which piece was where.
 */
public final class ItemCarryCheck {

    private record Use(Visit visit, String water) {

        Instant start() {
            return visit.activity().start();
        }

        Instant end() {
            return visit.activity().end();
        }
    }

    private final PlanFacts facts;

    private ItemCarryCheck(PlanFacts facts) {
        this.facts = facts;
    }

    /** One warning for each item that may carry something, in the store's order. */
    public static List<Problem> of(Round round, RoundPlan plan) {
        ItemCarryCheck check = new ItemCarryCheck(new PlanFacts(round, plan));
        List<Problem> problems = new ArrayList<>();
        for (StoreItem item : round.store().items()) {
            if (item.kitSet().isEmpty() && item.quantity() <= 1) {
                check.problem(item).ifPresent(problems::add);
            }
        }
        return List.copyOf(problems);
    }

    private Optional<Problem> problem(StoreItem item) {
        List<Use> uses = uses(item);
        Set<String> carries = new LinkedHashSet<>();
        for (Use use : uses) {
            for (Use before : uses) {
                boolean another =
                        !before.water().equals(use.water()) && before.end().isBefore(use.start());
                if (another && !cleaned(item, uses, before, use)) {
                    carries.add("from " + before.visit().name() + " (" + before.water() + ") to "
                            + use.visit().name() + " (" + use.water() + ")");
                }
            }
        }
        return carries.isEmpty()
                ? Optional.empty()
                : Optional.of(PlanFacts.doubtful(
                        "item-carries",
                        item.id(),
                        "goes uncleaned " + String.join(", ", carries),
                        "cleaned with its kit set, and dry, before another water"));
    }

    private List<Use> uses(StoreItem item) {
        List<Use> uses = new ArrayList<>();
        for (Visit visit : facts.visits()) {
            boolean loaded = facts.plan().kit().loads().stream()
                    .filter(load -> isOf(load, visit))
                    .flatMap(load -> load.lines().stream())
                    .anyMatch(line -> line.items().contains(item.id()) && askedClean(line, visit));
            if (loaded) {
                uses.add(new Use(visit, facts.water(visit).map(Water::id).orElse("?")));
            }
        }
        uses.sort(Comparator.comparing(Use::start));
        return uses;
    }

    private static boolean isOf(CrewDayLoad load, Visit visit) {
        return load.crew().equals(visit.day().crew())
                && load.date().equals(visit.day().date());
    }

    private boolean askedClean(LoadLine line, Visit visit) {
        return visit.activity().site().filter(line.forSites()::contains).isPresent()
                && facts.round().store().needs().stream()
                        .anyMatch(need -> need.clean()
                                && need.kind().equals(line.kind())
                                && Optional.of(need.method())
                                        .equals(visit.activity().method())
                                && Optional.of(need.part())
                                        .equals(visit.activity().part()));
    }

    /** Whether the cleaning of a set that it had been used with last covers, on its material, all that counts there. */
    private boolean cleaned(StoreItem item, List<Use> uses, Use from, Use to) {
        List<DeconTask> between = facts.week().decon().stream()
                .filter(task ->
                        !task.start().isBefore(from.end()) && !task.released().isAfter(to.start()))
                .filter(task -> lastUse(uses, task.start())
                        .filter(use -> use.visit().activity().kitSets().contains(task.kitSet()))
                        .isPresent())
                .toList();
        Set<String> pests = new PestStatusFacts(facts.round()).counted(from.water(), to.water());
        Optional<GearClass> gear = gear(item);
        return gear.isPresent()
                && !between.isEmpty()
                && pests.stream()
                        .allMatch(pest -> gear.get().immersion() == Immersion.WHOLE
                                ? soakedAlong(item, between, pest)
                                : wipedAlong(item, gear.get(), pest));
    }

    private boolean soakedAlong(StoreItem item, List<DeconTask> between, String pest) {
        CleaningSteps steps = new CleaningSteps(facts.round());
        return between.stream().anyMatch(task -> task.covers().stream()
                .filter(cover -> cover.pest().equals(pest) && cover.material() == item.material())
                .anyMatch(cover -> steps.lack(task, cover).isEmpty()));
    }

    /** What must not be immersed is wiped while its set is cleaned, where a row of treatments supports a wipe of it. */
    private boolean wipedAlong(StoreItem item, GearClass gear, String pest) {
        RulesInForce rules = new RulesInForce(facts.round());
        List<Treatment> wipes = facts.round().biosecurity().treatments().stream()
                .filter(row -> row.mode() == TreatmentMode.WIPE
                        && row.pest().equals(pest)
                        && row.material() == item.material())
                .filter(rules::counts)
                .filter(row -> !gear.harmedBy().contains(row.agent()))
                .toList();
        return wipes.stream().anyMatch(row -> wipes.stream()
                .noneMatch(
                        other -> other.grade() == EvidenceGrade.X && other.id().equals(row.id())));
    }

    private Optional<GearClass> gear(StoreItem item) {
        return item.detail().gearClass().flatMap(id -> facts.round().biosecurity().gear().stream()
                .filter(gear -> gear.id().equals(id))
                .findFirst());
    }

    private static Optional<Use> lastUse(List<Use> uses, Instant at) {
        return uses.stream().filter(use -> !use.end().isAfter(at)).max(Comparator.comparing(Use::start));
    }
}
