package org.wadeplan.planner.week.verify;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.DutyRules;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.ActivityKind;
import org.wadeplan.planner.week.CrewDay;

/** Nobody drives in the hours without driving; between civil dusk and dawn a night driver is in the crew. */
final class DrivingRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        for (CrewDay day : facts.week().crewDays()) {
            boolean nightDriver =
                    facts.people(day).stream().anyMatch(person -> person.driver() && person.nightDriver());
            for (Activity drive : day.activities()) {
                if (drive.kind() == ActivityKind.TRAVEL) {
                    if (barred(facts, drive)) {
                        problems.add(PlanFacts.broken(
                                "driving",
                                day,
                                "drives at " + facts.clock(drive.start()),
                                "no driving in those hours"));
                    }
                    if (!nightDriver && (dark(facts, drive.start()) || dark(facts, drive.end()))) {
                        problems.add(PlanFacts.broken(
                                "driving",
                                day,
                                "drives in the dark at " + facts.clock(drive.start()),
                                "a night driver in the crew"));
                    }
                }
            }
        }
        return problems;
    }

    private static boolean barred(PlanFacts facts, Activity drive) {
        DutyRules duty = facts.round().header().duty();
        if (duty.noDrivingFrom().equals(duty.noDrivingUntil())) {
            return false;
        }
        for (Instant minute = drive.start(); minute.isBefore(drive.end()); minute = minute.plusSeconds(60)) {
            LocalTime time = minute.atZone(facts.zone()).toLocalTime();
            boolean after = !time.isBefore(duty.noDrivingFrom());
            boolean before = time.isBefore(duty.noDrivingUntil());
            boolean overMidnight = duty.noDrivingUntil().isBefore(duty.noDrivingFrom());
            if (overMidnight ? after || before : after && before) {
                return true;
            }
        }
        return false;
    }

    private static boolean dark(PlanFacts facts, Instant time) {
        LonLat depot = facts.lonLat(facts.round().header().depot().at());
        LocalDate date = time.atZone(facts.zone()).toLocalDate();
        Optional<Instant> dawn = SunFormula.rise(depot, date, facts.zone(), SunFormula.CIVIL_DEG);
        Optional<Instant> dusk = SunFormula.set(depot, date, facts.zone(), SunFormula.CIVIL_DEG);
        long slackS = 60L * PlanFacts.SUN_TOLERANCE_MIN;
        return dawn.filter(at -> time.isBefore(at.minusSeconds(slackS))).isPresent()
                || dusk.filter(at -> time.isAfter(at.plusSeconds(slackS))).isPresent();
    }
}
