package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.network.StreamGraph;
import org.wadeplan.geo.reach.ReachProtocol.Sizing;

/** What is ruled out on every run, by both ways of measuring distance. */
final class Groundwork {

    private static final int RUNS_BETWEEN_REPORTS = 4096;

    private final SearchGround ground;
    private final SearchRules rules;
    private final SearchWatch watch;
    private final Runs runs;
    private final LineParts parts;
    private final Hindrances hindrances;
    private final RunSizes sizes;
    private final boolean[] inScope;
    private final NetworkSpread spread;
    private final FactBlocks facts;
    private final List<Block> common = new ArrayList<>();
    private final List<Block> along = new ArrayList<>();
    private final List<Block> straight = new ArrayList<>();
    private boolean cancelled;

    Groundwork(SearchGround ground, SearchRules rules, SearchWatch watch) {
        this.ground = ground;
        this.rules = rules;
        this.watch = watch;
        this.runs = new Runs(ground.graph(), rules.acrossLines());
        this.parts = new LineParts(runs);
        this.hindrances = new Hindrances(ground, rules);
        this.sizes = new RunSizes(ground, runs, rules.protocol());
        this.inScope = scope();
        this.spread = new NetworkSpread(ground.graph());
        this.facts = new FactBlocks(ground, runs, rules.limits(), hindrances);
        cancelled = !(spreadPlaces() && lines() && stretches() && facts());
    }

    private boolean[] scope() {
        boolean[] inside = new boolean[runs.count()];
        StreamGraph graph = ground.graph();
        for (int run = 0; run < inside.length; run++) {
            for (int index = 0; index < runs.pieceCount(run); index++) {
                String id = graph.lines().id(graph.line(runs.piece(run, index)));
                inside[run] |= rules.onlyLines().isEmpty() || rules.onlyLines().contains(id);
            }
        }
        return inside;
    }

    /** Also as far as clearance earns points, not only as far as it is demanded. */
    private boolean spreadPlaces() {
        List<Hindrance.Near> places = hindrances.places();
        double pointsM =
                rules.scores().clearance().weight() > 0 ? rules.scores().fullClearanceM() : 0;
        for (int number = 0; number < places.size(); number++) {
            if (stopped("distances along the streams", number, places.size())) {
                return false;
            }
            spread(number, places.get(number), Math.max(places.get(number).clearM(), pointsM), along);
        }
        return true;
    }

    void spread(int number, Hindrance.Near place, double reachM, List<Block> into) {
        NetworkSpread.Reached block = (piece, fromM, toM, fromDistM, toDistM) -> {
            int run = runs.runOf(piece);
            if (inScope[run] && toM > fromM) {
                into.add(new Block(
                        run, runs.measureM(piece, fromM), runs.measureM(piece, toM), number, fromDistM, toDistM));
            }
        };
        if (place.node() >= 0) {
            spread.fromNode(place.node(), reachM, block);
        } else {
            place.on().ifPresent(on -> spread.fromPlace(on, reachM, block));
        }
    }

    private boolean lines() {
        StraightBlocks circles = new StraightBlocks(parts, hindrances.places(), 0);
        LandBlocks plots = new LandBlocks(parts, ground.land(), hindrances.firstLand());
        StreamGraph graph = ground.graph();
        for (int line = 0; line < graph.lines().lineCount(); line++) {
            if (stopped("distances across the ground", line, graph.lines().lineCount())) {
                return false;
            }
            if (touchesScope(line)) {
                circles.of(line, straight::add);
                plots.of(line, common::add);
            }
        }
        return true;
    }

    private boolean touchesScope(int line) {
        for (int piece = ground.graph().firstPiece(line); piece < ground.graph().endPiece(line); piece++) {
            if (inScope[runs.runOf(piece)]) {
                return true;
            }
        }
        return false;
    }

    private boolean stretches() {
        for (StretchToClear taken : ground.stretches()) {
            int number = hindrances.stated(new Hindrance.Stated(
                    taken.kind(),
                    taken.group(),
                    taken.clearM() > 0
                            ? "on or within " + Bounds.number(taken.clearM()) + " m along the network of "
                                    + taken.name()
                            : "on " + taken.name(),
                    taken.kind() == ReasonKind.TAKEN ? "only water that no other reach takes up" : ""));
            parts.split(taken.stretch(), (run, fromM, toM) -> common.add(Block.covering(run, fromM, toM, number)));
            for (LinePlace end : ends(taken.stretch())) {
                spread.fromPlace(
                        end,
                        taken.clearM(),
                        (piece, fromM, toM, fromDistM, toDistM) -> common.add(Block.covering(
                                runs.runOf(piece), runs.measureM(piece, fromM), runs.measureM(piece, toM), number)));
            }
        }
        return true;
    }

    private static List<LinePlace> ends(LineStretch stretch) {
        return List.of(new LinePlace(stretch.line(), stretch.fromM()), new LinePlace(stretch.line(), stretch.toM()));
    }

    private boolean facts() {
        for (int run = 0; run < runs.count(); run++) {
            if (stopped("limits", run, runs.count())) {
                return false;
            }
            if (inScope[run]) {
                facts.of(run, common::add);
                if (sizes.of(run) instanceof Sizing.Unsized unsized) {
                    int number = hindrances.stated(new Hindrance.Stated(
                            ReasonKind.NO_LENGTH, "where no length of reach is known", unsized.reason(), ""));
                    common.add(Block.covering(run, 0, runs.lengthM(run), number));
                }
            }
        }
        return true;
    }

    boolean stopped(String step, int done, int of) {
        if (done % RUNS_BETWEEN_REPORTS == 0) {
            watch.report(step, done, of);
            return watch.cancelled();
        }
        return false;
    }

    /** What rules out by one way of measuring. */
    RunBlocks ruledOut(ClearBy clearBy) {
        List<Block> all = new ArrayList<>(common);
        if (clearBy == ClearBy.STRAIGHT) {
            straight.stream().filter(block -> inScope[block.run()]).forEach(all::add);
        } else {
            for (Block block : along) {
                all.add(block.nearerThan(((Hindrance.Near) hindrances.get(block.hindrance())).clearM()));
            }
        }
        return RunBlocks.of(runs.count(), all);
    }

    /** Distances along the network to places, as far as they earn points. */
    RunBlocks distances() {
        return RunBlocks.of(runs.count(), along);
    }

    boolean cancelled() {
        return cancelled;
    }

    SearchGround ground() {
        return ground;
    }

    SearchRules rules() {
        return rules;
    }

    Runs runs() {
        return runs;
    }

    Hindrances hindrances() {
        return hindrances;
    }

    RunSizes sizes() {
        return sizes;
    }

    NetworkSpread spread() {
        return spread;
    }

    boolean inScope(int run) {
        return inScope[run];
    }

    Set<String> notChecked() {
        return facts.notChecked();
    }
}
