package org.wadeplan.planner.draw;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.wadeplan.geo.draw.DrawnUnit;
import org.wadeplan.geo.draw.StratumVisits;
import org.wadeplan.geo.draw.VisitList;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.planner.round.Round;

/** Puts together what is to be said of each drawn place. */
final class DrawnPlaces {

    private final Round round;
    private final LineSet lines;
    private final ReachRoom room;
    private final VisitList visits;
    private final ReachLand land;
    private final Map<String, Double> weightM = new TreeMap<>();

    DrawnPlaces(Round round, ReachRoom room, ReachLand land, VisitList visits) {
        this.round = round;
        this.lines = round.terrain().network().graph().lines();
        this.room = room;
        this.visits = visits;
        this.land = land;
        for (StratumVisits stratum : visits.strata()) {
            weightM.put(stratum.stratum(), stratum.weightM());
        }
    }

    List<DrawnPlace> all() {
        return visits.entries().stream().map(this::place).toList();
    }

    private DrawnPlace place(VisitList.Entry entry) {
        DrawnUnit unit = entry.unit();
        boolean visited = entry.use() == VisitList.Use.VISIT;
        Optional<ReachRoom.Reach> reach = room.fitting(unit);
        return new DrawnPlace(
                unit.code(),
                word(unit.role()),
                unit.turn(),
                word(entry.use()),
                entry.standsInFor(),
                entry.loss().map(loss -> loss.ground().words()),
                entry.loss().map(loss -> loss.reason()),
                unit.stratum(),
                lines.id(unit.line()),
                unit.chainageM(),
                lines.lengthM(unit.line()) - unit.chainageM(),
                unit.at(),
                round.terrain().crs().toLonLat(unit.at()),
                unit.unitLengthM(),
                unit.inclusionProbability(),
                unit.weightM(),
                visited ? OptionalDouble.of(weightM.getOrDefault(unit.stratum(), 0.0)) : OptionalDouble.empty(),
                reach.map(laid -> OptionalDouble.of(laid.startM())).orElse(OptionalDouble.empty()),
                reach.map(laid -> OptionalDouble.of(laid.endM())).orElse(OptionalDouble.empty()),
                reach.map(land::words).orElse(List.of()),
                reach.map(room::remarks).orElse(List.of()));
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
