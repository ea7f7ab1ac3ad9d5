package org.wadeplan.planner.effort;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;

/**
 * Everything that follows from a site's method, to read at one glance: how long, how set, how far comparable, which packs.
 *
 * @param date the day that the comparison is made for
 * @param settingsRows last visit's water and settings beside today's; empty without them
 * @param cautions to be shown wherever the settings are; empty for methods without a current
 * @param pace button seconds by sub-reach; empty where none are known
 * @param packHealth which packs of the store would do for this visit alone
 */
public record EffortSheet(
        VisitEffort effort,
        LocalDate date,
        List<Compared> settingsRows,
        List<String> cautions,
        List<PaceStep> pace,
        Optional<PackHealth> packHealth,
        Comparability comparability) {

    /**
     * For a visit on that date; the site may carry what was measured on arrival.
     *
     * @param subReaches of the site's reach; 0 where none could be laid, and then there is no pace
     */
    public static EffortSheet of(Round round, Site site, VisitEffort effort, LocalDate date, int subReaches) {
        List<String> cautions = new ArrayList<>();
        if (effort.electric(round)) {
            cautions.addAll(ElectricCautions.ALWAYS);
        }
        effort.settings().ifPresent(start -> cautions.addAll(start.cautions()));
        return new EffortSheet(
                effort,
                date,
                effort.settings()
                        .map(start -> ComparedSettings.of(start, lastSet(round, site, start), site.conditions()))
                        .orElse(List.of()),
                List.copyOf(cautions),
                effort.shock()
                        .map(shock -> PaceStep.of(shock.p50S(), subReaches))
                        .orElse(List.of()),
                effort.batteries().map(need -> PackHealth.of(round.store().items(), need)),
                Comparability.of(round, site, effort.method(), date, Optional.of(effort)));
    }

    private static Optional<PastVisit> lastSet(Round round, Site site, StartSettings start) {
        return round.pastVisits().stream()
                .filter(visit -> visit.site().equals(site.id())
                        && visit.date().equals(start.lastDate())
                        && visit.settings().isPresent())
                .max(Comparator.comparing(PastVisit::date));
    }
}
