package org.wadeplan.planner.files;

import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.access.Roads;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.io.FeatureLayer;
import org.wadeplan.geo.network.AcceptedRepairs;
import org.wadeplan.geo.network.StreamHints;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.network.StreamReader;
import org.wadeplan.geo.network.StreamRules;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.terrain.ElevationGrid;
import org.wadeplan.planner.round.Barrier;
import org.wadeplan.planner.round.CatchmentArea;
import org.wadeplan.planner.round.Parcel;
import org.wadeplan.planner.round.Terrain;

/** Reads the map layers of the round. */
record TerrainReader(RoundFolder folder, CoordinateSystem crs, AcceptedRepairs repairs, StreamRules rules) {

    /** No value where there are no stream lines to work with. */
    Checked<Terrain> read(List<Barrier> barriers, StreamHints hints) {
        Checked<List<CatchmentArea>> catchments = catchments();
        Checked<List<Parcel>> parcels = parcels();
        Checked<Optional<Roads>> roads = new RoadReader(folder, crs).read();
        Checked<FeatureLayer> streams = new MapLayer(folder, RoundFolder.STREAMS, crs).readableLayer();
        Checked<Optional<ElevationGrid>> ground = ground(streams, hints);
        StreamRules withGround = ground.value()
                .flatMap(found -> found)
                .map(grid -> rules.with(grid, grid.verticalStepM()))
                .orElse(rules);
        return streams.then(layer -> network(layer, hints, withGround)
                        .map(network -> new Terrain(
                                crs,
                                network,
                                catchments.value().orElse(List.of()),
                                parcels.value().orElse(List.of()),
                                barriers,
                                roads.value().flatMap(found -> found),
                                ground.value().flatMap(found -> found),
                                LineKindReader.read(layer, network))))
                .with(ground.problems())
                .with(catchments.problems())
                .with(parcels.problems())
                .with(roads.problems());
    }

    /** Which part of the grid is wanted shows from the lines, and the grid tells which way they run: so lines come twice. */
    private Checked<Optional<ElevationGrid>> ground(Checked<FeatureLayer> streams, StreamHints hints) {
        if (!folder.wants(RoundFolder.ELEVATION)) {
            return Checked.of(Optional.empty());
        }
        return streams.value()
                .flatMap(layer -> network(layer, hints, rules).value())
                .map(network -> new GroundReader(folder, crs).read(network))
                .orElse(Checked.of(Optional.empty()));
    }

    private Checked<StreamNetwork> network(FeatureLayer layer, StreamHints hints, StreamRules by) {
        SourcePlace file = SourcePlace.file(folder.nameOf(RoundFolder.STREAMS));
        return new StreamReader(crs, file, hints, repairs, by).read(layer);
    }

    private Checked<List<CatchmentArea>> catchments() {
        if (!folder.wants(RoundFolder.CATCHMENTS)) {
            return Checked.of(
                    List.of(),
                    List.of(Problem.warning(
                            "no-catchments",
                            SourcePlace.file(folder.nameOf(RoundFolder.CATCHMENTS)),
                            "the round has no outlines of catchments: whether sites and streams lie where they say was not checked",
                            "a layer of catchments, as permits and cleaning go by them",
                            "add it, or name it under files in round.json")));
        }
        return new MapLayer(folder, RoundFolder.CATCHMENTS, crs)
                .read(
                        (feature, shape) -> new CatchmentArea(
                                feature.text("code").orElseThrow(),
                                feature.text("name").orElse(feature.text("code").orElseThrow()),
                                shape),
                        "code");
    }

    private Checked<List<Parcel>> parcels() {
        if (!folder.wants(RoundFolder.PARCELS)) {
            return Checked.of(
                    List.of(),
                    List.of(Problem.warning(
                            "no-parcels",
                            SourcePlace.file(folder.nameOf(RoundFolder.PARCELS)),
                            "the round has no parcels of land: consent was checked for no stretch of stream and no walk",
                            "a layer of parcels with their consent_status",
                            "add it, or name it under files in round.json")));
        }
        return new MapLayer(folder, RoundFolder.PARCELS, crs)
                .read(
                        (feature, shape) ->
                                new Parcel(feature.text("parcel").orElseThrow(), feature.text("consent_status"), shape),
                        "parcel");
    }
}
