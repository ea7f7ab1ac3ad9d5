package org.wadeplan.desktop.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.wadeplan.desktop.look.Palette;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.geo.crs.MetricPoint;

/** Gathers the map's labels and writes those that find room, the most wanted first. */
final class MapLabels {

    private final GraphicsContext pen;
    private final ViewBox view;
    private final Font bold;
    private final Font plain;
    private final LabelPlacer placer;
    private final List<Wanted> wanted = new ArrayList<>();

    MapLabels(GraphicsContext pen, ViewBox view, double textPx) {
        this.pen = pen;
        this.view = view;
        String family = Font.getDefault().getFamily();
        this.bold = Font.font(family, FontWeight.BOLD, textPx);
        this.plain = Font.font(family, textPx * 0.9);
        this.placer = new LabelPlacer(view.widthPx(), view.heightPx());
    }

    private record Wanted(int rank, String text, double x, double y, double gapPx, Font font, Color color) {}

    void keepFree(LabelPlacer.Box box) {
        placer.keepFree(box);
    }

    void letter(char letter, MetricPoint at) {
        double x = view.x(at.eastM());
        double y = view.y(at.northM());
        wanted.add(new Wanted(1, String.valueOf(letter), x, y, 6, bold, Palette.INK));
    }

    void stake(String name, double x, double y) {
        wanted.add(new Wanted(3, name, x, y, 10, plain, Palette.INK));
    }

    void candidate(String name, double x, double y, boolean chosen) {
        wanted.add(new Wanted(chosen ? 0 : 1, name, x, y, 10, bold, chosen ? Palette.SELECTED : Palette.GOOD));
    }

    void depot(String name, double x, double y) {
        placer.keepFree(new LabelPlacer.Box(x - 8, y - 8, 16, 16));
        wanted.add(new Wanted(2, name, x, y, 10, bold, Palette.INK));
    }

    void paint(MapPicture picture, Optional<String> selected) {
        for (MapPicture.Pin pin : picture.pins()) {
            double x = view.x(pin.at().eastM());
            double y = view.y(pin.at().northM());
            boolean chosen = selected.filter(pin.site()::equals).isPresent();
            placer.keepFree(new LabelPlacer.Box(x - 10, y - 10, 20, 20));
            wanted.add(new Wanted(chosen ? 0 : 1, pin.site(), x, y, 14, bold, chosen ? Palette.SELECTED : Palette.INK));
        }
        picture.streams().stream()
                .filter(stream -> stream.box().maxExtent() / view.metresPerPx() > 120)
                .forEach(this::streamName);
        picture.catchments().forEach(this::catchmentName);
        wanted.stream()
                .filter(label -> label.x > -20
                        && label.y > -20
                        && label.x < view.widthPx() + 20
                        && label.y < view.heightPx() + 20)
                .sorted(Comparator.comparingInt(Wanted::rank))
                .forEach(this::write);
    }

    /** Inside its upper edge, where streams seldom are. */
    private void catchmentName(MapPicture.Area area) {
        Envelope box = area.shape().getEnvelopeInternal();
        if (box.getWidth() / view.metresPerPx() > 90) {
            Coordinate inside = area.shape().getInteriorPoint().getCoordinate();
            double x = view.x(inside.x);
            double y = view.y(inside.y + (box.getMaxY() - inside.y) * 0.62);
            wanted.add(
                    new Wanted(5, Words.of("map.catchment", area.label()), x, y, 2, plain, Palette.CATCHMENT.darker()));
        }
    }

    /** Beside the vertex nearest to the middle of what is seen of it. */
    private void streamName(StreamShape stream) {
        int best = -1;
        double bestPx = Double.MAX_VALUE;
        for (int i = 0; i < stream.size(); i++) {
            double x = view.x(stream.eastM(i));
            double y = view.y(stream.northM(i));
            double off = Math.hypot(x - view.widthPx() / 2, y - view.heightPx() / 2);
            if (off < bestPx && x > 0 && y > 0 && x < view.widthPx() && y < view.heightPx()) {
                best = i;
                bestPx = off;
            }
        }
        if (best >= 0) {
            wanted.add(new Wanted(
                    4,
                    stream.label(),
                    view.x(stream.eastM(best)),
                    view.y(stream.northM(best)),
                    8,
                    Font.font(bold.getFamily(), FontWeight.BOLD, javafx.scene.text.FontPosture.ITALIC, bold.getSize()),
                    Palette.STREAM));
        }
    }

    private void write(Wanted label) {
        Text measured = new Text(label.text);
        measured.setFont(label.font);
        double width = measured.getLayoutBounds().getWidth() + 6;
        double height = measured.getLayoutBounds().getHeight();
        placer.place(label.x, label.y, width, height, label.gapPx).ifPresent(box -> {
            leader(label, box);
            pen.setFill(Color.web("#fbfaf6", 0.86));
            pen.fillRoundRect(box.x(), box.y(), box.width(), box.height(), 4, 4);
            pen.setFont(label.font);
            pen.setTextAlign(TextAlignment.CENTER);
            pen.setTextBaseline(VPos.CENTER);
            pen.setFill(label.color);
            pen.fillText(label.text, box.x() + box.width() / 2, box.y() + box.height() / 2);
        });
    }

    /** A thin line to a label that stands off its point by a corner. */
    private void leader(Wanted label, LabelPlacer.Box box) {
        double x = Math.min(box.x() + box.width(), Math.max(box.x(), label.x));
        double y = Math.min(box.y() + box.height(), Math.max(box.y(), label.y));
        double off = Math.hypot(x - label.x, y - label.y);
        if (off > label.gapPx * 1.2) {
            double start = Math.max(0, label.gapPx - 3) / off;
            pen.setStroke(label.color);
            pen.setLineWidth(1);
            pen.strokeLine(label.x + (x - label.x) * start, label.y + (y - label.y) * start, x, y);
        }
    }
}
