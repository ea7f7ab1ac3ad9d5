package org.wadeplan.planner.decon.bench;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.planner.decon.TurnaroundPlanner;
import org.wadeplan.planner.decon.trace.Find;
import org.wadeplan.planner.decon.trace.FindTrace;
import org.wadeplan.planner.decon.trace.TraceReport;
import org.wadeplan.planner.effort.EffortPlanner;
import org.wadeplan.planner.effort.VisitEffort;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.kit.LoadPlanner;
import org.wadeplan.planner.kit.VisitKit;
import org.wadeplan.planner.kit.VisitNeeds;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.plan.PlanVersion;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.AgreedTask;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.VisitPart;
import org.wadeplan.planner.week.WeekInputs;
import org.wadeplan.planner.week.WeekPlan;
import org.wadeplan.planner.week.agreed.AgreedWeek;

/** How long a find takes to re-check a week of 60 visits: five days, four crews, three visits and a cleaning each. */
final class FindFigures implements DeconFigures {

    private static final double GOAL_S = 1;
    private static final int WARM_UPS = 3;
    private static final List<List<String>> TURNS = List.of(
            List.of("BRN-01", "BRN-02", "BRN-01"),
            List.of("TOL-01", "TOL-03", "TOL-01"),
            List.of("OUN-01", "OUN-02B", "OUN-01"),
            List.of("HSK-01", "OUN-03", "TOL-03"));

    @Override
    public List<DeconFigure> measured() {
        Round round = DemoRound.troubled();
        RoundPlan plan = plan(round);
        Find find = new Find("TOL", "LTW", Instant.parse("2027-09-07T17:20:00Z"), Optional.empty(), Optional.empty());
        int legs = 0;
        double bestS = Double.POSITIVE_INFINITY;
        for (int i = 0; i < WARM_UPS + 3; i++) {
            long from = System.nanoTime();
            TraceReport report = FindTrace.of(round, plan, find);
            double seconds = (System.nanoTime() - from) / 1e9;
            legs = report.legs().size();
            bestS = i < WARM_UPS ? bestS : Math.min(bestS, seconds);
        }
        int visits = plan.week().crewDays().stream()
                .mapToInt(day -> day.visits().size())
                .sum();
        return List.of(new DeconFigure(
                "a find re-checks a week of " + visits + " visits (" + legs + " legs change)",
                "1 s",
                String.format(Locale.ROOT, "%.2f s", bestS),
                "none",
                "",
                bestS <= GOAL_S));
    }

    private static RoundPlan plan(Round round) {
        List<MethodDecision> decisions = MethodChooser.decide(round);
        List<VisitEffort> efforts = EffortPlanner.plan(round, decisions);
        List<VisitKit> needs = VisitNeeds.of(round, decisions, efforts);
        WeekInputs inputs = new WeekInputs(round, decisions, efforts, needs, TurnaroundPlanner.table(round));
        WeekPlan week = AgreedWeek.of(inputs, tasks(round));
        return new RoundPlan(
                round.header().id(),
                new PlanVersion("bench", "", 0, 0, "bench"),
                List.of(),
                decisions,
                efforts,
                List.of(),
                inputs.turnarounds(),
                week,
                LoadPlanner.plan(round, needs, efforts, week),
                List.of(),
                true,
                List.of());
    }

    private static List<AgreedTask> tasks(Round round) {
        List<AgreedTask> tasks = new ArrayList<>();
        for (LocalDate date : round.header().days()) {
            for (int crew = 0; crew < TURNS.size(); crew++) {
                Instant start = date.atTime(5, 0).atZone(round.header().zone()).toInstant();
                int turn = (crew + date.getDayOfYear()) % TURNS.size();
                for (String site : TURNS.get(turn)) {
                    tasks.add(task(date, crew, start, Optional.of(site)));
                    start = start.plus(Duration.ofHours(6));
                }
                tasks.add(task(date, crew, start, Optional.empty()));
            }
        }
        return tasks;
    }

    private static AgreedTask task(LocalDate date, int crew, Instant start, Optional<String> site) {
        return new AgreedTask(
                date,
                crew < 2 ? List.of("A", "B").get(crew) : "C" + crew,
                start,
                site,
                site.map(any -> VisitPart.SURVEY),
                List.of("K" + (crew + 1)),
                Optional.empty());
    }
}
