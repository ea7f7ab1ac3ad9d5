package org.wadeplan.planner.week.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.decon.TurnaroundPlanner;
import org.wadeplan.planner.round.DutyRules;
import org.wadeplan.planner.round.Permit;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.round.RoundHeader;
import org.wadeplan.planner.round.Store;
import org.wadeplan.planner.round.StoreItem;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.IlvermoorWeek;
import org.wadeplan.planner.week.Plans;
import org.wadeplan.planner.week.Progress;
import org.wadeplan.planner.week.RoundChange;
import org.wadeplan.planner.week.WeekInputs;
import org.wadeplan.planner.week.WeekPlan;
import org.wadeplan.planner.week.WeekPlanner;

/** Each rule of the check keeps quiet about a good week and speaks up about the same week broken in one place. */
class WeekRuleTest {

    private static final WeekInputs INPUTS = inputs();
    private static final WeekPlan WEEK = WeekPlanner.plan(INPUTS, 40, Progress.NONE);
    private static final PlanFacts GOOD = new PlanFacts(INPUTS.round(), Plans.of(INPUTS, WEEK));

    /** The scenario's methods and minutes with the cleanings that the round's evidence asks for. */
    private static WeekInputs inputs() {
        WeekInputs scenario = IlvermoorWeek.inputs(IlvermoorWeek.resolved());
        return new WeekInputs(
                scenario.round(),
                scenario.decisions(),
                scenario.efforts(),
                scenario.visitKits(),
                TurnaroundPlanner.table(scenario.round()));
    }

    /** How to break each rule. */
    private static final Map<Class<? extends WeekRule>, Function<PlanFacts, PlanFacts>> BREAKS = breaks();

    private static Map<Class<? extends WeekRule>, Function<PlanFacts, PlanFacts>> breaks() {
        Map<Class<? extends WeekRule>, Function<PlanFacts, PlanFacts>> breaks = new LinkedHashMap<>();
        breaks.put(
                UnbrokenDayRule.class,
                activity(kind(ActivityKind.LOAD), one -> until(one, one.end().plusSeconds(60))));
        breaks.put(
                TravelTimeRule.class,
                activity(
                        kind(ActivityKind.TRAVEL), one -> until(one, one.start().plusSeconds(60))));
        breaks.put(
                OnSiteTimeRule.class,
                activity(part(VisitPart.SURVEY), one -> until(one, one.start().plusSeconds(3600))));
        breaks.put(LightRule.class, activity(part(VisitPart.SURVEY), one -> later(one, 12 * 60)));
        breaks.put(TideRule.class, activity(site("PEL-01"), one -> later(one, 6 * 60)));
        breaks.put(
                FinishRule.class,
                activity(site("TOL-03"), one -> until(one, one.end().plusSeconds(7200))));
        breaks.put(PermitRule.class, round(change -> change.permits(WeekRuleTest::ended)));
        breaks.put(
                ConsentRule.class,
                round(change -> change.keepConsents(consent -> !consent.site().equals("BRN-01"))));
        breaks.put(
                WorkingHoursRule.class,
                activity(kind(ActivityKind.UNLOAD), one -> until(one, one.end().plusSeconds(43200))));
        breaks.put(DrivingRule.class, activity(kind(ActivityKind.TRAVEL), one -> later(one, -6 * 60)));
        breaks.put(RestRule.class, round(change -> change.header(WeekRuleTest::longRest)));
        breaks.put(CompetenceRule.class, round(change -> change.people(WeekRuleTest::noFirstAid)));
        breaks.put(
                RosterRule.class,
                day(day -> new CrewDay(day.crew(), day.date(), day.people(), "V9", day.activities())));
        breaks.put(VehicleRule.class, round(change -> change.store(store -> uncertified(store, "vehicle"))));
        breaks.put(KitCleanRule.class, week(week -> decon(week, List.of())));
        breaks.put(
                ExposureRule.class,
                week(week -> decon(
                        week,
                        week.decon().stream()
                                .map(BrokenCleanings::claimingNothing)
                                .toList())));
        breaks.put(
                DryingRule.class,
                week(week -> decon(
                        week,
                        week.decon().stream().map(BrokenCleanings::releasedWet).toList())));
        breaks.put(KitWhereaboutsRule.class, activity(part(VisitPart.SURVEY), one -> bare(one, one.kind())));
        breaks.put(CheckRinseRule.class, activity(kind(ActivityKind.RINSE), one -> bare(one, ActivityKind.WAIT)));
        breaks.put(
                CleaningRule.class,
                week(week -> decon(
                        week, week.decon().stream().map(BrokenCleanings::hasty).toList())));
        breaks.put(
                CleaningEvidenceRule.class,
                week(week -> decon(
                        week,
                        week.decon().stream().map(BrokenCleanings::brushedOnly).toList())));
        breaks.put(BathRule.class, week(week -> decon(week, BrokenCleanings.twelvefold(week.decon()))));
        breaks.put(CertificateRule.class, round(change -> change.store(store -> uncertified(store, "backpack-unit"))));
        breaks.put(BatteryRule.class, round(change -> change.store(store -> without(store, "battery-pack"))));
        breaks.put(PartsRule.class, activity(part(VisitPart.LIFT), one -> bare(one, ActivityKind.WAIT)));
        breaks.put(
                EverySiteRule.class,
                week(week -> new WeekPlan(
                        week.crewDays(), week.decon(), week.placements(), List.of(), List.of(), List.of())));
        return breaks;
    }

    static List<WeekRule> rules() {
        return WeekVerifier.RULES;
    }

    @ParameterizedTest
    @MethodSource("rules")
    void aGoodWeekKeepsTheRule(WeekRule rule) {
        assertThat(errors(rule.check(GOOD))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void aWeekBrokenInOnePlaceBreaksTheRule(WeekRule rule) {
        PlanFacts broken =
                BREAKS.getOrDefault(rule.getClass(), UnaryOperator.identity()).apply(GOOD);

        assertThat(errors(rule.check(broken))).isNotEmpty();
    }

    @Test
    void everyRuleHasItsBreak() {
        List<String> rules = WeekVerifier.RULES.stream()
                .map(rule -> rule.getClass().getName())
                .toList();

        assertThat(BREAKS.keySet().stream().map(Class::getName)).containsExactlyInAnyOrderElementsOf(rules);
    }

    @Test
    void aCleaningByARefusedTreatmentIsNamed() {
        assertThat(cleaningEvidence(BrokenCleanings::refusedSpray))
                .hasSameSizeAs(WEEK.decon())
                .allSatisfy(problem -> assertThat(problem.expected()).contains("none that refuses it"));
    }

    @Test
    void aCleaningWithoutItsSoakIsNamed() {
        assertThat(cleaningEvidence(BrokenCleanings::brushedOnly))
                .hasSameSizeAs(WEEK.decon())
                .allSatisfy(problem -> assertThat(problem.expected()).contains("steps that last as long"));
    }

    private static List<Problem> cleaningEvidence(UnaryOperator<DeconTask> change) {
        PlanFacts broken = week(week ->
                        decon(week, week.decon().stream().map(change).toList()))
                .apply(GOOD);
        return new CleaningEvidenceRule().check(broken);
    }

    @Test
    void timeBetweenMedianAndEightiethPercentileIsDoubtful() {
        PlanFacts shorter = activity(
                        part(VisitPart.SURVEY), one -> until(one, one.end().minusSeconds(60)))
                .apply(GOOD);

        assertThat(new OnSiteTimeRule().check(shorter))
                .extracting(Problem::severity)
                .containsExactly(Severity.WARNING);
    }

    private static Store without(Store store, String kind) {
        return new Store(
                store.kitSets(),
                store.items().stream().filter(item -> !item.kind().equals(kind)).toList(),
                store.needs(),
                store.packSeconds(),
                store.voltageCeilings());
    }

    private static List<String> errors(List<Problem> problems) {
        return problems.stream()
                .filter(problem -> problem.severity() == Severity.ERROR)
                .map(Problem::sentence)
                .toList();
    }

    private static Predicate<Activity> kind(ActivityKind kind) {
        return activity -> activity.kind() == kind;
    }

    private static Predicate<Activity> part(VisitPart part) {
        return activity -> activity.part().equals(Optional.of(part));
    }

    private static Predicate<Activity> site(String site) {
        return activity -> activity.site().equals(Optional.of(site));
    }

    private static Function<PlanFacts, PlanFacts> round(UnaryOperator<RoundChange> change) {
        return facts ->
                new PlanFacts(change.apply(RoundChange.of(facts.round())).round(), facts.plan());
    }

    private static Function<PlanFacts, PlanFacts> week(UnaryOperator<WeekPlan> change) {
        return facts -> new PlanFacts(facts.round(), Plans.of(INPUTS, change.apply(facts.week())));
    }

    private static Function<PlanFacts, PlanFacts> day(UnaryOperator<CrewDay> change) {
        return week(week -> {
            List<CrewDay> days = new ArrayList<>(week.crewDays());
            days.set(0, change.apply(days.get(0)));
            return days(week, days);
        });
    }

    /** Changes the first activity of the week that is asked for. */
    private static Function<PlanFacts, PlanFacts> activity(Predicate<Activity> which, UnaryOperator<Activity> change) {
        return week(week -> {
            List<CrewDay> days = new ArrayList<>(week.crewDays());
            for (int d = 0; d < days.size(); d++) {
                List<Activity> activities = new ArrayList<>(days.get(d).activities());
                for (int i = 0; i < activities.size(); i++) {
                    if (which.test(activities.get(i))) {
                        activities.set(i, change.apply(activities.get(i)));
                        CrewDay day = days.get(d);
                        days.set(d, new CrewDay(day.crew(), day.date(), day.people(), day.vehicle(), activities));
                        return days(week, days);
                    }
                }
            }
            throw new IllegalStateException("no such activity in the good week");
        });
    }

    private static WeekPlan days(WeekPlan week, List<CrewDay> days) {
        return new WeekPlan(days, week.decon(), week.placements(), week.unplaced(), week.estimatedLegs(), week.score());
    }

    private static WeekPlan decon(WeekPlan week, List<DeconTask> tasks) {
        return new WeekPlan(
                week.crewDays(), tasks, week.placements(), week.unplaced(), week.estimatedLegs(), week.score());
    }

    private static Activity at(Activity one, Instant start, Instant end) {
        return new Activity(
                one.kind(),
                start,
                end,
                one.place(),
                one.site(),
                one.part(),
                one.method(),
                one.kitSets(),
                one.p50End(),
                one.note());
    }

    private static Activity until(Activity one, Instant end) {
        return at(one, one.start(), end);
    }

    private static Activity later(Activity one, int minutes) {
        Duration by = Duration.ofMinutes(minutes);
        return at(one, one.start().plus(by), one.end().plus(by));
    }

    /** Without kit sets, and where it is no visit any more without a site. */
    private static Activity bare(Activity one, ActivityKind kind) {
        return new Activity(
                kind,
                one.start(),
                one.end(),
                one.place(),
                one.site(),
                one.part(),
                one.method(),
                List.of(),
                one.p50End(),
                "");
    }

    private static Permit ended(Permit from) {
        return new Permit(
                from.id(),
                from.catchment(),
                from.methods(),
                from.validFrom(),
                from.validFrom(),
                from.status(),
                from.closedFrom(),
                from.closedUntil(),
                from.closureReason(),
                from.notifyWorkingDays(),
                from.notifiedOn(),
                from.takeCap(),
                from.note());
    }

    private static Person noFirstAid(Person from) {
        return new Person(
                from.id(),
                from.name(),
                from.roles(),
                from.operatorUntil(),
                Optional.empty(),
                from.liveCircuit(),
                from.driver(),
                from.nightDriver(),
                from.note());
    }

    private static Store uncertified(Store store, String kind) {
        List<StoreItem> items = store.items().stream()
                .map(item -> item.kind().equals(kind) ? expired(item) : item)
                .toList();
        return new Store(store.kitSets(), items, store.needs(), store.packSeconds(), store.voltageCeilings());
    }

    private static StoreItem expired(StoreItem item) {
        return new StoreItem(
                item.id(),
                item.kind(),
                item.label(),
                item.quantity(),
                item.unit(),
                item.kitSet(),
                item.material(),
                org.wadeplan.planner.round.StoreState.OUT_OF_SERVICE,
                item.stateNote(),
                item.availableFrom(),
                item.availableUntil(),
                item.expires(),
                item.healthPct(),
                item.certificates());
    }

    private static RoundHeader longRest(RoundHeader from) {
        DutyRules duty = from.duty();
        DutyRules longer = new DutyRules(
                duty.maxShiftMin(),
                2000,
                LocalTime.MIDNIGHT,
                duty.noDrivingUntil(),
                duty.earliestStart(),
                duty.loadMin(),
                duty.unloadMin(),
                duty.arrivalMarginMin(),
                duty.source());
        return new RoundHeader(
                from.id(),
                from.title(),
                from.agency(),
                from.crs(),
                from.zone(),
                from.seed(),
                from.firstDay(),
                from.lastDay(),
                from.reserveDays(),
                from.depot(),
                from.reach(),
                longer,
                from.light(),
                from.tide(),
                from.travelFallback(),
                from.conductivityRule(),
                from.fishConductivityUsCm(),
                from.batteryReserveFactor(),
                from.checkIn(),
                from.stakeUncertaintyM(),
                from.mouths(),
                from.snapToleranceM(),
                from.acceptedRepairs(),
                from.wading(),
                from.search(),
                from.methodOverrides(),
                from.electric(),
                from.jurisdiction());
    }
}
