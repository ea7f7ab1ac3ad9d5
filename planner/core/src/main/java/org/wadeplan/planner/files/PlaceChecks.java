package org.wadeplan.planner.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.network.StreamNetwork.Candidate;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.planner.files.Table.Placed;
import org.wadeplan.planner.round.CatchmentArea;
import org.wadeplan.planner.round.PastVisit;
import org.wadeplan.planner.round.RoundHeader;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Terrain;

/** Places in tables must lie where the map says that they can. */
final class PlaceChecks {

    /** A site's point is taken with a handheld on the bank: a hundred metres off is another stream or a slip of keying. */
    private static final double SITE_TO_LINE_MAX_M = 100;

    /** Stakes move by metres between visits; a kilometre is another place. */
    private static final double PAST_START_MAX_M = 1000;

    private final Terrain terrain;
    private final List<Problem> problems = new ArrayList<>();

    private PlaceChecks(Terrain terrain) {
        this.terrain = terrain;
    }

    static List<Problem> check(RoundTables tables, Optional<RoundHeader> header, Terrain terrain) {
        PlaceChecks checks = new PlaceChecks(terrain);
        header.ifPresent(checks::depot);
        List<Site> wellPlaced = new ArrayList<>();
        for (Placed<Site> row : tables.sites().rows()) {
            if (checks.site(row)) {
                wellPlaced.add(row.value());
            }
        }
        // What lies near a site is judged by sites that lie where they should: one slip, one problem.
        tables.pastVisits().rows().forEach(row -> checks.pastStart(row, wellPlaced));
        checks.problems.addAll(GateChecks.check(tables.consents(), wellPlaced, terrain.crs()));
        return checks.problems;
    }

    private void depot(RoundHeader header) {
        MetricPoint at = header.depot().at();
        if (!terrain.crs().inArea(at)) {
            problems.add(outsideArea(SourcePlace.part(RoundJson.FILE, "depot"), at, "eastM and northM"));
        }
    }

    private Problem outsideArea(SourcePlace place, MetricPoint at, String columns) {
        CoordinateSystem crs = terrain.crs();
        boolean swapped = crs.inArea(swapped(at));
        return Problem.error(
                "place-outside-crs",
                place,
                coordinates(at) + " lies outside the area of " + crs.code(),
                "a place in the area of " + crs.words(),
                swapped ? "swap " + columns : "check the coordinates and the round's coordinate system");
    }

    private static String coordinates(MetricPoint at) {
        return "E " + Math.round(at.eastM()) + ", N " + Math.round(at.northM());
    }

    private static MetricPoint swapped(MetricPoint at) {
        return new MetricPoint(at.northM(), at.eastM());
    }

    /** Whether nothing is wrong with where the site lies. */
    private boolean site(Placed<Site> row) {
        Site site = row.value();
        if (!terrain.crs().inArea(site.start())) {
            problems.add(outsideArea(row.place().column("east_m"), site.start(), "east_m and north_m"));
            return false;
        }
        if (terrain.network().line(site.stream()).isEmpty()) {
            return true;
        }
        double offM =
                terrain.network().measure(site.stream()).foot(site.start()).distanceM();
        if (offM > SITE_TO_LINE_MAX_M) {
            problems.add(offLine(row, offM));
            return false;
        }
        inCatchment(row);
        return true;
    }

    private Problem offLine(Placed<Site> row, double offM) {
        Site site = row.value();
        StreamNetwork network = terrain.network();
        double swappedOffM =
                network.measure(site.stream()).foot(swapped(site.start())).distanceM();
        return Problem.error(
                "site-off-stream",
                row.place().column("stream"),
                "the site lies " + Distances.words(offM) + " from " + site.stream() + otherStream(site),
                "at most " + Math.round(SITE_TO_LINE_MAX_M) + " m",
                swappedOffM <= SITE_TO_LINE_MAX_M
                        ? "swap east_m and north_m: that puts it " + Distances.words(swappedOffM) + " from the line"
                        : "check the coordinates and the stream");
    }

    private String otherStream(Site site) {
        return terrain.network().nearest(site.start()).stream()
                .filter(candidate -> !candidate.stream().code().equals(site.stream()))
                .map(PlaceChecks::words)
                .findFirst()
                .orElse("");
    }

    private static String words(Candidate candidate) {
        return " and " + Distances.words(candidate.foot().distanceM()) + " from "
                + candidate.stream().code();
    }

    private void inCatchment(Placed<Site> row) {
        Site site = row.value();
        String code = terrain.network().line(site.stream()).orElseThrow().catchment();
        Optional<CatchmentArea> area = terrain.catchments().stream()
                .filter(catchment -> catchment.code().equals(code))
                .findFirst();
        boolean outside = area.map(catchment -> !holds(catchment, site.start())).orElse(false);
        if (outside) {
            problems.add(Problem.warning(
                    "site-outside-catchment",
                    row.place().column("stream"),
                    "the site lies outside the outline of the catchment " + code,
                    "a place inside it",
                    "check the coordinates, the stream and the outline: the permit goes by the catchment"));
        }
    }

    private static boolean holds(CatchmentArea catchment, MetricPoint at) {
        return catchment
                .area()
                .covers(catchment.area().getFactory().createPoint(new Coordinate(at.eastM(), at.northM())));
    }

    private void pastStart(Placed<PastVisit> row, List<Site> sites) {
        Optional<MetricPoint> start = row.value().start();
        Optional<Site> site = sites.stream()
                .filter(known -> known.id().equals(row.value().site()))
                .min(Comparator.comparing(Site::id));
        if (start.isPresent() && site.isPresent()) {
            double offM = start.get().distanceM(site.get().start());
            if (offM > PAST_START_MAX_M) {
                problems.add(Problem.warning(
                        "past-start-far",
                        row.place().column("east_m"),
                        "the visit's start lies " + Distances.words(offM) + " from today's start of "
                                + site.get().id(),
                        "at most " + Distances.words(PAST_START_MAX_M),
                        "check the coordinates; if the site moved, its visits cannot be compared"));
            }
        }
    }
}
