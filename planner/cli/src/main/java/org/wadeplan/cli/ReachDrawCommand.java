package org.wadeplan.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.draw.Allocation;
import org.wadeplan.geo.draw.Loss;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.planner.draw.DrawFiles;
import org.wadeplan.planner.draw.DrawRequest;
import org.wadeplan.planner.draw.ReachPoint;
import org.wadeplan.planner.draw.RoundDraw;
import org.wadeplan.planner.draw.RoundDrawer;
import org.wadeplan.planner.draw.StrataBy;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Draws places to survey. */
@Command(
        name = "draw",
        mixinStandardHelpOptions = true,
        description = "draw places to survey along the stream lines, evenly spread, every metre with a known chance,"
                + " with reserves in order")
final class ReachDrawCommand extends RoundCommand {

    @Option(names = "--size", paramLabel = "N", required = true, description = "number of reaches to visit")
    private int size;

    @Option(
            names = "--reserve",
            paramLabel = "PCT",
            description = "reaches in reserve, 25 to 100 %% of the size (default: ${DEFAULT-VALUE})")
    private int reservePct = DrawRequest.USUAL_RESERVE_PCT;

    @Option(
            names = "--strata",
            paramLabel = "BY",
            description = "draw apart within each: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE})")
    private StrataBy strata = StrataBy.NONE;

    @Option(
            names = "--allocation",
            paramLabel = "HOW",
            converter = DrawWords.Shares.class,
            description = "how the size is shared among strata: proportional to length, equal, or given as 1=10,2=20"
                    + " (default: proportional)")
    private Allocation allocation = new Allocation.Proportional();

    @Option(
            names = "--road-within",
            paramLabel = "M",
            description = "leave out what lies further from every road, in metres; with --strata road draw near and far"
                    + " apart instead. The record of the frame shows what is lost")
    private Optional<Double> roadWithinM = Optional.empty();

    @Option(
            names = "--point",
            paramLabel = "WHERE",
            description = "what a drawn point becomes of its reach: ${COMPLETION-CANDIDATES} (default:"
                    + " ${DEFAULT-VALUE}, its downstream end)")
    private ReachPoint point = ReachPoint.START;

    @Option(
            names = "--lost",
            paramLabel = "CODE=GROUND[:WHY]",
            description =
                    "a drawn place that cannot be surveyed, such as D003=denied:\"refused by letter\"; ground is"
                            + " dry, non-target, denied or no-reach; may be repeated. The next reserve of its stratum stands in")
    private Map<String, String> lost = new LinkedHashMap<>();

    @Option(names = "--seed", paramLabel = "N", description = "seed of the draw (default: the round's own)")
    private Optional<Long> seed = Optional.empty();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "write draw.json, draw.gpkg, draw.geojson and draw.gpx into this folder")
    private Optional<Path> out = Optional.empty();

    ReachDrawCommand(Console console) {
        super(console);
    }

    @Override
    int run(Round round) {
        Map<String, Loss> losses = new LinkedHashMap<>();
        for (Map.Entry<String, String> entry : lost.entrySet()) {
            Optional<Loss> loss = DrawWords.loss(entry.getValue());
            if (loss.isEmpty()) {
                return unknown("--lost " + entry.getKey(), entry.getValue(), DrawWords.grounds());
            }
            losses.put(entry.getKey(), loss.get());
        }
        Checked<RoundDraw> drawn = RoundDrawer.draw(
                round,
                new DrawRequest(
                        size,
                        reservePct,
                        strata,
                        allocation,
                        roadWithinM.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                        point,
                        seed.orElse(round.header().seed()),
                        losses));
        if (drawn.value().isEmpty()) {
            return refused(drawn.problems());
        }
        return shown(round, drawn.value().get(), drawn);
    }

    private int shown(Round round, RoundDraw draw, Checked<RoundDraw> drawn) {
        List<String> text = new DrawText(draw).lines();
        if (out.isPresent()) {
            try {
                List<String> names = DrawFiles.write(round, draw, out.get(), now());
                text.add("Written to " + out.get() + ": " + String.join(", ", names) + ".");
            } catch (DiskException fault) {
                return notWritten(fault);
            }
        }
        return show(round, drawn.problems(), draw, text);
    }
}
