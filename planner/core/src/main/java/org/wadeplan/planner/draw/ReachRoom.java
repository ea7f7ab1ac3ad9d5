package org.wadeplan.planner.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.geo.draw.DrawnUnit;
import org.wadeplan.geo.draw.Loss;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.network.Junction;
import org.wadeplan.geo.network.StreamNetwork;

/** Whether a reach can be laid at a drawn point: room on the line, and clear of the reaches laid before it. */
final class ReachRoom {

    private static final double ROUNDING_M = 0.001;

    private final LineSet lines;
    private final double reachM;
    private final ReachPoint point;
    private final List<Junction> junctions;
    private final Map<String, Reach> laid = new LinkedHashMap<>();

    ReachRoom(StreamNetwork network, double reachM, ReachPoint point) {
        this.lines = network.graph().lines();
        this.reachM = reachM;
        this.point = point;
        this.junctions = network.junctions();
    }

    /** A reach between two chainages, the upper one smaller. */
    record Reach(int line, double startM, double endM) {}

    /** Lays the reach, or says why there is none. */
    Optional<Loss> lay(DrawnUnit unit) {
        Reach reach = reach(unit);
        Optional<String> obstacle = outside(reach).or(() -> overlap(reach));
        if (obstacle.isEmpty()) {
            laid.put(unit.code(), reach);
        }
        return obstacle.map(reason -> new Loss(Loss.Ground.NO_REACH, reason));
    }

    /** The reach that the unit would have, whether or not it was laid; empty where it does not fit onto its line. */
    Optional<Reach> fitting(DrawnUnit unit) {
        return Optional.of(reach(unit)).filter(reach -> outside(reach).isEmpty());
    }

    private Reach reach(DrawnUnit unit) {
        double startM = unit.chainageM() + point.startBelowM(reachM);
        double endM = startM - reachM;
        boolean rounding = endM < 0 && endM > -ROUNDING_M;
        return new Reach(unit.line(), startM, rounding ? 0 : endM);
    }

    private Optional<String> outside(Reach reach) {
        if (reach.endM() < 0) {
            return Optional.of(String.format(
                    Locale.ROOT,
                    "the line %s begins %.0f m short of the reach's upper end",
                    lines.id(reach.line()),
                    Math.ceil(-reach.endM())));
        }
        double overM = reach.startM() - lines.lengthM(reach.line());
        if (overM > 0) {
            return Optional.of(String.format(
                    Locale.ROOT,
                    "the line %s ends %.0f m short of the reach's lower end",
                    lines.id(reach.line()),
                    Math.ceil(overM)));
        }
        return Optional.empty();
    }

    private Optional<String> overlap(Reach reach) {
        return laid.entrySet().stream()
                .filter(other -> other.getValue().line() == reach.line()
                        && other.getValue().endM() < reach.startM()
                        && reach.endM() < other.getValue().startM())
                .map(other -> "its reach would overlap that of " + other.getKey())
                .findFirst();
    }

    /** Sentences on the confluences that a reach runs over. */
    List<String> remarks(Reach reach) {
        List<String> remarks = new ArrayList<>();
        for (Junction junction : junctions) {
            for (Junction.Arm arm : junction.arms()) {
                double aboveM = reach.startM() - arm.chainageM();
                if (arm.code().equals(lines.id(reach.line())) && aboveM > 0 && aboveM < reachM) {
                    remarks.add(String.format(
                            Locale.ROOT,
                            "The reach runs over a confluence %.0f m above its start; fish and flow differ above and"
                                    + " below it.",
                            aboveM));
                }
            }
        }
        return remarks;
    }
}
