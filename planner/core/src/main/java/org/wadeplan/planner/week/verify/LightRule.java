package org.wadeplan.planner.week.verify;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.week.verify.PlanFacts.Visit;

/** Work in the water is done in the light that its method asks for; nobody is on land after dark without access. */
final class LightRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        for (Visit visit : facts.visits()) {
            if (visit.site().isPresent() && visit.part().isPresent()) {
                Site site = visit.site().get();
                boolean held =
                        switch (visit.part().get().light()) {
                            case DAY -> day(facts, visit, site);
                            case DARK -> dark(facts, visit, site);
                            case ANY -> anyLight(facts, visit, site);
                        };
                if (!held) {
                    problems.add(PlanFacts.broken(
                            "light",
                            visit.name(),
                            facts.clock(visit.wetStart()) + " to " + facts.clock(visit.wetEnd()) + " in the water",
                            "light: " + visit.part().get().light() + ", by the Sun at " + site.id()
                                    + " and the round's rules"));
                }
            }
        }
        return problems;
    }

    private static boolean day(PlanFacts facts, Visit visit, Site site) {
        var rules = facts.round().header().light();
        double dawnDeg = rules.dayFromCivilDawn() ? SunFormula.CIVIL_DEG : SunFormula.RISE_SET_DEG;
        LonLat at = facts.lonLat(site.start());
        LocalDate date = visit.day().date();
        Optional<Instant> dawn = SunFormula.rise(at, date, facts.zone(), dawnDeg);
        Optional<Instant> sunset = SunFormula.set(at, date, facts.zone(), SunFormula.RISE_SET_DEG);
        return dawn.filter(time -> !late(time, visit.wetStart())).isPresent()
                && sunset.map(time -> time.minusSeconds(60L * rules.dayUntilBeforeSunsetMin()))
                        .filter(time -> !late(visit.wetEnd(), time))
                        .isPresent();
    }

    private static boolean dark(PlanFacts facts, Visit visit, Site site) {
        long afterS = 60L * facts.round().header().light().darkAfterSunsetMin();
        LonLat at = facts.lonLat(site.start());
        LocalDate date = visit.day().date();
        Optional<Instant> sunset = SunFormula.set(at, date, facts.zone(), SunFormula.RISE_SET_DEG);
        Optional<Instant> sunrise = SunFormula.rise(at, date.plusDays(1), facts.zone(), SunFormula.RISE_SET_DEG);
        return sunset.map(time -> time.plusSeconds(afterS))
                        .filter(time -> !late(time, visit.wetStart()))
                        .isPresent()
                && sunrise.map(time -> time.minusSeconds(afterS))
                        .filter(time -> !late(visit.wetEnd(), time))
                        .isPresent();
    }

    private static boolean anyLight(PlanFacts facts, Visit visit, Site site) {
        List<Optional<Boolean>> said = new ArrayList<>();
        said.add(site.nightAccess());
        facts.round().consents().stream()
                .filter(consent -> consent.site().equals(site.id()))
                .forEach(consent -> said.add(consent.nightAccess()));
        if (said.contains(Optional.of(true)) && !said.contains(Optional.of(false))) {
            return true;
        }
        LonLat at = facts.lonLat(site.start());
        LocalDate date = visit.day().date();
        Optional<Instant> dawn = SunFormula.rise(at, date, facts.zone(), SunFormula.CIVIL_DEG);
        Optional<Instant> sunset = SunFormula.set(at, date, facts.zone(), SunFormula.RISE_SET_DEG);
        return dawn.filter(time -> !late(time, visit.activity().start())).isPresent()
                && sunset.filter(time -> !late(visit.activity().end(), time)).isPresent();
    }

    /** True where the first time is after the second by more than two sun formulas may differ. */
    private static boolean late(Instant first, Instant second) {
        return first.isAfter(second.plusSeconds(60L * PlanFacts.SUN_TOLERANCE_MIN));
    }
}
