package org.wadeplan.geo.search;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.wadeplan.geo.access.WalkIn;
import org.wadeplan.geo.network.StreamGraph;
import org.wadeplan.geo.reach.MeanWidth;
import org.wadeplan.geo.terrain.Slope;

/** The stretches that break a limit on what they are: kind of line, order, width, slope, access. */
final class FactBlocks {

    /** Slope and access are asked for every so many metres, or less where a piece is shorter. */
    private static final double CELL_M = 50;

    private final SearchGround ground;
    private final StreamGraph graph;
    private final Runs runs;
    private final SearchLimits limits;
    private final Hindrances hindrances;
    private final Set<String> notChecked = new TreeSet<>();

    FactBlocks(SearchGround ground, Runs runs, SearchLimits limits, Hindrances hindrances) {
        this.ground = ground;
        this.graph = ground.graph();
        this.runs = runs;
        this.limits = limits;
        this.hindrances = hindrances;
    }

    /** Limits that could not be checked somewhere, in words. */
    Set<String> notChecked() {
        return notChecked;
    }

    /** All blocks on one run. */
    void of(int run, Consumer<Block> found) {
        for (int index = 0; index < runs.pieceCount(run); index++) {
            int piece = runs.piece(run, index);
            LineStretch whole = new LineStretch(graph.line(piece), graph.fromM(piece), graph.toM(piece));
            kind(whole).ifPresent(reason -> block(run, piece, whole, reason, found));
            if (!limits.order().allowsAll()) {
                order(whole).ifPresent(reason -> block(run, piece, whole, reason, found));
            }
            if (!limits.widthM().allowsAll()) {
                width(whole).ifPresent(reason -> block(run, piece, whole, reason, found));
            }
            cells(run, piece, found);
        }
    }

    private void cells(int run, int piece, Consumer<Block> found) {
        boolean slope = !limits.slopePercent().allowsAll();
        boolean access = !limits.walkInM().allowsAll() || limits.walkInOnConsentedLand();
        if (!slope && !access) {
            return;
        }
        int count = (int) Math.ceil(graph.lengthM(piece) / CELL_M);
        for (int cell = 0; cell < count; cell++) {
            LineStretch part = new LineStretch(
                    graph.line(piece),
                    graph.fromM(piece) + graph.lengthM(piece) * cell / count,
                    cell == count - 1
                            ? graph.toM(piece)
                            : graph.fromM(piece) + graph.lengthM(piece) * (cell + 1) / count);
            if (slope) {
                slope(part).ifPresent(reason -> block(run, piece, part, reason, found));
            }
            if (access) {
                access(part, reason -> block(run, piece, part, reason, found));
            }
        }
    }

    private void block(int run, int piece, LineStretch part, Hindrance.Stated reason, Consumer<Block> found) {
        found.accept(Block.covering(
                run, runs.measureM(piece, part.fromM()), runs.measureM(piece, part.toM()), hindrances.stated(reason)));
    }

    private Optional<Hindrance.Stated> kind(LineStretch part) {
        return ground.traits()
                .kind(part.line())
                .filter(limits.lineKindsRuledOut()::contains)
                .map(kind -> new Hindrance.Stated(
                        ReasonKind.LINE_KIND,
                        "on a line that is " + kind,
                        "the line is " + kind,
                        "only streams, not " + String.join(", ", limits.lineKindsRuledOut())));
    }

    private Optional<Hindrance.Stated> order(LineStretch part) {
        OptionalInt order = ground.facts().order(part);
        if (order.isEmpty()) {
            notChecked.add("not checked everywhere: stream order, where the order is not known");
            return Optional.empty();
        }
        return broken(ReasonKind.ORDER, limits.order(), order.getAsInt(), "stream order", "");
    }

    private Optional<Hindrance.Stated> width(LineStretch part) {
        Optional<MeanWidth> width = ground.facts().width(part);
        if (width.isEmpty()) {
            notChecked.add("not checked everywhere: width, where no width is known");
        }
        return width.flatMap(known -> broken(ReasonKind.WIDTH, limits.widthM(), known.widthM(), "width", "m"));
    }

    private Optional<Hindrance.Stated> slope(LineStretch part) {
        Optional<Slope> slope = ground.facts().slope(part);
        if (slope.isPresent() && slope.get() instanceof Slope.Fitted fitted) {
            return broken(ReasonKind.SLOPE, limits.slopePercent(), fitted.percent(), "slope", "%");
        }
        notChecked.add(
                slope.isPresent()
                        ? "not checked everywhere: slope, where the elevation grid cannot resolve it"
                        : "not checked everywhere: slope, where no elevation is known");
        return Optional.empty();
    }

    private void access(LineStretch part, Consumer<Hindrance.Stated> found) {
        Optional<WalkIn> walk = ground.facts().walkIn(part);
        if (walk.isEmpty()) {
            notChecked.add("not checked everywhere: access, where no road or track is known");
            return;
        }
        if (!limits.walkInM().allowsAll()) {
            broken(ReasonKind.ACCESS, limits.walkInM(), walk.get().lengthM(), "walk-in", "m")
                    .ifPresent(found);
        }
        if (limits.walkInOnConsentedLand() && !walk.get().acrossWithoutConsent().isEmpty()) {
            found.accept(new Hindrance.Stated(
                    ReasonKind.ACCESS,
                    "walk-in across land without consent",
                    "the walk-in crosses " + String.join(", ", walk.get().acrossWithoutConsent()),
                    "only a walk-in on land with consent"));
        }
    }

    private static Optional<Hindrance.Stated> broken(
            ReasonKind kind, Bounds bounds, double value, String noun, String unit) {
        if (bounds.allows(value)) {
            return Optional.empty();
        }
        String number = unit.isEmpty()
                ? Bounds.number(value)
                : String.format(Locale.ROOT, unit.equals("%") ? "%.2f %%" : "%.1f m", value);
        return Optional.of(new Hindrance.Stated(
                kind, noun + " not " + bounds.words(unit), noun + " " + number, bounds.words(unit)));
    }
}
