package org.wadeplan.planner.week.verify;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.Consent;
import org.wadeplan.planner.round.Light;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.week.verify.PlanFacts.Visit;

/** Nobody is on land without the consent of every holder, within its hours. */
final class ConsentRule implements WeekRule {

    @Override
    public List<Problem> check(PlanFacts facts) {
        List<Problem> problems = new ArrayList<>();
        for (Visit visit : facts.visits()) {
            List<Consent> consents = facts.round().consents().stream()
                    .filter(consent -> visit.activity()
                            .site()
                            .filter(consent.site()::equals)
                            .isPresent())
                    .toList();
            if (consents.isEmpty()) {
                problems.add(PlanFacts.broken("consent", visit.name(), "nobody has asked", "a consent for the site"));
            }
            consents.forEach(consent -> check(facts, visit, consent, problems));
        }
        return problems;
    }

    private static void check(PlanFacts facts, Visit visit, Consent consent, List<Problem> problems) {
        LocalDate date = visit.day().date();
        boolean ended = consent.validUntil().filter(date::isAfter).isPresent();
        if (consent.status() == Consent.ConsentStatus.REFUSED || ended) {
            problems.add(PlanFacts.broken(
                    "consent",
                    visit.name(),
                    "consent " + consent.id() + " is refused or ended",
                    "a consent that counts"));
        } else if (consent.status() == Consent.ConsentStatus.PENDING) {
            problems.add(PlanFacts.doubtful(
                    "consent", visit.name(), "NOT AUTHORISED: consent is pending", "a given consent"));
        }
        boolean early = consent.accessFrom()
                .map(from -> facts.at(date, from))
                .filter(visit.activity().start()::isBefore)
                .isPresent();
        boolean overNight = consent.accessFrom().isPresent()
                && consent.accessUntil().isPresent()
                && !consent.accessUntil().get().isAfter(consent.accessFrom().get());
        boolean late = consent.accessUntil()
                .map(until -> facts.at(overNight ? date.plusDays(1) : date, until))
                .filter(visit.activity().end()::isAfter)
                .isPresent();
        if (early || late) {
            problems.add(PlanFacts.broken(
                    "consent",
                    visit.name(),
                    "on the land " + facts.clock(visit.activity().start()) + " to "
                            + facts.clock(visit.activity().end()),
                    "hours of consent " + consent.id()));
        }
        checkNight(visit, consent, problems);
    }

    private static void checkNight(Visit visit, Consent consent, List<Problem> problems) {
        boolean dark = visit.part().filter(part -> part.light() == Light.DARK).isPresent();
        boolean siteNo =
                visit.site().flatMap(Site::nightAccess).filter(yes -> !yes).isPresent();
        if (dark
                && (siteNo
                        || !consent.nightAccess()
                                .orElse(visit.site().flatMap(Site::nightAccess).orElse(false)))) {
            problems.add(PlanFacts.broken("consent", visit.name(), "after dark without leave", "night access"));
        }
    }
}
