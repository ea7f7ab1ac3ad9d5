package org.wadeplan.desktop.map;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.wadeplan.desktop.look.Mark;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.network.StreamLine;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.CatchmentArea;
import org.wadeplan.planner.round.Parcel;
import org.wadeplan.planner.round.Place;
import org.wadeplan.planner.round.Round;

/**
 * Everything that the map shows, in the round's metric coordinate system.
 *
 * @param reaches empty where nothing was planned
 * @param crs the coordinate system in words
 */
public record MapPicture(
        List<StreamShape> streams,
        List<Area> catchments,
        List<Area> parcels,
        List<Pin> pins,
        List<Reach> reaches,
        Place depot,
        String crs,
        Envelope extent) {

    /**
     * An area.
     *
     * @param refused consent to be on that land was refused
     */
    public record Area(String label, Geometry shape, boolean refused) {}

    /** A site on the map. */
    public record Pin(String site, MetricPoint at, Mark mark, String words) {}

    static MapPicture of(Round round, Optional<RoundPlan> plan, List<SiteRow> rows) {
        List<StreamShape> streams = round.terrain().network().lines().stream()
                .map(MapPicture::stream)
                .toList();
        List<Pin> pins = rows.stream().map(row -> pin(round, row)).toList();
        return new MapPicture(
                streams,
                round.terrain().catchments().stream().map(MapPicture::catchment).toList(),
                round.terrain().parcels().stream().map(MapPicture::parcel).toList(),
                pins,
                plan.map(RoundPlan::reaches).orElse(List.of()),
                round.header().depot(),
                round.terrain().crs().words(),
                extent(streams, pins, round));
    }

    Optional<Pin> pin(String site) {
        return pins.stream().filter(pin -> pin.site().equals(site)).findFirst();
    }

    private static StreamShape stream(StreamLine line) {
        return StreamShape.of(line.code(), line.name().orElse(line.code()), line.line());
    }

    private static Area catchment(CatchmentArea catchment) {
        return new Area(catchment.name(), catchment.area(), false);
    }

    private static Area parcel(Parcel parcel) {
        return new Area(
                parcel.id(),
                parcel.area(),
                parcel.consentStatus().filter("refused"::equals).isPresent());
    }

    private static Pin pin(Round round, SiteRow row) {
        MetricPoint at = round.site(row.site()).orElseThrow().start();
        return new Pin(row.site(), at, row.mark(), row.state());
    }

    private static Envelope extent(List<StreamShape> streams, List<Pin> pins, Round round) {
        Envelope all = new Envelope();
        streams.forEach(stream -> all.expandToInclude(stream.box()));
        pins.forEach(pin -> all.expandToInclude(pin.at().eastM(), pin.at().northM()));
        MetricPoint depot = round.header().depot().at();
        all.expandToInclude(depot.eastM(), depot.northM());
        return all;
    }
}
