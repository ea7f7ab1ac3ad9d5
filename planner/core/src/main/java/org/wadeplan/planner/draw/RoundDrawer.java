package org.wadeplan.planner.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import org.wadeplan.geo.draw.BalancedDraw;
import org.wadeplan.geo.draw.Draw;
import org.wadeplan.geo.draw.DrawDesign;
import org.wadeplan.geo.draw.DrawFrame;
import org.wadeplan.geo.draw.DrawnUnit;
import org.wadeplan.geo.draw.StratumVisits;
import org.wadeplan.geo.draw.VisitList;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.plan.Program;
import org.wadeplan.planner.reach.SiteReaches;
import org.wadeplan.planner.round.Round;

/** Draws places to survey for a round. */
public final class RoundDrawer {

    private RoundDrawer() {}

    /**
     * Draws, lets reserves stand in for what is lost, and lays reaches.
     *
     * @return the draw, with a warning for each visit that no reserve is left for and each loss of an unknown place; or
     *     every reason why there can be none
     */
    public static Checked<RoundDraw> draw(Round round, DrawRequest request) {
        List<Problem> unfit = roadProblems(round, request);
        if (!unfit.isEmpty()) {
            return Checked.failed(unfit);
        }
        DrawFrame frame = RoundFrame.of(round, request);
        DrawDesign design = new DrawDesign(
                request.size(),
                request.reservePct(),
                request.allocation(),
                DrawDesign.USUAL_UNIT_M,
                round.header().reach().protocol().leastLengthM(),
                request.seed());
        return BalancedDraw.draw(frame, design).then(draw -> finished(round, request, draw));
    }

    private static List<Problem> roadProblems(Round round, DrawRequest request) {
        List<Problem> problems = new ArrayList<>();
        if (request.needsRoads() && round.terrain().roads().isEmpty()) {
            problems.add(Problem.error(
                    "draw-roads-missing",
                    SourcePlace.part("draw", "road-within"),
                    "the round has no map of roads",
                    "files.roads in round.json names a layer of roads and tracks",
                    "add it, or draw without the distance to roads"));
        }
        if (!(request.roadM() > 0)) {
            problems.add(Problem.error(
                    "draw-road-distance",
                    SourcePlace.part("draw", "road-within"),
                    request.roadM() + " m from a road",
                    "a distance above 0 m",
                    "give how far the crews can carry their gear, such as 500"));
        }
        return problems;
    }

    private static Checked<RoundDraw> finished(Round round, DrawRequest request, Draw draw) {
        ReachRoom room = new ReachRoom(round.terrain().network(), new SiteReaches(round)::sizing, request.point());
        String reachRule = round.header().reach().protocol().words();
        ReachLand land = new ReachLand(round);
        VisitList visits =
                VisitList.of(draw, unit -> Optional.ofNullable(request.lost().get(unit.code()))
                        .or(() -> room.fitting(unit).flatMap(land::refusal))
                        .or(() -> room.lay(unit)));
        DrawnPlaces places = new DrawnPlaces(round, room, land, visits);
        RoundDraw done = new RoundDraw(
                RoundDraw.FORMAT_VERSION,
                Program.VERSION,
                round.header().id(),
                round.hash().whole(),
                draw.framePrint(),
                round.terrain().crs().code(),
                request,
                reachRule,
                words(request, reachRule),
                draw.frame(),
                draw.strata(),
                visits.strata(),
                places.all(),
                draw.balance(),
                draw.balance().meaning());
        List<Problem> problems = new ArrayList<>(unknownLosses(request, draw));
        visits.strata().stream()
                .filter(stratum -> stratum.shortBy() > 0)
                .forEach(stratum -> problems.add(tooFewReserves(stratum)));
        return Checked.of(done, problems);
    }

    private static List<String> words(DrawRequest request, String reachRule) {
        List<String> words = new ArrayList<>(List.of(
                "Stratified by " + request.strataBy().name().toLowerCase(Locale.ROOT) + ", "
                        + request.allocation().words() + " allocation. In each stratum every metre of eligible line is"
                        + " equally likely: the line is cut into units of at most "
                        + String.format(Locale.ROOT, "%.0f", DrawDesign.USUAL_UNIT_M)
                        + " m, drawn with probability proportional to length by the local pivotal method (Grafström,"
                        + " Lundström & Schelin 2012), twice as many as wanted; the same method then halves these into"
                        + " base and reserves and puts each in order.",
                "A drawn point is " + request.point().words() + " of a reach: " + reachRule + ".",
                "A reserve is used only for a loss in its own stratum, the next in order, whatever is easier to reach.",
                "Weights are metres of target stream: the stratum's length, less the part of the evaluated places that"
                        + " proved dry or non-target, over the places visited. That takes places without leave or reach to"
                        + " be like those visited."));
        if (request.filtersByRoad()) {
            words.add(String.format(
                    Locale.ROOT,
                    "Stretches over %.0f m from a road were left out: the sample does not speak for them, and streams by"
                            + " roads differ from others.",
                    request.roadM()));
        }
        return words;
    }

    private static List<Problem> unknownLosses(DrawRequest request, Draw draw) {
        TreeSet<String> strangers = new TreeSet<>(request.lost().keySet());
        draw.units().stream().map(DrawnUnit::code).forEach(strangers::remove);
        return strangers.stream()
                .map(code -> Problem.error(
                        "draw-loss-unknown",
                        SourcePlace.part("draw", "lost"),
                        "no drawn place is called " + code,
                        "a code of this draw, such as D001 or R001",
                        "correct it; the same seed, size and strata are needed for codes to be the same"))
                .toList();
    }

    private static Problem tooFewReserves(StratumVisits stratum) {
        return Problem.warning(
                "draw-reserves-used-up",
                SourcePlace.part("draw", "stratum " + stratum.stratum()),
                stratum.visited() + " places can be visited, " + stratum.shortBy() + " fewer than wanted: "
                        + stratum.missed() + " have no leave or no reach, " + stratum.nonTarget()
                        + " are dry or no target, and no reserve is left",
                "as many places as wanted",
                "draw again with the same seed and more reserves: base and earlier reserves stay as they are");
    }
}
