package org.wadeplan.planner.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.reach.Bank;
import org.wadeplan.planner.ReferenceTable;
import org.wadeplan.planner.ReferenceTable.Row;
import org.wadeplan.planner.round.Conditions;
import org.wadeplan.planner.round.Priority;
import org.wadeplan.planner.round.Site;
import org.wadeplan.planner.round.WetState;

/** The scenario's sites, as far as a method table looks at them. */
final class ScenarioSites {

    private ScenarioSites() {}

    static List<Row> rows() {
        return ReferenceTable.read("method-scenario-sites.csv");
    }

    static List<Site> all() {
        List<Site> sites = new ArrayList<>();
        rows().forEach(row -> sites.add(site(row)));
        return sites;
    }

    static Site named(String id) {
        return all().stream().filter(site -> site.id().equals(id)).findFirst().orElseThrow();
    }

    /** A site of which nothing but its conditions matters. */
    static Site site(String id, Conditions conditions, Optional<Boolean> nightAccess) {
        return new Site(
                id,
                id,
                id.substring(0, 3),
                "SITE",
                new MetricPoint(500_000, 5_100_000),
                Priority.A,
                Optional.empty(),
                Optional.empty(),
                conditions,
                nightAccess,
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Bank.LEFT),
                Optional.empty(),
                OptionalInt.empty(),
                Optional.empty());
    }

    private static Site site(Row row) {
        Conditions conditions = new Conditions(
                OptionalDouble.empty(),
                Optional.of(WetState.valueOf(row.text("wet_state").toUpperCase(Locale.ROOT))),
                row.optional("depth_velocity_m2s"),
                row.optional("max_depth_m"),
                OptionalDouble.empty(),
                row.optional("conductivity_us_cm"),
                OptionalDouble.empty(),
                row.optional("clarity_m"),
                row.optional("water_temp_c"));
        return site(row.text("id"), conditions, Optional.of(Boolean.valueOf(row.text("night_access"))));
    }
}
