package org.wadeplan.desktop.week;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.value.ObservableDoubleValue;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;

/** Lays the days out below each other: hours across, night and tide behind, lanes with bars. */
final class WeekSheet extends Pane {

    private static final int WHISKER_MIN = 60;

    private final WeekPicture picture;
    private final double em;
    private final double gutterPx;
    private final double pxPerMin;
    private final Pane gutter = new Pane();
    private final Pane hours = new Pane();
    private final List<BarNode> bars = new ArrayList<>();

    /**
     * Draws a picture.
     *
     * @param em size of the text, pixels
     * @param widthPx width of the whole sheet
     */
    WeekSheet(WeekPicture picture, double em, double widthPx) {
        this.picture = picture;
        this.em = em;
        this.gutterPx = em * 6.6;
        this.pxPerMin = Math.max(0.1, (widthPx - gutterPx - 2 * em) / (picture.toMin() - picture.fromMin()));
        getStyleClass().add("week-sheet");
        gutter.getStyleClass().add("week-gutter");
        hours.getStyleClass().add("week-hours");
        double y = em * 1.9;
        for (DayBand day : picture.days()) {
            y = band(day, y);
        }
        hours();
        grid(y);
        gutter.resize(gutterPx, y);
        gutter.setPrefSize(gutterPx, y);
        getChildren().addAll(gutter, hours);
        setPrefSize(widthPx, y + em / 2);
        setMinSize(widthPx, y + em / 2);
    }

    List<BarNode> bars() {
        return List.copyOf(bars);
    }

    /** Keeps the lanes' names at the left and the hours at the top while the rest scrolls. */
    void hold(ObservableDoubleValue scrolledX, ObservableDoubleValue scrolledY) {
        gutter.translateXProperty().bind(scrolledX);
        hours.translateYProperty().bind(scrolledY);
    }

    private double x(int minutes) {
        int inside = Math.min(picture.toMin(), Math.max(picture.fromMin(), minutes));
        return gutterPx + (inside - picture.fromMin()) * pxPerMin;
    }

    private double band(DayBand day, double top) {
        double lanesTop = top + em * 1.7;
        double y = lanesTop;
        List<double[]> rows = new ArrayList<>();
        for (Lane lane : day.lanes()) {
            double height = em * (lane.kit() ? 1.35 : 2.2);
            rows.add(new double[] {y, height});
            y += height + (lane.kit() ? 1 : 3);
        }
        for (DayBand.Shade shade : day.shades()) {
            shade(shade, lanesTop, y - lanesTop);
        }
        head(day, top);
        for (int i = 0; i < rows.size(); i++) {
            lane(day.lanes().get(i), rows.get(i)[0], rows.get(i)[1]);
        }
        return y + em * 0.4;
    }

    private void head(DayBand day, double top) {
        Label date = new Label(day.label());
        date.getStyleClass().add("day-head");
        date.setManaged(false);
        date.resizeRelocate(0, top, gutterPx, em * 1.6);
        gutter.getChildren().add(date);
        Label sky = new Label(day.sky());
        sky.getStyleClass().addAll("day-head", "day-sky");
        sky.setManaged(false);
        sky.resizeRelocate(gutterPx, top, (picture.toMin() - picture.fromMin()) * pxPerMin, em * 1.6);
        getChildren().add(sky);
    }

    private void shade(DayBand.Shade shade, double top, double height) {
        double from = x(shade.fromMin());
        double width = x(shade.toMin()) - from;
        if (width <= 0) {
            return;
        }
        Region region = new Region();
        region.getStyleClass()
                .add("shade-" + shade.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        region.setManaged(false);
        region.resizeRelocate(from, top, width, height);
        region.setAccessibleText(shade.words());
        Tooltip.install(region, new Tooltip(shade.words()));
        getChildren().add(region);
    }

    private void lane(Lane lane, double top, double height) {
        Label name = new Label(lane.label());
        name.getStyleClass().add(lane.kit() ? "lane-kit" : "lane-crew");
        name.setManaged(false);
        name.resizeRelocate(4, top, gutterPx - 6, height);
        gutter.getChildren().add(name);
        double whiskerRoom = lane.kit() ? 0 : em * 0.35;
        for (WeekBar bar : lane.bars()) {
            double from = x(bar.fromMin());
            BarNode node = new BarNode(bar, x(bar.toMin()) - from, height - whiskerRoom, pxPerMin, em);
            node.setManaged(false);
            node.resizeRelocate(from, top + whiskerRoom, node.getPrefWidth(), height - whiskerRoom);
            bars.add(node);
            getChildren().add(node);
            bar.slackMin().ifPresent(slack -> whisker(bar.toMin(), slack, top + whiskerRoom / 2, whiskerRoom));
        }
    }

    /**
     * How much later the visit could start: a thin line over the lane with a stop at its end. More than an hour ends in
     * an arrow, because long whiskers would lie over each other; the table has the figure.
     */
    private void whisker(int fromMin, int slackMin, double y, double height) {
        if (slackMin <= 0) {
            return;
        }
        boolean more = slackMin > WHISKER_MIN;
        double from = x(fromMin);
        double to = x(fromMin + Math.min(slackMin, WHISKER_MIN));
        Line line = new Line(from, y, to, y);
        Line upper = new Line(to, y, more ? to - height / 2 : to, y - height / 2);
        Line lower = new Line(to, y, more ? to - height / 2 : to, y + height / 2);
        for (Line part : List.of(line, upper, lower)) {
            part.getStyleClass().add("slack");
            part.setMouseTransparent(true);
            getChildren().add(part);
        }
    }

    private void hours() {
        int step = pxPerMin * 60 < em * 3.2 ? pxPerMin * 60 < em * 1.6 ? 240 : 120 : pxPerMin * 15 > em * 3.2 ? 15 : 60;
        for (int minute = (picture.fromMin() + step - 1) / step * step; minute <= picture.toMin(); minute += step) {
            Label hour = new Label(String.format(Locale.ROOT, "%02d:%02d", minute / 60 % 24, minute % 60));
            hour.getStyleClass().add("hour");
            hour.setManaged(false);
            hour.resizeRelocate(x(minute) - em * 1.6, 0, em * 3.2, em * 1.7);
            hours.getChildren().add(hour);
        }
        hours.resize(getPrefWidth(), em * 1.7);
        hours.setPrefSize(x(picture.toMin()) + 2 * em, em * 1.7);
    }

    private void grid(double bottom) {
        for (int minute = picture.fromMin(); minute <= picture.toMin(); minute += 60) {
            Line line = new Line(x(minute), em * 1.7, x(minute), bottom);
            line.getStyleClass().add(minute % 1440 == 0 ? "grid-midnight" : "grid");
            line.setMouseTransparent(true);
            getChildren().add(0, line);
        }
    }

    void mark(Optional<String> selected, Optional<String> site) {
        for (BarNode node : bars) {
            boolean chosen = selected.filter(node.bar()::sameThing).isPresent();
            boolean same = site.isPresent() && node.bar().site().equals(site);
            node.mark(chosen, same);
        }
    }
}
