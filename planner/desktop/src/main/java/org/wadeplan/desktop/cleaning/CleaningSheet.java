package org.wadeplan.desktop.cleaning;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
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
import javafx.scene.shape.Polygon;
import org.wadeplan.desktop.look.Mark;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;

/** The week across, a lane for each kit set, below them the baths and bays; night behind, the arrow of time in front. */
final class CleaningSheet extends Pane {

    private final CleaningPicture picture;
    private final double em;
    private final double gutterPx;
    private final double pxPerMin;
    private final double headPx;
    private final int everyH;
    private final Pane gutter = new Pane();
    private final Pane head = new Pane();
    private final Pane arrow = new Pane();
    private final Label arrowWords = new Label();
    private final List<SpanNode> spans = new ArrayList<>();
    private final double bottom;

    /**
     * Draws a picture.
     *
     * @param em size of the text, pixels
     * @param widthPx width of the whole sheet
     */
    CleaningSheet(CleaningPicture picture, double em, double widthPx) {
        this.picture = picture;
        this.em = em;
        this.gutterPx = em * 8.2;
        this.pxPerMin = Math.max(0.02, (widthPx - gutterPx - em) / picture.wholeMin());
        this.everyH = pxPerMin * 60 > em * 3.4 ? 1 : pxPerMin * 60 * 3 > em * 3.4 ? 3 : 6;
        this.headPx = hoursFit() ? em * 4.9 : em * 3.4;
        getStyleClass().add("week-sheet");
        gutter.getStyleClass().add("week-gutter");
        head.getStyleClass().add("week-hours");
        double y = headPx + em * 0.3;
        for (SetLane lane : picture.lanes()) {
            y = lane(lane, y);
        }
        y += em * 0.5;
        for (BenchLane bench : picture.benches()) {
            y = bench(bench, y);
        }
        this.bottom = y + em * 0.4;
        behind();
        days();
        gutter.resize(gutterPx, bottom);
        getChildren().addAll(gutter, head);
        arrow();
        setPrefSize(widthPx, bottom);
        setMinSize(widthPx, bottom);
    }

    List<SpanNode> spans() {
        return List.copyOf(spans);
    }

    /** Keeps the lanes' names at the left and the hours at the top while the rest scrolls. */
    void hold(ObservableDoubleValue scrolledX, ObservableDoubleValue scrolledY) {
        gutter.translateXProperty().bind(scrolledX);
        head.translateYProperty().bind(scrolledY);
    }

    private double x(Instant at) {
        return gutterPx + picture.minutes(at) * pxPerMin;
    }

    /** The time at a place of the sheet. */
    Instant at(double x) {
        double minutes = Math.min(picture.wholeMin(), Math.max(0, (x - gutterPx) / pxPerMin));
        return picture.from().plusSeconds(Math.round(minutes) * 60);
    }

    double xOfMoment(Instant moment) {
        return x(moment);
    }

    private double lane(SetLane lane, double top) {
        double height = em * 2.1;
        Label name = new Label(lane.kitSet() + "  " + lane.purpose());
        name.getStyleClass().add("lane-crew");
        name.setManaged(false);
        name.resizeRelocate(6, top, gutterPx - 8, height);
        lane.flagged().ifPresent(flag -> {
            name.setText(Words.of(flag.exposed() ? "cleaning.flag" : "cleaning.flagLater", lane.kitSet()));
            name.setGraphic((flag.exposed() ? Mark.ERROR : Mark.WARNING).shape());
            name.setTooltip(new Tooltip(flag.why()));
            name.getTooltip().setWrapText(true);
            name.getTooltip().setMaxWidth(520);
            name.getStyleClass().add(flag.exposed() ? "lane-flagged" : "lane-flagged-later");
        });
        gutter.getChildren().add(name);
        for (SetSpan span : lane.spans()) {
            double from = x(span.from());
            SpanNode node = new SpanNode(span, x(span.to()) - from, height, em);
            node.setManaged(false);
            node.resizeRelocate(from, top, node.getPrefWidth(), height);
            spans.add(node);
            getChildren().add(node);
        }
        return top + height + em * 0.25;
    }

    private double bench(BenchLane bench, double top) {
        double height = em * 1.5;
        Label name = new Label(bench.label());
        name.getStyleClass().add("lane-kit");
        name.setManaged(false);
        name.resizeRelocate(0, top, gutterPx - 4, height);
        name.setTooltip(new Tooltip(bench.label()));
        gutter.getChildren().add(name);
        List<String> together = new ArrayList<>();
        for (int i = 0; i < bench.turns().size(); i++) {
            turn(bench.turns().get(i), top, height);
            boolean last = i + 1 == bench.turns().size();
            double room = last
                    ? em * 8
                    : x(bench.turns().get(i + 1).from())
                            - x(bench.turns().get(i).to());
            together.add(bench.turns().get(i).kitSet());
            if (room > em * 2.2) {
                beside(String.join(", ", together), x(bench.turns().get(i).to()), top, height, room);
                together.clear();
            }
        }
        return top + height + em * 0.2;
    }

    private void turn(BenchLane.Turn turn, double top, double height) {
        Pane node = new Pane();
        node.getStyleClass().addAll("bar", "bar-treating");
        node.setManaged(false);
        node.resizeRelocate(x(turn.from()), top, Math.max(3, x(turn.to()) - x(turn.from())), height);
        node.setAccessibleText(turn.spoken());
        Tooltip.install(node, new Tooltip(turn.spoken()));
        getChildren().add(node);
    }

    /** Turns are too short to hold words: they stand behind the last of those that lie close together. */
    private void beside(String words, double from, double top, double height, double room) {
        Label beside = new Label(words);
        beside.getStyleClass().add("bench-words");
        beside.setManaged(false);
        beside.setMouseTransparent(true);
        beside.resizeRelocate(from + 3, top, Math.min(room, em * 8), height);
        getChildren().add(beside);
    }

    private void behind() {
        for (CleaningPicture.Night night : picture.nights()) {
            Region dark = new Region();
            dark.getStyleClass().add("shade-night");
            dark.setManaged(false);
            dark.resizeRelocate(x(night.from()), headPx, x(night.to()) - x(night.from()), bottom - headPx);
            dark.setMouseTransparent(true);
            getChildren().add(0, dark);
        }
    }

    private void days() {
        for (LocalDate date : picture.dates()) {
            double from = x(date.atStartOfDay(picture.zone()).toInstant());
            double to = x(date.plusDays(1).atStartOfDay(picture.zone()).toInstant());
            Label day = new Label(Times.day(date));
            day.getStyleClass().add("day-head");
            day.setManaged(false);
            day.resizeRelocate(from, 0, to - from, em * 1.7);
            head.getChildren().add(day);
            line(from, "grid-midnight");
            for (int hour = everyH; hour < 24; hour += everyH) {
                double at = x(date.atTime(LocalTime.of(hour, 0))
                        .atZone(picture.zone())
                        .toInstant());
                line(at, "grid");
                if (hoursFit()) {
                    head.getChildren().add(hourWords(hour, at));
                }
            }
        }
        head.resize(getWidth(), headPx);
        head.setPrefSize(x(picture.to()), headPx);
    }

    private boolean hoursFit() {
        return pxPerMin * 60 * everyH > em * 2.6;
    }

    private Label hourWords(int hour, double at) {
        Label words = new Label(String.format(Locale.ROOT, "%02d", hour));
        words.getStyleClass().add("hour");
        words.setManaged(false);
        words.resizeRelocate(at - em * 1.4, em * 1.7, em * 2.8, em * 1.6);
        return words;
    }

    private void line(double at, String style) {
        Line line = new Line(at, headPx, at, bottom);
        line.getStyleClass().add(style);
        line.setMouseTransparent(true);
        getChildren().add(picture.nights().size(), line);
    }

    private void arrow() {
        Line shaft = new Line(0, headPx - em * 0.2, 0, bottom);
        shaft.getStyleClass().add("moment");
        Polygon point = new Polygon(-em * 0.55, headPx - em * 0.9, em * 0.55, headPx - em * 0.9, 0, headPx);
        point.getStyleClass().add("moment-point");
        arrowWords.getStyleClass().add("moment-words");
        arrowWords.setManaged(false);
        arrow.getChildren().addAll(shaft, point, arrowWords);
        arrow.setManaged(false);
        arrow.setMouseTransparent(true);
        arrow.resize(1, bottom);
        getChildren().add(arrow);
        arrow.setId("cleaning-arrow");
    }

    void moment(Instant at, String words) {
        double x = x(at);
        arrowWords.setText(words);
        double width = em * 6.4;
        boolean atEdge = x + width + em > getPrefWidth();
        arrowWords.resizeRelocate(atEdge ? -width - em * 0.7 : em * 0.7, headPx - em * 1.55, width, em * 1.5);
        arrow.setLayoutX(x);
        arrow.toFront();
    }

    void mark(Optional<String> selected, Optional<String> site) {
        for (SpanNode node : spans) {
            boolean chosen = selected.filter(node.span().id()::equals).isPresent();
            boolean same = site.isPresent() && node.span().site().equals(site);
            node.mark(chosen, same);
        }
        gutter.toFront();
        head.toFront();
        arrow.toFront();
    }
}
