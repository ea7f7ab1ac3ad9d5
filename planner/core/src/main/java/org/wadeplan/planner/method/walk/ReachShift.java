package org.wadeplan.planner.method.walk;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;
import org.wadeplan.planner.method.CaseValue;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.method.MethodChooser;
import org.wadeplan.planner.method.MethodDecision;
import org.wadeplan.planner.method.MethodWords;
import org.wadeplan.planner.method.SiteCase;
import org.wadeplan.planner.method.SiteInput;
import org.wadeplan.planner.round.DepthPoint;

/**
 * How far to shift a reach so that it leaves out what is too deep.
 *
 * @param shiftM whole metres; above zero upstream, below zero downstream
 * @param maxDepthM deepest point of the shifted reach, by the depths that are known
 */
public record ReachShift(int shiftM, double maxDepthM) {

    /**
     * The smallest shift after which the table gives the wanted method again. A measured depth counts for the stretch
     * halfway to its neighbours, so that the edge of a pool is left out with it; a shifted reach must lie within the stretch
     * whose depths are known.
     *
     * @param depths of this site
     * @param lengthM of the reach
     * @param site with the values measured; its deepest point is replaced by that of each shifted reach
     * @return empty where no shift within the known depths helps
     */
    public static Optional<ReachShift> smallest(
            DecisionTable table, SiteCase site, List<DepthPoint> depths, double lengthM, String wantedMethod) {
        List<DepthPoint> along = depths.stream()
                .filter(point -> point.site().equals(site.site()))
                .sorted(Comparator.comparingDouble(DepthPoint::fromStartM))
                .toList();
        if (along.size() < 2) {
            return Optional.empty();
        }
        double first = along.get(0).fromStartM();
        double last = along.get(along.size() - 1).fromStartM();
        int most = (int) Math.ceil(Math.max(Math.abs(first), Math.abs(last - lengthM)));
        DoublePredicate fits = depthM -> method(table, site, depthM).equals(wantedMethod);
        return IntStream.rangeClosed(1, most)
                .flatMap(metres -> IntStream.of(metres, -metres))
                .filter(shift -> shift >= first && shift + lengthM <= last)
                .mapToObj(shift -> new ReachShift(shift, deepest(along, shift, shift + lengthM)))
                .filter(shift -> fits.test(shift.maxDepthM()))
                .findFirst();
    }

    private static double deepest(List<DepthPoint> along, double fromM, double untilM) {
        double deepest = 0;
        for (int i = 0; i < along.size(); i++) {
            double at = along.get(i).fromStartM();
            double from = i == 0 ? at : (along.get(i - 1).fromStartM() + at) / 2;
            double until = i == along.size() - 1 ? at : (at + along.get(i + 1).fromStartM()) / 2;
            if (until > fromM && from < untilM) {
                deepest = Math.max(deepest, along.get(i).depthM());
            }
        }
        return deepest;
    }

    private static String method(DecisionTable table, SiteCase site, double depthM) {
        Map<String, CaseValue> values = new HashMap<>(site.values());
        values.put(SiteInput.MAX_DEPTH.column(), CaseValue.of(depthM));
        MethodDecision decision = MethodChooser.decide(table, site.site(), MethodChooser.readable(table, values));
        return MethodWords.method(decision);
    }
}
