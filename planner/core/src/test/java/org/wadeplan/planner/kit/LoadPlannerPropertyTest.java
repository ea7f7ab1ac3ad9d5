package org.wadeplan.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.wadeplan.planner.decon.RoundCopies;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.round.ItemCertificate;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.WeekPlan;

/** What must hold of every load plan, on the demo rounds with random gaps in their stores and random starts. */
class LoadPlannerPropertyTest {

    @Provide
    Arbitrary<Set<String>> gaps() {
        List<String> ids =
                DemoRound.troubled().store().items().stream().map(StoreItem::id).toList();
        return Arbitraries.of(ids).set().ofMaxSize(25);
    }

    @Property(tries = 60, seed = "20270906")
    void aSerialIsNeverInTwoPlacesAtATime(
            @ForAll("gaps") Set<String> gaps, @ForAll @IntRange(min = -6, max = 14) int laterH) {
        Round round = without(DemoRound.troubled(), gaps);
        WeekPlan week = shifted(ReferenceWeek.of(round), "B", laterH);
        KitPlan plan = plan(round, week);
        Map<String, Double> quantities =
                round.store().items().stream().collect(Collectors.toMap(StoreItem::id, StoreItem::quantity));
        for (CrewDay one : week.crewDays()) {
            for (CrewDay other : week.crewDays()) {
                if (!one.equals(other)
                        && one.start().isBefore(other.end())
                        && other.start().isBefore(one.end())) {
                    Set<String> shared = new TreeSet<>(serials(plan, one));
                    shared.retainAll(serials(plan, other));
                    assertThat(shared).allMatch(id -> quantities.getOrDefault(id, 0.0) > 1);
                }
            }
        }
    }

    /** The oracle looks each serial up in the store and asks its certificates about the date, units that lapse mid-week too. */
    @Property(tries = 40, seed = "20270906")
    void nothingGoesOutOnADayOnWhichItsCertificateDoesNotCount(
            @ForAll("ends") Map<String, LocalDate> ends, @ForAll @IntRange(min = -6, max = 14) int laterH) {
        Round round = ending(DemoRound.troubled(), ends);
        for (CrewDayLoad load :
                plan(round, shifted(ReferenceWeek.of(round), "B", laterH)).loads()) {
            for (LoadLine line : load.lines()) {
                Set<String> asked = round.store().needs().stream()
                        .filter(need -> need.kind().equals(line.kind()))
                        .flatMap(need -> need.certificate().stream())
                        .collect(Collectors.toSet());
                for (String id : line.items()) {
                    StoreItem item = round.store().items().stream()
                            .filter(one -> one.id().equals(id))
                            .findFirst()
                            .orElse(round.store().items().get(0));
                    asked.forEach(name -> assertThat(item.certificates())
                            .as(id + " on " + load.date())
                            .anyMatch(held -> held.certificate().equals(name)
                                    && !load.date().isAfter(held.validUntil())));
                }
            }
        }
    }

    @Provide
    Arbitrary<Map<String, LocalDate>> ends() {
        List<String> certified = DemoRound.troubled().store().items().stream()
                .filter(item -> !item.certificates().isEmpty())
                .map(StoreItem::id)
                .toList();
        return Arbitraries.maps(
                        Arbitraries.of(certified),
                        Arbitraries.integers().between(0, 6).map(LocalDate.of(2027, 9, 5)::plusDays))
                .ofMaxSize(12);
    }

    private static Round ending(Round round, Map<String, LocalDate> ends) {
        Store old = round.store();
        List<StoreItem> items = old.items().stream()
                .map(item -> ends.containsKey(item.id())
                        ? item.with(item.certificates().stream()
                                .map(held -> new ItemCertificate(
                                        held.certificate(),
                                        Optional.empty(),
                                        ends.getOrDefault(item.id(), held.validUntil()),
                                        held.note()))
                                .toList())
                        : item)
                .toList();
        return round.with(new Store(old.kitSets(), items, old.needs(), old.packSeconds(), old.voltageCeilings()));
    }

    /** Within a day no kind goes out more often than the store has it. */
    @Property(tries = 60, seed = "20270906")
    void aDayNeverTakesMoreThanTheStoreHas(@ForAll("gaps") Set<String> gaps) {
        Round round = without(DemoRound.troubled(), gaps);
        Map<String, Double> out = new HashMap<>();
        for (CrewDayLoad load : plan(round, ReferenceWeek.of(round)).loads()) {
            for (LoadLine line : load.lines()) {
                if (!line.kind().equals("kit-set")) {
                    out.merge(load.date() + " " + line.kind(), line.quantity(), Double::sum);
                }
            }
        }
        out.forEach((key, quantity) -> assertThat(quantity)
                .isLessThanOrEqualTo(round.store().ofKind(key.substring(11)).stream()
                                .mapToDouble(StoreItem::quantity)
                                .sum()
                        + 1e-9));
    }

    @Property(tries = 60, seed = "20270906")
    void takingSomethingOutOfTheStoreNeverRemovesAShortage(
            @ForAll("gaps") Set<String> gaps, @ForAll @IntRange(min = 0, max = 200) int index) {
        Round round = without(DemoRound.troubled(), gaps);
        List<StoreItem> items = round.store().items();
        Round poorer = without(round, Set.of(items.get(index % items.size()).id()));
        assertThat(shortages(poorer)).containsAll(shortages(round));
    }

    private static Set<String> shortages(Round round) {
        return plan(round, ReferenceWeek.of(round)).shortages().stream()
                .map(shortage -> shortage.date() + " " + shortage.kind())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static KitPlan plan(Round round, WeekPlan week) {
        List<VisitKit> visits = VisitNeeds.of(round, ReferenceVisits.decisions(), ReferenceVisits.efforts());
        return LoadPlanner.plan(round, visits, ReferenceVisits.efforts(), week);
    }

    private static Set<String> serials(KitPlan plan, CrewDay day) {
        Set<String> serials = new HashSet<>();
        plan.loads().stream()
                .filter(load -> load.crew().equals(day.crew()) && load.date().equals(day.date()))
                .flatMap(load -> load.lines().stream())
                .filter(line -> !line.kind().equals("kit-set"))
                .forEach(line -> serials.addAll(line.items()));
        return serials;
    }

    private static Round without(Round round, Set<String> ids) {
        Store old = round.store();
        List<StoreItem> left =
                old.items().stream().filter(item -> !ids.contains(item.id())).toList();
        return RoundCopies.with(
                round, "store", new Store(old.kitSets(), left, old.needs(), old.packSeconds(), old.voltageCeilings()));
    }

    /** One crew's days, all later by some hours; they may run past midnight into the next day's loading. */
    private static WeekPlan shifted(WeekPlan week, String crew, int laterH) {
        List<CrewDay> days = new ArrayList<>();
        for (CrewDay day : week.crewDays()) {
            days.add(day.crew().equals(crew) ? later(day, Duration.ofHours(laterH)) : day);
        }
        return new WeekPlan(
                List.copyOf(days),
                week.decon(),
                week.placements(),
                week.unplaced(),
                week.estimatedLegs(),
                week.score());
    }

    private static CrewDay later(CrewDay day, Duration by) {
        LocalDate date = day.date();
        List<Activity> activities = day.activities().stream()
                .map(activity -> new Activity(
                        activity.kind(),
                        activity.start().plus(by),
                        activity.end().plus(by),
                        activity.place(),
                        activity.site(),
                        activity.part(),
                        activity.method(),
                        activity.kitSets(),
                        activity.p50End(),
                        activity.note()))
                .toList();
        return new CrewDay(day.crew(), date, day.people(), day.vehicle(), activities);
    }
}
