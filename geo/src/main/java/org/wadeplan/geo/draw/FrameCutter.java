package org.wadeplan.geo.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.ToIntFunction;
import org.wadeplan.geo.lines.LineSet;

/** Cuts lines into stretches that belong to one stratum each and that are drawn from or left out as a whole. */
public final class FrameCutter {

    /** The stratum of lines that nothing puts into one. */
    public static final String UNKNOWN_STRATUM = "unknown";

    private static final double SHORTEST_M = 0.001;

    private final LineSet lines;
    private final List<List<Part>> parts;
    private final List<List<Exclusion>> exclusions;

    private FrameCutter(LineSet lines, List<Part> parts, List<Exclusion> exclusions) {
        this.lines = lines;
        this.parts = byLine(lines.lineCount(), parts, Part::line);
        this.exclusions = byLine(lines.lineCount(), exclusions, Exclusion::line);
    }

    /** A stretch of a line that belongs to a stratum. */
    public record Part(int line, double fromM, double toM, String stratum) {}

    /**
     * A stretch of a line that is left out.
     *
     * @param standing anything but eligible
     * @param reason in words, such as {@code consent refused on parcel P-117}
     */
    public record Exclusion(int line, double fromM, double toM, Standing standing, String reason) {}

    /**
     * The frame, covering every line from end to end.
     *
     * @param parts in any order; where two overlap the first given holds; what none covers is of an unknown stratum
     * @param exclusions in any order; where two overlap the graver standing holds and all reasons stay
     */
    public static DrawFrame cut(LineSet lines, List<Part> parts, List<Exclusion> exclusions) {
        FrameCutter cutter = new FrameCutter(lines, parts, exclusions);
        List<FrameStretch> stretches = new ArrayList<>();
        for (int line = 0; line < lines.lineCount(); line++) {
            cutter.cut(line, stretches);
        }
        return new DrawFrame(lines, stretches);
    }

    private void cut(int line, List<FrameStretch> stretches) {
        double aboveM = 0;
        for (double belowM : cuts(line)) {
            if (belowM - aboveM > SHORTEST_M) {
                stretches.add(stretch(line, aboveM, belowM));
                aboveM = belowM;
            }
        }
    }

    private SortedSet<Double> cuts(int line) {
        double lengthM = lines.lengthM(line);
        TreeSet<Double> cuts = new TreeSet<>();
        parts.get(line).forEach(part -> {
            cuts.add(part.fromM());
            cuts.add(part.toM());
        });
        exclusions.get(line).forEach(part -> {
            cuts.add(part.fromM());
            cuts.add(part.toM());
        });
        TreeSet<Double> inside = new TreeSet<>(cuts.subSet(0.0, false, lengthM - SHORTEST_M, false));
        inside.add(lengthM);
        return inside;
    }

    private FrameStretch stretch(int line, double fromM, double toM) {
        double middleM = (fromM + toM) / 2;
        String stratum = parts.get(line).stream()
                .filter(part -> part.fromM() <= middleM && middleM <= part.toM())
                .map(Part::stratum)
                .findFirst()
                .orElse(UNKNOWN_STRATUM);
        Standing gravest = Standing.ELIGIBLE;
        Set<String> reasons = new TreeSet<>();
        for (Exclusion exclusion : exclusions.get(line)) {
            if (exclusion.fromM() <= middleM && middleM <= exclusion.toM()) {
                gravest = exclusion.standing().compareTo(gravest) > 0 ? exclusion.standing() : gravest;
                reasons.add(exclusion.reason());
            }
        }
        return new FrameStretch(line, fromM, toM, stratum, gravest, List.copyOf(reasons));
    }

    private static <T> List<List<T>> byLine(int lineCount, List<T> all, ToIntFunction<T> lineOf) {
        List<List<T>> grouped = new ArrayList<>();
        for (int line = 0; line < lineCount; line++) {
            grouped.add(new ArrayList<>(0));
        }
        all.forEach(each -> grouped.get(lineOf.applyAsInt(each)).add(each));
        return grouped;
    }
}
