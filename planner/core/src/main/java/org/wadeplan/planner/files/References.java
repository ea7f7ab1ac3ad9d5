package org.wadeplan.planner.files;

import static org.wadeplan.geo.problem.Severity.ERROR;
import static org.wadeplan.geo.problem.Severity.WARNING;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wadeplan.geo.network.StreamLine;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.method.DecisionTable;
import org.wadeplan.planner.round.CatchmentArea;
import org.wadeplan.planner.round.Parcel;
import org.wadeplan.planner.round.RoundHeader;
import org.wadeplan.planner.round.Terrain;

/** Holds the tables against each other: ids that refer to each other, and what cannot be true of two rows at once. */
final class References {

    private final RoundTables tables;
    private final List<Problem> problems = new ArrayList<>();

    private References(RoundTables tables) {
        this.tables = tables;
    }

    /** Says nothing about what a missing part would have told. */
    static List<Problem> check(
            RoundTables tables,
            Optional<RoundHeader> header,
            Checked<DecisionTable> decisions,
            Optional<Terrain> terrain) {
        References references = new References(tables);
        references.people();
        references.gear();
        references.biosecurity();
        references.ownOrShipped();
        references.sites(header);
        references.onTheMap(terrain);
        List<Problem> problems = references.problems;
        problems.addAll(Duplicates.check(tables));
        problems.addAll(LogChecks.check(tables));
        problems.addAll(EvidenceChecks.check(tables, header));
        problems.addAll(RosterChecks.check(tables, header));
        problems.addAll(MethodNames.check(tables, decisions));
        header.ifPresent(head -> problems.addAll(MethodNames.overrides(tables, head)));
        terrain.ifPresent(ground -> problems.addAll(PlaceChecks.check(tables, header, ground)));
        terrain.ifPresent(ground -> problems.addAll(WaterRanges.check(tables, ground.network())));
        return problems;
    }

    private void people() {
        check(KnownIds.of("a person", tables.people(), "person"), tables.crewDays(), "people");
    }

    private void gear() {
        KnownIds kitSets = KnownIds.of("a kit set", tables.kitSets(), "kit_set");
        check(kitSets, tables.store(), "kit_set");
        check(kitSets, tables.agreedWeek(), "kit_sets");
        check(kitSets, tables.cleanings(), "kit_set");
        check(KnownIds.of("a gear class", tables.gearClasses(), "gear_class"), tables.store(), "gear_class");
        KnownIds items = KnownIds.of("an item", tables.store(), "item");
        check(items, tables.certificates(), "item");
        check(items.and(kitSets), tables.loadTicks(), "item");
        check(KnownIds.of("a crew", tables.crewDays(), "crew"), tables.loadTicks(), "crew");
        warn(KnownIds.of("a kind", tables.store(), "kind"), tables.kitNeeds(), "kind");
        warn(KnownIds.of("a certificate", tables.certificates(), "certificate"), tables.kitNeeds(), "certificate");
    }

    private void biosecurity() {
        KnownIds waters = KnownIds.of("a water", tables.waters(), "water");
        check(waters, tables.waterPests(), "water");
        check(waters, tables.kitSets(), "exposed_to");
        check(waters, tables.store(), "exposed_to");
        KnownIds pests = KnownIds.of("a pest", tables.pests(), "pest");
        check(pests, tables.waterPests(), "pest");
        KnownIds resources = KnownIds.of("a resource", tables.deconResources(), "resource");
        check(resources, tables.deconSteps(), "resource");
        check(resources, tables.baths(), "resource");
        KnownIds treatments = KnownIds.of("a treatment", tables.treatments(), "treatment");
        check(treatments, tables.cleanings(), "treatment");
        check(KnownIds.of("a bath", tables.baths(), "bath"), tables.cleanings(), "bath");
        KnownIds moments = KnownIds.of("a treatment", tables.treatments(), "treatment")
                .and(
                        ", or always, plant-fragments, chemical, heat or same-water",
                        new LinkedHashSet<>(DeconStepTable.WHEN));
        check(moments, tables.deconSteps(), "when");
        check(KnownIds.of("a place", tables.tides(), "place"), tables.waters(), "tide_place");
    }

    /** What ships with the program speaks of more pests and treatments than a round has. */
    private void ownOrShipped() {
        KnownIds pests = KnownIds.of("a pest", tables.pests(), "pest");
        if (tables.treatments().shipped()) {
            KnownIds shipped = new KnownIds(
                    "a pest of the evidence that comes with the program, because the folder has no treatments.csv",
                    Optional.of(ShippedTables.pestIds()));
            check(shipped, tables.pests(), "pest");
        } else {
            check(pests, tables.treatments(), "pest");
        }
        if (!tables.deconRules().shipped()) {
            check(KnownIds.of("a water", tables.waters(), "water"), tables.deconRules(), "waters");
            check(pests, tables.deconRules(), "pests");
            check(KnownIds.of("a treatment", tables.treatments(), "treatment"), tables.deconRules(), "treatment");
        }
    }

    private void sites(Optional<RoundHeader> header) {
        KnownIds sites = KnownIds.of("a site", tables.sites(), "site");
        check(sites, tables.sites(), "reserve_for");
        check(sites, tables.pastVisits(), "site");
        check(sites, tables.consents(), "site");
        check(sites, tables.siteHazards(), "site");
        check(sites, tables.depths(), "site");
        check(sites, tables.agreedWeek(), "site");
        check(KnownIds.of("a place of care", tables.care(), "care"), tables.sites(), "care");
        header.ifPresent(known -> {
            KnownIds places = sites.and(
                    ", or the depot " + known.depot().id(), Set.of(known.depot().id()));
            check(places, tables.travel(), "from");
            check(places, tables.travel(), "to");
            check(subReaches(known.reach().protocol().mostSubReaches()), tables.siteHazards(), "sub_reach");
        });
    }

    private static KnownIds subReaches(int count) {
        return KnownIds.named(
                "a sub-reach letter from A to " + (char) ('A' + count - 1),
                Stream.iterate('A', letter -> (char) (letter + 1))
                        .limit(count)
                        .map(String::valueOf)
                        .toArray(String[]::new));
    }

    private void onTheMap(Optional<Terrain> terrain) {
        KnownIds streams = new KnownIds(
                "a code of the stream lines",
                terrain.map(ground -> ground.network().lines())
                        .filter(lines -> !lines.isEmpty())
                        .map(lines -> codes(lines.stream().map(StreamLine::code))));
        check(streams, tables.sites(), "stream");
        check(streams, tables.waters(), "stream");
        check(streams, tables.barriers(), "stream");
        check(
                new KnownIds(
                        "a code of the catchments",
                        terrain.map(Terrain::catchments)
                                .filter(areas -> !areas.isEmpty())
                                .map(areas -> codes(areas.stream().map(CatchmentArea::code)))),
                tables.permits(),
                "catchment");
        check(
                new KnownIds(
                        "a parcel of the parcels layer",
                        terrain.map(Terrain::parcels)
                                .filter(areas -> !areas.isEmpty())
                                .map(areas -> codes(areas.stream().map(Parcel::id)))),
                tables.sites(),
                "parcel");
    }

    private static Set<String> codes(Stream<String> codes) {
        return codes.collect(Collectors.toCollection(TreeSet::new));
    }

    private void check(KnownIds known, Table<?> table, String column) {
        problems.addAll(known.check(ERROR, table, column));
    }

    private void warn(KnownIds known, Table<?> table, String column) {
        problems.addAll(known.check(WARNING, table, column));
    }
}
