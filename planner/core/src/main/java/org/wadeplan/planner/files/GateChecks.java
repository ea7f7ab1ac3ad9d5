package org.wadeplan.planner.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.files.Table.Placed;
import org.wadeplan.planner.round.Consent;
import org.wadeplan.planner.round.Site;

/** Gates lie near their sites; where one does not, its longitude and latitude may be swapped. */
final class GateChecks {

    /** A crew walks from the gate to the site. */
    private static final double GATE_MAX_M = 5000;

    /** A site with its distance from a gate. */
    private record Near(Site site, double distanceM) {}

    private final List<Site> sites;
    private final CoordinateSystem crs;

    private GateChecks(List<Site> sites, CoordinateSystem crs) {
        this.sites = sites;
        this.crs = crs;
    }

    /** @param sites those that lie in the area of the coordinate system */
    static List<Problem> check(Table<Consent> consents, List<Site> sites, CoordinateSystem crs) {
        GateChecks checks = new GateChecks(sites, crs);
        List<Problem> problems = new ArrayList<>();
        for (Placed<Consent> row : consents.rows()) {
            row.value().gate().flatMap(gate -> checks.problem(row, gate)).ifPresent(problems::add);
        }
        return problems;
    }

    private Optional<Problem> problem(Placed<Consent> row, LonLat gate) {
        Optional<Site> own = sites.stream()
                .filter(site -> site.id().equals(row.value().site()))
                .findFirst();
        if (own.isEmpty() || distanceM(gate, own.get()) <= GATE_MAX_M) {
            return Optional.empty();
        }
        Near nearest = nearest(gate);
        String far = nearest.distanceM() > GATE_MAX_M
                ? "point is " + Distances.words(nearest.distanceM()) + " from the project area"
                : "point is " + Distances.words(distanceM(gate, own.get())) + " from "
                        + own.get().id() + " and " + Distances.words(nearest.distanceM()) + " from "
                        + nearest.site().id();
        Optional<String> swapped = swapped(gate)
                .map(this::nearest)
                .filter(near -> near.distanceM() <= GATE_MAX_M)
                .map(near -> "; swapping the columns puts it " + Distances.words(near.distanceM()) + " from "
                        + near.site().id());
        return Optional.of(Problem.error(
                "gate-far",
                row.place().column("gate_lon_deg"),
                far + swapped.orElse(""),
                "a gate at most " + Distances.words(GATE_MAX_M) + " from its site",
                swapped.isPresent() ? "swap gate_lon_deg and gate_lat_deg" : "check the coordinates"));
    }

    private static Optional<LonLat> swapped(LonLat gate) {
        return Math.abs(gate.lonDeg()) <= 90 ? Optional.of(new LonLat(gate.latDeg(), gate.lonDeg())) : Optional.empty();
    }

    private double distanceM(LonLat gate, Site site) {
        return Distances.groundM(gate, crs.toLonLat(site.start()));
    }

    private Near nearest(LonLat gate) {
        return sites.stream()
                .map(site -> new Near(site, distanceM(gate, site)))
                .min(Comparator.comparingDouble(Near::distanceM))
                .orElseThrow();
    }
}
