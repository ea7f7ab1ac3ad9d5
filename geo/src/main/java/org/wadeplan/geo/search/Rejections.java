package org.wadeplan.geo.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.MetricPoint;

/** Puts into words why stretches of a run hold no reach. */
final class Rejections {

    private static final Comparator<Reason> ORDER =
            Comparator.comparing(Reason::kind).thenComparing(Reason::group).thenComparing(Reason::found);

    private final Groundwork work;
    private final Runs runs;
    private final ClearBy clearBy;

    Rejections(Groundwork work, ClearBy clearBy) {
        this.work = work;
        this.runs = work.runs();
        this.clearBy = clearBy;
    }

    /** Stretches of one run that hold no reach, from its upper end down; those left too short for a reach too. */
    List<RejectedStretch> of(int run, RunBlocks blocks) {
        return of(run, blocks, 0, runs.lengthM(run));
    }

    /** The same for a part of a run, with what is found on that part alone. */
    List<RejectedStretch> of(int run, RunBlocks blocks, double partFromM, double partToM) {
        double lengthM = runs.lengthM(run);
        double reachM = work.sizes().lengthM(run);
        List<RejectedStretch> rejected = new ArrayList<>();
        for (Atoms.Atom atom : Atoms.of(blocks.of(run), lengthM)) {
            boolean free = atom.blocks().isEmpty();
            boolean usable = free && Fitting.holdsOne(new double[] {atom.fromM(), atom.toM()}, reachM);
            double fromM = Math.max(partFromM, atom.fromM());
            double toM = Math.min(partToM, atom.toM());
            if (!usable && toM > fromM) {
                List<LineStretch> parts = runs.stretches(run, fromM, toM);
                for (int i = parts.size() - 1; i >= 0; i--) {
                    List<Reason> reasons = free
                            ? List.of(tooShort(atom, reachM))
                            : reasons(new Atoms.Atom(fromM, toM, atom.blocks()), parts.get(i));
                    rejected.add(new RejectedStretch(parts.get(i), reasons));
                }
            }
        }
        return rejected;
    }

    private static Reason tooShort(Atoms.Atom atom, double reachM) {
        double leftM = atom.toM() - atom.fromM();
        return new Reason(
                ReasonKind.TOO_SHORT,
                "in what is left shorter than a reach",
                String.format(Locale.ROOT, "%.0f m are left here", Math.floor(leftM + Fitting.ROUNDING_M)),
                String.format(Locale.ROOT, "a reach needs %s m", Bounds.number(reachM)),
                OptionalDouble.of(leftM));
    }

    /** Every hindrance once, however many blocks it has here. */
    private List<Reason> reasons(Atoms.Atom atom, LineStretch part) {
        Map<Integer, Double> nearest = new TreeMap<>();
        for (Block block : atom.blocks()) {
            double distM = block.isAlong() ? block.nearestM(atom.fromM(), atom.toM()) : Double.POSITIVE_INFINITY;
            nearest.merge(block.hindrance(), distM, Math::min);
        }
        List<Reason> reasons = new ArrayList<>();
        nearest.forEach((number, distM) -> {
            Hindrance hindrance = work.hindrances().get(number);
            if (hindrance instanceof Hindrance.Near near) {
                double foundM = clearBy == ClearBy.ALONG ? distM : straightM(near.at(), part);
                reasons.add(near.reason(foundM, clearBy));
            } else if (hindrance instanceof Hindrance.Stated stated) {
                reasons.add(stated.reason());
            }
        });
        reasons.sort(ORDER);
        return reasons;
    }

    double straightM(MetricPoint place, LineStretch part) {
        LineString shape = work.ground().graph().lines().between(part.line(), part.fromM(), part.toM());
        return Distance.pointToSegmentString(new Coordinate(place.eastM(), place.northM()), shape.getCoordinates());
    }
}
