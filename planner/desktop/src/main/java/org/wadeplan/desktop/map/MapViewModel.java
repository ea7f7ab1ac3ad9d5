package org.wadeplan.desktop.map;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.locationtech.jts.geom.Envelope;
import org.wadeplan.desktop.session.OpenedRound;
import org.wadeplan.desktop.session.PlanSession;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.planner.round.Round;

/** What the map shows and where it looks. */
public final class MapViewModel {

    private static final double STEP = 1.5;
    private static final double SITE_ROOM_M = 220;

    private final SessionModel model;
    private final ReadOnlyObjectWrapper<Optional<MapPicture>> picture = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<SiteRow>> rows = new ReadOnlyObjectWrapper<>(List.of());
    private final ObjectProperty<ViewBox> view = new SimpleObjectProperty<>(new ViewBox(0, 0, 1, 1, 1));
    private final ReadOnlyObjectWrapper<Optional<String>> selected = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<OpenedRound> shown = Optional.empty();
    private boolean looksAtAll = true;

    public MapViewModel(SessionModel model) {
        this.model = model;
        model.sessionProperty().addListener((property, before, now) -> follow(before, now));
        follow(Optional.empty(), model.session());
    }

    public ReadOnlyObjectProperty<Optional<MapPicture>> pictureProperty() {
        return picture.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<List<SiteRow>> rowsProperty() {
        return rows.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<ViewBox> viewProperty() {
        return view;
    }

    public ReadOnlyObjectProperty<Optional<String>> selectedProperty() {
        return selected.getReadOnlyProperty();
    }

    private void follow(Optional<PlanSession> before, Optional<PlanSession> now) {
        Optional<OpenedRound> opened = now.map(PlanSession::opened);
        if (!opened.equals(shown)) {
            boolean otherFolder = !before.map(PlanSession::folder).equals(now.map(PlanSession::folder));
            shown = opened;
            rows.set(now.flatMap(PlanSession::round)
                    .map(round -> SiteRows.of(round, opened.flatMap(OpenedRound::plan)))
                    .orElse(List.of()));
            picture.set(now.flatMap(PlanSession::round)
                    .map(round -> MapPicture.of(round, opened.flatMap(OpenedRound::plan), rows.get())));
            if (otherFolder) {
                fitAll();
            }
        }
        selected.set(now.flatMap(session -> session.selection().site()));
        selected.get().ifPresent(this::bringIntoView);
    }

    private void bringIntoView(String site) {
        picture.get().flatMap(shown -> shown.pin(site)).ifPresent(pin -> {
            MetricPoint at = pin.at();
            if (!view.get().ground().contains(at.eastM(), at.northM())) {
                look(view.get().centredOn(at.eastM(), at.northM()));
            }
        });
    }

    /** Looks at a piece of ground. */
    void show(Envelope ground) {
        look(ViewBox.fitting(ground, view.get().widthPx(), view.get().heightPx()));
    }

    private void look(ViewBox box) {
        looksAtAll = false;
        view.set(box);
    }

    /** The picture has a new size; one that showed everything still does. */
    public void resize(double widthPx, double heightPx) {
        ViewBox now = view.get();
        if (now.widthPx() != widthPx || now.heightPx() != heightPx) {
            view.set(now.sized(widthPx, heightPx));
            if (looksAtAll) {
                fitAll();
            }
        }
    }

    public void fitAll() {
        looksAtAll = true;
        picture.get()
                .filter(shown -> !shown.extent().isNull())
                .ifPresent(shown -> view.set(ViewBox.fitting(
                        shown.extent(), view.get().widthPx(), view.get().heightPx())));
    }

    /** The selected site's reach, or its surroundings where no reach was laid. */
    public void fitSelected() {
        selected.get()
                .flatMap(this::surroundings)
                .ifPresent(area -> look(
                        ViewBox.fitting(area, view.get().widthPx(), view.get().heightPx())));
    }

    private Optional<Envelope> surroundings(String site) {
        Optional<Envelope> reach = picture.get()
                .flatMap(shown -> shown.reaches().stream()
                        .filter(laid -> laid.site().equals(site))
                        .findFirst())
                .map(Reach::line)
                .map(line -> line.getEnvelopeInternal().copy());
        return reach.or(() -> picture.get().flatMap(shown -> shown.pin(site)).map(pin -> {
            Envelope around = new Envelope(
                    pin.at().eastM(),
                    pin.at().eastM(),
                    pin.at().northM(),
                    pin.at().northM());
            around.expandBy(SITE_ROOM_M);
            return around;
        }));
    }

    public void zoomIn() {
        zoomAt(view.get().widthPx() / 2, view.get().heightPx() / 2, STEP);
    }

    public void zoomOut() {
        zoomAt(view.get().widthPx() / 2, view.get().heightPx() / 2, 1 / STEP);
    }

    public void zoomAt(double x, double y, double factor) {
        look(view.get().zoomedAt(x, y, factor));
    }

    public void pan(double dxPx, double dyPx) {
        look(view.get().panned(dxPx, dyPx));
    }

    public void centreOn(double x, double y) {
        look(view.get().centredOn(view.get().east(x), view.get().north(y)));
    }

    /** Selects the site whose pin is nearest to a pixel, where one is near enough. */
    public void pick(double x, double y) {
        ViewBox box = view.get();
        picture.get().ifPresent(shown -> shown.pins().stream()
                .filter(pin -> distancePx(box, pin, x, y) < 16)
                .min((one, other) -> Double.compare(distancePx(box, one, x, y), distancePx(box, other, x, y)))
                .ifPresent(pin -> model.selectSite(pin.site())));
    }

    private static double distancePx(ViewBox box, MapPicture.Pin pin, double x, double y) {
        return Math.hypot(box.x(pin.at().eastM()) - x, box.y(pin.at().northM()) - y);
    }

    /** The place under a pixel, on the grid and on the globe. */
    public String coordinates(double x, double y) {
        MetricPoint at = new MetricPoint(view.get().east(x), view.get().north(y));
        String grid = String.format(Locale.ROOT, "E %.0f  N %.0f", at.eastM(), at.northM());
        return model.session()
                .flatMap(PlanSession::round)
                .flatMap(round -> lonLat(round, at))
                .map(place -> grid + "   " + degrees(place))
                .orElse(grid);
    }

    private static Optional<LonLat> lonLat(Round round, MetricPoint at) {
        try {
            return Optional.of(round.terrain().crs().toLonLat(at));
        } catch (IllegalArgumentException offTheGlobe) {
            return Optional.empty();
        }
    }

    private static String degrees(LonLat place) {
        return String.format(
                Locale.ROOT,
                "%.5f° %s  %.5f° %s",
                Math.abs(place.latDeg()),
                place.latDeg() < 0 ? "S" : "N",
                Math.abs(place.lonDeg()),
                place.lonDeg() < 0 ? "W" : "E");
    }

    public void select(String site) {
        model.selectSite(site);
    }

    /** For people who do not see the map. */
    public String spoken() {
        return picture.get()
                .map(shown -> shown.streams().size() + " stream lines, "
                        + shown.pins().size() + " sites, "
                        + shown.reaches().size() + " reaches"
                        + selected.get().map(site -> "; selected: " + site).orElse(""))
                .orElse("empty");
    }
}
