package org.wadeplan.planner.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.files.Table.Placed;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.Water;

/** Each site lies in exactly one water: the ranges of a stream neither overlap nor leave a site out. */
final class WaterRanges {

    private final Table<Water> waters;
    private final Map<String, List<Placed<Water>>> byStream;
    private final List<Problem> problems = new ArrayList<>();

    private WaterRanges(Table<Water> waters) {
        this.waters = waters;
        this.byStream = waters.rows().stream()
                .collect(Collectors.groupingBy(row -> row.value().stream(), TreeMap::new, Collectors.toList()));
    }

    static List<Problem> check(RoundTables tables, StreamNetwork network) {
        WaterRanges ranges = new WaterRanges(tables.waters());
        ranges.byStream.values().forEach(ranges::overlaps);
        if (tables.waters().whole()) {
            tables.sites().rows().stream()
                    .filter(row -> network.line(row.value().stream()).isPresent())
                    .forEach(row -> ranges.covered(row, network));
        }
        return ranges.problems;
    }

    private void overlaps(List<Placed<Water>> ofOneStream) {
        List<Placed<Water>> upwards = ofOneStream.stream()
                .sorted(Comparator.comparingDouble(row -> row.value().fromMouthMinM()))
                .toList();
        for (int i = 1; i < upwards.size(); i++) {
            Water lower = upwards.get(i - 1).value();
            Water upper = upwards.get(i).value();
            if (upper.fromMouthMinM() < lower.fromMouthMaxM()) {
                problems.add(Problem.error(
                        "waters-overlap",
                        upwards.get(i).place(),
                        upper.id() + " begins at " + Math.round(upper.fromMouthMinM()) + " m from the mouth of "
                                + upper.stream() + ", and " + lower.id() + " ends only at "
                                + Math.round(lower.fromMouthMaxM()) + " m",
                        "ranges that touch at most",
                        "let one end where the other begins"));
            }
        }
    }

    private void covered(Placed<Site> row, StreamNetwork network) {
        Site site = row.value();
        double fromMouthM = network.fromMouthM(site.stream(), site.start());
        boolean covered = byStream.getOrDefault(site.stream(), List.of()).stream()
                .map(Placed::value)
                .anyMatch(water -> fromMouthM >= water.fromMouthMinM() && fromMouthM <= water.fromMouthMaxM());
        if (!covered) {
            problems.add(Problem.error(
                    "site-without-water",
                    row.place().column("stream"),
                    "the site lies " + Math.round(fromMouthM) + " m from the mouth of " + site.stream()
                            + ", where no row of " + waters.file() + " reaches",
                    "a water whose range holds the site",
                    "widen a range, or add a water"));
        }
    }
}
