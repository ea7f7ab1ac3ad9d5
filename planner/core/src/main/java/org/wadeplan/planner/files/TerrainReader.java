package org.wadeplan.planner.files;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.LineString;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.network.StreamLine;
import org.wadeplan.geo.network.StreamNetwork;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.planner.round.Barrier;
import org.wadeplan.planner.round.CatchmentArea;
import org.wadeplan.planner.round.Parcel;
import org.wadeplan.planner.round.Terrain;

/** Reads the map layers of the round. */
record TerrainReader(RoundFolder folder, CoordinateSystem crs) {

    /** No value where there are no stream lines to work with. */
    Checked<Terrain> read(List<Barrier> barriers) {
        Checked<List<CatchmentArea>> catchments = catchments();
        Checked<List<Parcel>> parcels = parcels();
        return network()
                .map(network -> new Terrain(
                        crs,
                        network,
                        catchments.value().orElse(List.of()),
                        parcels.value().orElse(List.of()),
                        barriers))
                .with(catchments.problems())
                .with(parcels.problems());
    }

    private Checked<StreamNetwork> network() {
        Checked<List<Optional<StreamLine>>> lines = new MapLayer(folder, RoundFolder.STREAMS, crs)
                .read(
                        (feature, shape) -> {
                            String code = feature.text("code").orElseThrow();
                            LineString line = (LineString) shape.getGeometryN(0);
                            String catchment = feature.text("catchment").orElse(code);
                            LineString down = feature.text("flow").orElse("").equals("mouth-to-source")
                                    ? line.reverse()
                                    : line;
                            return Optional.of(new StreamLine(code, feature.text("name"), catchment, down));
                        },
                        "code");
        return lines.map(all ->
                new StreamNetwork(all.stream().flatMap(Optional::stream).toList()));
    }

    private Checked<List<CatchmentArea>> catchments() {
        return new MapLayer(folder, RoundFolder.CATCHMENTS, crs)
                .read(
                        (feature, shape) -> new CatchmentArea(
                                feature.text("code").orElseThrow(),
                                feature.text("name").orElse(feature.text("code").orElseThrow()),
                                shape),
                        "code");
    }

    private Checked<List<Parcel>> parcels() {
        return new MapLayer(folder, RoundFolder.PARCELS, crs)
                .read(
                        (feature, shape) -> new Parcel(
                                feature.text("parcel").orElseThrow(), feature.text("consent_status"), shape),
                        "parcel");
    }

}
