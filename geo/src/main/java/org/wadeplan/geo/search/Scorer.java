package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wadeplan.geo.access.WalkIn;
import org.wadeplan.geo.reach.LengthBand;
import org.wadeplan.geo.reach.MeanWidth;
import org.wadeplan.geo.reach.StretchShape;
import org.wadeplan.geo.terrain.Slope;

/** Gives points to starts: first by what is quick to know, later by slope and access, which may take long. */
final class Scorer {

    private final SearchGround ground;
    private final Runs runs;
    private final RunBlocks distances;
    private final ScoreRules rules;

    Scorer(Groundwork work) {
        this.ground = work.ground();
        this.runs = work.runs();
        this.distances = work.distances();
        this.rules = work.rules().scores();
    }

    /**
     * No score of this start can be above this, 0 to 100: slope and access count in full where any are known. In figures
     * alone, since a nation has millions of starts, and added up in the order of {@link Score#of}, so that it is the score
     * itself where nothing is left to ask.
     */
    double atMost(int run, double fromM, double toM) {
        List<LineStretch> stretches = runs.stretches(run, fromM, toM);
        Optional<MeanWidth> width = ground.facts().width(longest(stretches));
        double earned = earned(rules.clearance(), Math.min(nearestM(run, fromM, toM), rules.fullClearanceM()));
        double unknown = 0;
        if (width.isPresent()) {
            double widthM = width.get().widthM();
            earned += rules.lengthSpread().weight() == 0
                    ? 0
                    : earned(rules.lengthSpread(), LengthBand.spreadShare(shape(ground, stretches), widthM));
            earned += earned(rules.width(), widthM);
        } else {
            unknown += rules.lengthSpread().weight();
            unknown += rules.width().weight();
        }
        earned += ground.facts().knowsSlopes() ? rules.slope().weight() : 0;
        unknown += ground.facts().knowsSlopes() ? 0 : rules.slope().weight();
        earned += ground.facts().knowsWalkIns() ? rules.walkIn().weight() : 0;
        unknown += ground.facts().knowsWalkIns() ? 0 : rules.walkIn().weight();
        return Score.points(earned, unknown, rules.fullWeight());
    }

    private static double earned(ScoreRules.Part rule, double figure) {
        return rule.weight() * rule.preference().share(figure);
    }

    Score score(int run, double fromM, double toM) {
        List<Score.Part> parts = quick(run, fromM, toM);
        List<LineStretch> stretches = runs.stretches(run, fromM, toM);
        parts.add(slope(ground.facts().slope(longest(stretches))));
        parts.add(walkIn(ground.facts().walkIn(stretches.get(0))));
        return Score.of(parts.stream().filter(part -> part.weight() > 0).toList());
    }

    private List<Score.Part> quick(int run, double fromM, double toM) {
        List<Score.Part> parts = new ArrayList<>();
        List<LineStretch> stretches = runs.stretches(run, fromM, toM);
        Optional<MeanWidth> width = ground.facts().width(longest(stretches));
        parts.add(clearance(nearestM(run, fromM, toM)));
        parts.add(spread(stretches, width));
        parts.add(width(width));
        return parts;
    }

    static LineStretch longest(List<LineStretch> stretches) {
        LineStretch longest = stretches.get(0);
        for (LineStretch stretch : stretches) {
            if (stretch.lengthM() > longest.lengthM()) {
                longest = stretch;
            }
        }
        return longest;
    }

    /** Metres along the network to the nearest place to keep clear of; infinite where it earns full points anyway. */
    private double nearestM(int run, double fromM, double toM) {
        double nearestM = Double.POSITIVE_INFINITY;
        for (Block block : distances.of(run)) {
            if (block.fromM() >= toM) {
                break;
            }
            if (block.toM() > fromM) {
                nearestM = Math.min(nearestM, block.nearestM(fromM, toM));
            }
        }
        return nearestM;
    }

    private Score.Part clearance(double nearestM) {
        double fullM = rules.fullClearanceM();
        boolean far = nearestM >= fullM;
        String found = far
                ? String.format(Locale.ROOT, "%.0f m or more along the stream", fullM)
                : String.format(Locale.ROOT, "%.0f m along the stream", Math.floor(nearestM));
        return part("nearest obstacle", found, rules.clearance(), OptionalDouble.of(Math.min(nearestM, fullM)));
    }

    private Score.Part spread(List<LineStretch> stretches, Optional<MeanWidth> width) {
        if (rules.lengthSpread().weight() == 0) {
            return part("length certainty", "not asked for", rules.lengthSpread(), OptionalDouble.empty());
        }
        StretchShape shape = shape(ground, stretches);
        LengthBand band = LengthBand.of(shape, width);
        String found = String.format(
                Locale.ROOT, "%.0f-%.0f m, a vertex every %.0f m", band.lowM(), band.highM(), shape.vertexSpacingM());
        return part(
                "length certainty",
                width.isPresent() ? found : found + "; no width known to judge bends by",
                rules.lengthSpread(),
                width.isPresent() ? OptionalDouble.of(band.spreadShare()) : OptionalDouble.empty());
    }

    static StretchShape shape(SearchGround ground, List<LineStretch> stretches) {
        StretchShape.Gauge gauge = new StretchShape.Gauge();
        for (LineStretch stretch : stretches) {
            gauge.stretch(
                    ground.graph().lines(), stretch.line(), /* fromM= */ stretch.toM(), /* toM= */ stretch.fromM());
        }
        return gauge.shape();
    }

    private Score.Part width(Optional<MeanWidth> width) {
        return width.map(known -> part("width", widthWords(known), rules.width(), OptionalDouble.of(known.widthM())))
                .orElseGet(() -> part("width", "not known", rules.width(), OptionalDouble.empty()));
    }

    private static String widthWords(MeanWidth width) {
        return String.format(Locale.ROOT, "%.1f m, %s", width.widthM(), width.basis());
    }

    private Score.Part slope(Optional<Slope> slope) {
        if (slope.isPresent() && slope.get() instanceof Slope.Fitted fitted) {
            String found = String.format(Locale.ROOT, "%.2f %% over %.0f m", fitted.percent(), fitted.windowM());
            return part("slope", found, rules.slope(), OptionalDouble.of(fitted.percent()));
        }
        String why = slope.filter(Slope.Unresolved.class::isInstance)
                .map(unresolved -> "not known: " + ((Slope.Unresolved) unresolved).reason())
                .orElse("not known");
        return part("slope", why, rules.slope(), OptionalDouble.empty());
    }

    /** A way across land without consent is no way, however short. */
    private Score.Part walkIn(Optional<WalkIn> walk) {
        if (walk.isEmpty()) {
            return part("walk-in", "not known", rules.walkIn(), OptionalDouble.empty());
        }
        WalkIn known = walk.get();
        return known.acrossWithoutConsent().isEmpty()
                ? part("walk-in", walkWords(known), rules.walkIn(), OptionalDouble.of(known.lengthM()))
                : new Score.Part("walk-in", walkWords(known), rules.walkIn().weight(), OptionalDouble.of(0));
    }

    private static String walkWords(WalkIn walk) {
        String across = walk.acrossWithoutConsent().isEmpty()
                ? ""
                : ", ACROSS LAND WITHOUT CONSENT: " + String.join(", ", walk.acrossWithoutConsent());
        return String.format(Locale.ROOT, "%.0f m from %s%s", walk.lengthM(), walk.road(), across);
    }

    private static Score.Part part(String name, String found, ScoreRules.Part rule, OptionalDouble figure) {
        OptionalDouble points = figure.isPresent()
                ? OptionalDouble.of(rule.weight() * rule.preference().share(figure.getAsDouble()))
                : OptionalDouble.empty();
        return new Score.Part(name, found, rule.weight(), points);
    }
}
