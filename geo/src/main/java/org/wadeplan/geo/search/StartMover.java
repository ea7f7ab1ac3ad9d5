package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.wadeplan.geo.network.LinePlace;
import org.wadeplan.geo.network.StreamGraph;

/** Looks for the nearest clear start up and down the run that a start lies on. */
final class StartMover {

    private final Groundwork work;
    private final Runs runs;
    private final RunBlocks ruledOut;
    private final SearchRules rules;
    private final Rejections rejections;

    StartMover(Groundwork work, RunBlocks ruledOut, SearchRules rules) {
        this.work = work;
        this.runs = work.runs();
        this.ruledOut = ruledOut;
        this.rules = rules;
        this.rejections = new Rejections(work, rules.clearBy());
    }

    StartMove of(LinePlace start) {
        StreamGraph graph = work.ground().graph();
        int piece = graph.pieceAt(start.line(), start.chainageM());
        int run = runs.runOf(piece);
        double startM = runs.measureM(piece, start.chainageM());
        double reachM = work.sizes().lengthM(run);
        List<double[]> free = ruledOut.free(run, runs.lengthM(run)).stream()
                .filter(stretch -> Fitting.holdsOne(stretch, reachM))
                .toList();
        boolean clear = free.stream().anyMatch(stretch -> Fitting.holds(stretch, startM - reachM, startM));
        List<RejectedStretch> all = rejections.of(run, ruledOut);
        List<Reason> reasons = clear ? List.of() : inTheWay(run, startM, reachM);
        Optional<Double> up = clear ? Optional.empty() : upstream(free, startM, reachM);
        Optional<Double> down = clear ? Optional.empty() : downstream(free, startM, reachM);
        return new StartMove(
                start,
                reachM,
                reasons,
                up.map(toM -> shift(run, startM, toM, reachM)),
                down.map(toM -> shift(run, startM, toM, reachM)),
                clear ? List.of() : between(run, all, up.orElse(0.0), startM),
                clear ? List.of() : between(run, all, startM, down.orElse(runs.lengthM(run))),
                room(run, startM));
    }

    private static Optional<Double> upstream(List<double[]> free, double startM, double reachM) {
        return free.stream()
                .filter(stretch -> stretch[0] + reachM <= startM + Fitting.ROUNDING_M)
                .map(stretch -> Math.min(startM, stretch[1]))
                .max(Comparator.naturalOrder());
    }

    private static Optional<Double> downstream(List<double[]> free, double startM, double reachM) {
        return free.stream()
                .filter(stretch -> stretch[1] >= startM - Fitting.ROUNDING_M)
                .map(stretch -> Math.max(startM, stretch[0] + reachM))
                .min(Comparator.naturalOrder());
    }

    private List<Reason> inTheWay(int run, double startM, double reachM) {
        Map<String, Reason> nearest = new LinkedHashMap<>();
        double topM = Math.max(0, startM - reachM);
        if (startM - reachM < -Fitting.ROUNDING_M && !Double.isInfinite(reachM)) {
            Reason end = pastEnd(run, startM, reachM);
            nearest.put(end.group(), end);
        }
        List<Reason> met = new ArrayList<>();
        rejections.of(run, ruledOut, topM, startM).forEach(stretch -> met.addAll(stretch.reasons()));
        boolean onlyShort = nearest.isEmpty() && met.stream().allMatch(reason -> reason.kind() == ReasonKind.TOO_SHORT);
        for (Reason reason : met) {
            if (onlyShort || reason.kind() != ReasonKind.TOO_SHORT) {
                nearest.merge(key(reason), reason, StartMover::nearer);
            }
        }
        return List.copyOf(nearest.values());
    }

    /** What was found without its figure, so that one thing found on several stretches counts once. */
    private static String key(Reason reason) {
        return reason.group() + reason.found().replaceFirst("^[0-9]+ m", "");
    }

    private static Reason nearer(Reason a, Reason b) {
        return a.foundM().orElse(0) <= b.foundM().orElse(0) ? a : b;
    }

    private Reason pastEnd(int run, double startM, double reachM) {
        return new Reason(
                ReasonKind.TOO_SHORT,
                "past the upper end",
                String.format(
                        Locale.ROOT, "the start is %.0f m below %s", Math.floor(startM), end(runs.upperNode(run))),
                String.format(Locale.ROOT, "a reach needs %s m", Bounds.number(reachM)),
                OptionalDouble.of(startM));
    }

    private List<RejectedStretch> between(int run, List<RejectedStretch> all, double fromM, double toM) {
        Set<LineStretch> wanted = new LinkedHashSet<>(runs.stretches(run, fromM, toM));
        List<RejectedStretch> found = new ArrayList<>();
        for (RejectedStretch stretch : all) {
            boolean touches = wanted.stream()
                    .anyMatch(part -> part.line() == stretch.stretch().line()
                            && stretch.stretch().fromM() < part.toM() - Fitting.ROUNDING_M
                            && stretch.stretch().toM() > part.fromM() + Fitting.ROUNDING_M);
            if (touches) {
                found.add(stretch);
            }
        }
        return found;
    }

    /** To whole metres, rounded away from the start, where the reach is then still clear. */
    private StartMove.Shift shift(int run, double startM, double toM, double reachM) {
        double exactM = Math.abs(toM - startM);
        double wholeM = Math.ceil(exactM - Fitting.ROUNDING_M);
        double roundedM = toM < startM ? startM - wholeM : startM + wholeM;
        boolean stillClear = ruledOut.free(run, runs.lengthM(run)).stream()
                .anyMatch(stretch -> Fitting.holds(stretch, roundedM - reachM, roundedM));
        double newM = stillClear ? roundedM : toM;
        return new StartMove.Shift(
                stillClear ? wholeM : exactM, runs.place(run, newM), clears(run, startM, newM, reachM));
    }

    private List<String> clears(int run, double startM, double newM, double reachM) {
        Set<Integer> blocked = new LinkedHashSet<>();
        double topM = Math.max(0, startM - reachM);
        for (Block block : ruledOut.of(run)) {
            if (block.fromM() < startM - Fitting.ROUNDING_M && block.toM() > topM + Fitting.ROUNDING_M) {
                blocked.add(block.hindrance());
            }
        }
        List<String> words = new ArrayList<>();
        for (int number : blocked) {
            if (work.hindrances().get(number) instanceof Hindrance.Near near) {
                double distM = distanceM(number, near, run, newM - reachM, newM);
                words.add(String.format(
                        Locale.ROOT, "clears %s by %.0f m", near.name(), Math.floor(distM + Fitting.ROUNDING_M)));
            } else if (work.hindrances().get(number) instanceof Hindrance.Stated stated
                    && stated.kind() == ReasonKind.LAND) {
                words.add("leaves " + stated.found().replaceFirst("^on (or within [0-9.]+ m of )?", ""));
            }
        }
        return words;
    }

    private double distanceM(int number, Hindrance.Near near, int run, double fromM, double toM) {
        if (rules.clearBy() == ClearBy.STRAIGHT) {
            return runs.stretches(run, Math.max(0, fromM), toM).stream()
                    .mapToDouble(part -> rejections.straightM(near.at(), part))
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
        }
        List<Block> reached = new ArrayList<>();
        work.spread(number, near, near.clearM() + 2 * runs.lengthM(run), reached);
        return reached.stream()
                .filter(block -> block.run() == run && block.fromM() <= toM && block.toM() >= fromM)
                .mapToDouble(block -> block.nearestM(fromM, toM))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private String room(int run, double startM) {
        return String.format(
                Locale.ROOT,
                "the stream is %.0f m long between %s and %s; the start is %.0f m below the first",
                Math.floor(runs.lengthM(run)),
                end(runs.upperNode(run)),
                end(runs.lowerNode(run)),
                Math.floor(startM));
    }

    private String end(int node) {
        StreamGraph graph = work.ground().graph();
        String lines = Hindrances.lines(graph, node);
        if (graph.isConfluence(node)) {
            return "the confluence of " + lines;
        }
        int arriving = graph.arrivingCount(node);
        if (arriving + graph.leavingCount(node) > 1) {
            return "the meeting of " + lines;
        }
        return (arriving == 0 ? "the source of " : "the mouth of ") + lines;
    }
}
