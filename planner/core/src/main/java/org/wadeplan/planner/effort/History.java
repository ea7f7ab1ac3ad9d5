package org.wadeplan.planner.effort;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.wadeplan.planner.round.Method;
import org.wadeplan.planner.round.MethodKind;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.VisitPart;

/**
 * What earlier visits tell. Methods of one kind share their history: fishing that has to be done by 13:00 takes as long as
 * fishing that does not.
 */
final class History {

    private final List<PastVisit> visits;
    private final List<Method> methods;

    History(List<PastVisit> visits, List<Method> methods) {
        this.visits =
                visits.stream().sorted(Comparator.comparing(PastVisit::date)).toList();
        this.methods = methods;
    }

    /** Minutes on site of each earlier visit that recorded them. */
    List<Double> onSiteMin(String site, MethodKind kind, VisitPart part) {
        return of(site, kind)
                .filter(visit -> visit.part() == part)
                .flatMap(visit -> visit.onSiteMin().stream().boxed())
                .map(Integer::doubleValue)
                .toList();
    }

    /** Button seconds of each earlier electrofishing visit that recorded them. */
    List<Double> shockS(String site) {
        return of(site, MethodKind.ELECTROFISHING)
                .flatMap(visit -> visit.shockS().stream().boxed())
                .map(Integer::doubleValue)
                .toList();
    }

    /** Button seconds for each metre of width, of every electrofishing visit of the round that recorded both. */
    List<Double> shockSPerWidthM() {
        return visits.stream()
                .filter(visit -> kind(visit).equals(Optional.of(MethodKind.ELECTROFISHING)))
                .filter(visit -> visit.shockS().isPresent() && visit.widthM().orElse(0) > 0)
                .map(visit -> visit.shockS().getAsInt() / visit.widthM().getAsDouble())
                .toList();
    }

    /** Median number of fish that the site's earlier visits of a kind handled, or else those of the whole round. */
    OptionalDouble medianFishCount(String site, MethodKind kind) {
        List<Double> here = fishCounts(of(site, kind));
        List<Double> counts = here.isEmpty()
                ? fishCounts(visits.stream().filter(visit -> kind(visit).equals(Optional.of(kind))))
                : here;
        return counts.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Quantile.median(counts));
    }

    private static List<Double> fishCounts(Stream<PastVisit> visits) {
        return visits.flatMap(visit -> visit.fishCount().stream().boxed())
                .map(Integer::doubleValue)
                .toList();
    }

    /** Median of the widths that earlier visits measured, m; empty where none did. */
    OptionalDouble medianWidthM(String site) {
        List<Double> widths = visits.stream()
                .filter(visit -> visit.site().equals(site))
                .flatMap(visit -> visit.widthM().stream().boxed())
                .toList();
        return widths.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Quantile.median(widths));
    }

    /** The latest electrofishing visit that recorded its settings. */
    Optional<PastVisit> lastWithSettings(String site) {
        return of(site, MethodKind.ELECTROFISHING)
                .filter(visit -> visit.settings().isPresent())
                .reduce((earlier, later) -> later);
    }

    private Stream<PastVisit> of(String site, MethodKind kind) {
        return visits.stream()
                .filter(visit -> visit.site().equals(site) && kind(visit).equals(Optional.of(kind)));
    }

    private Optional<MethodKind> kind(PastVisit visit) {
        return methods.stream()
                .filter(method -> method.id().equals(visit.method()))
                .map(Method::kind)
                .findFirst();
    }
}
