package org.wadeplan.planner.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.wadeplan.geo.draw.DrawnUnit;
import org.wadeplan.geo.draw.Loss;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.network.Junction;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.reach.ReachProtocol.Sizing;

/** Whether a reach can be laid at a drawn point: room on the line, and clear of the reaches laid before it. */
final class ReachRoom {

    private static final double ROUNDING_M = 0.001;

    private final LineSet lines;
    private final Function<LinePlace, Sizing> sizing;
    private final ReachPoint point;
    private final List<Junction> junctions;
    private final Map<String, Reach> laid = new LinkedHashMap<>();

    /**
     * @param sizing how long a reach is at a place, or why nobody knows
     */
    ReachRoom(StreamNetwork network, Function<LinePlace, Sizing> sizing, ReachPoint point) {
        this.lines = network.graph().lines();
        this.sizing = sizing;
        this.point = point;
        this.junctions = network.junctions();
    }

    /** A reach between two chainages, the upper one smaller. */
    record Reach(int line, double startM, double endM) {}

    /** Lays the reach, or says why there is none. */
    Optional<Loss> lay(DrawnUnit unit) {
        Sizing size = sizing.apply(new LinePlace(unit.line(), unit.chainageM()));
        if (size instanceof Sizing.Unsized unsized) {
            return noReach(unsized.reason());
        }
        Reach reach = reach(unit, ((Sizing.Sized) size).rule().lengthM());
        Optional<String> obstacle = outside(reach).or(() -> overlap(reach));
        if (obstacle.isEmpty()) {
            laid.put(unit.code(), reach);
        }
        return obstacle.flatMap(ReachRoom::noReach);
    }

    private static Optional<Loss> noReach(String reason) {
        return Optional.of(new Loss(Loss.Ground.NO_REACH, reason));
    }

    /** The reach that the unit would have, whether or not it was laid; empty where it does not fit onto its line. */
    Optional<Reach> fitting(DrawnUnit unit) {
        return sizing.apply(new LinePlace(unit.line(), unit.chainageM())) instanceof Sizing.Sized sized
                ? Optional.of(reach(unit, sized.rule().lengthM()))
                        .filter(reach -> outside(reach).isEmpty())
                : Optional.empty();
    }

    private Reach reach(DrawnUnit unit, double reachM) {
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
                if (arm.code().equals(lines.id(reach.line())) && aboveM > 0 && arm.chainageM() > reach.endM()) {
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
