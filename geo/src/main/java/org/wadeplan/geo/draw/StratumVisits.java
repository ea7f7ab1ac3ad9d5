package org.wadeplan.geo.draw;

import java.util.List;

/**
 * How a stratum stands after losses, and what each visited unit then stands for.
 *
 * <p>The units whose turn has come are a balanced sample of the stratum, visited or not. So the part of them that proved dry
 * or non-target is the estimated part of the stratum's length that is; the rest, the target length, is spread over the
 * visited units. That takes those without leave or reach to be like the visited: an assumption to be stated with every
 * result. Source: weights adjusted to frame length over units evaluated, common practice in probability surveys of streams.
 *
 * @param stratum its name
 * @param evaluated units whose turn has come: base and used reserves
 * @param nonTarget of these, dry or non-target
 * @param missed of these, target but without leave or reach
 * @param visited of these, to be visited
 * @param shortBy visits that no reserve is left for
 * @param targetLengthM estimated length of target stream, metres
 * @param weightM metres of target stream that each visited unit stands for; 0 where none is visited
 */
public record StratumVisits(
        String stratum,
        int evaluated,
        int nonTarget,
        int missed,
        int visited,
        int shortBy,
        double targetLengthM,
        double weightM) {

    static StratumVisits of(StratumRecord stratum, List<VisitList.Entry> entries) {
        int visited = count(entries, VisitList.Use.VISIT);
        int lost = count(entries, VisitList.Use.LOST);
        int missed = (int) entries.stream()
                .flatMap(entry -> entry.loss().stream())
                .filter(loss -> loss.ground().isTarget())
                .count();
        int evaluated = visited + lost;
        int nonTarget = lost - missed;
        double targetLengthM = stratum.lengthM() * (evaluated - nonTarget) / evaluated;
        return new StratumVisits(
                stratum.stratum(),
                evaluated,
                nonTarget,
                missed,
                visited,
                stratum.size() - visited,
                targetLengthM,
                visited == 0 ? 0 : targetLengthM / visited);
    }

    private static int count(List<VisitList.Entry> entries, VisitList.Use use) {
        return (int) entries.stream().filter(entry -> entry.use() == use).count();
    }
}
