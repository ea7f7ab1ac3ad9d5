package org.wadeplan.desktop.map;

import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.wadeplan.desktop.look.Mark;
import org.wadeplan.desktop.look.Palette;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.geo.reach.Reach;
import org.wadeplan.geo.reach.Stake;
import org.wadeplan.geo.reach.SubReach;

/** What lies over the streams: flow arrows, reaches with stakes and letters, sites, the depot. */
final class MarkPainter {

    /** Stakes can be told apart from here on, metres a pixel. */
    private static final double STAKES_BELOW = 2.5;
    /** Letters have room from here on, metres a pixel. */
    private static final double LETTERS_BELOW = 0.75;

    private static final double HALF_STAKE_PX = 7;

    private final GraphicsContext pen;
    private final ViewBox view;
    private final MapLabels labels;
    private final Envelope ground;

    MarkPainter(GraphicsContext pen, ViewBox view, MapLabels labels) {
        this.pen = pen;
        this.view = view;
        this.labels = labels;
        this.ground = view.ground();
    }

    void paint(MapPicture picture, Optional<String> selected) {
        picture.streams().forEach(this::arrows);
        picture.reaches().forEach(reach -> reach(reach, isSelected(reach.site(), selected)));
        depot(picture);
        picture.pins().forEach(pin -> pin(pin, isSelected(pin.site(), selected)));
        labels.paint(picture, selected);
    }

    private static boolean isSelected(String site, Optional<String> selected) {
        return selected.filter(site::equals).isPresent();
    }

    private void arrows(StreamShape stream) {
        if (!ground.intersects(stream.box())) {
            return;
        }
        pen.setFill(Palette.STREAM);
        for (FlowArrows.Arrow arrow : FlowArrows.along(stream, view)) {
            double cos = Math.cos(arrow.angleRad());
            double sin = Math.sin(arrow.angleRad());
            double[] ahead = {7, -5, -2, -5};
            double[] aside = {0, 5, 0, -5};
            double[] x = new double[4];
            double[] y = new double[4];
            for (int i = 0; i < 4; i++) {
                x[i] = arrow.x() + ahead[i] * cos - aside[i] * sin;
                y[i] = arrow.y() + ahead[i] * sin + aside[i] * cos;
            }
            pen.fillPolygon(x, y, 4);
        }
    }

    private void reach(Reach reach, boolean selected) {
        if (!view.ground().intersects(reach.line().getEnvelopeInternal())) {
            return;
        }
        polyline(reach.line().getCoordinateSequence(), Color.WHITE, 9);
        polyline(reach.line().getCoordinateSequence(), selected ? Palette.SELECTED : Palette.REACH, 5);
        if (view.metresPerPx() < STAKES_BELOW) {
            stakes(reach);
        }
        if (view.metresPerPx() < LETTERS_BELOW) {
            for (SubReach piece : reach.subReaches()) {
                labels.letter(
                        piece.letter(),
                        between(piece.downstream().at(), piece.upstream().at()));
            }
        }
    }

    private static MetricPoint between(MetricPoint one, MetricPoint other) {
        return new MetricPoint((one.eastM() + other.eastM()) / 2, (one.northM() + other.northM()) / 2);
    }

    private void polyline(CoordinateSequence line, Color color, double widthPx) {
        double[] x = new double[line.size()];
        double[] y = new double[line.size()];
        for (int i = 0; i < line.size(); i++) {
            x[i] = view.x(line.getX(i));
            y[i] = view.y(line.getY(i));
        }
        pen.setStroke(color);
        pen.setLineWidth(widthPx);
        pen.strokePolyline(x, y, x.length);
    }

    /** A short bar across the line at each stake; the first, downstream one with a square. */
    private void stakes(Reach reach) {
        pen.setStroke(Palette.INK);
        pen.setLineWidth(2);
        for (int i = 0; i < reach.stakes().size(); i++) {
            Stake stake = reach.stakes().get(i);
            MetricPoint before = reach.stakes().get(Math.max(0, i - 1)).at();
            MetricPoint after = reach.stakes()
                    .get(Math.min(reach.stakes().size() - 1, i + 1))
                    .at();
            double dx = after.eastM() - before.eastM();
            double dy = after.northM() - before.northM();
            double length = Math.max(1e-9, Math.hypot(dx, dy));
            double acrossX = dy / length * HALF_STAKE_PX;
            double acrossY = dx / length * HALF_STAKE_PX;
            double x = view.x(stake.at().eastM());
            double y = view.y(stake.at().northM());
            pen.strokeLine(x - acrossX, y - acrossY, x + acrossX, y + acrossY);
            if (view.metresPerPx() < LETTERS_BELOW / 3) {
                labels.stake(stake.name(), x, y);
            }
        }
    }

    private void depot(MapPicture picture) {
        double x = view.x(picture.depot().at().eastM());
        double y = view.y(picture.depot().at().northM());
        pen.setFill(Palette.INK);
        pen.fillPolygon(
                new double[] {x - 7, x, x + 7, x + 7, x - 7}, new double[] {y - 1, y - 8, y - 1, y + 7, y + 7}, 5);
        labels.depot(picture.depot().name(), x, y);
    }

    private void pin(MapPicture.Pin pin, boolean selected) {
        double x = view.x(pin.at().eastM());
        double y = view.y(pin.at().northM());
        double radius = selected ? 12 : 10;
        pen.setFill(Color.WHITE);
        pen.fillOval(x - radius, y - radius, 2 * radius, 2 * radius);
        pen.setStroke(selected ? Palette.SELECTED : pin.mark().color());
        pen.setLineWidth(selected ? 4 : 1.6);
        pen.strokeOval(x - radius, y - radius, 2 * radius, 2 * radius);
        mark(pin.mark(), x, y);
    }

    private void mark(Mark mark, double x, double y) {
        double[] outline = mark.outline();
        double[] xs = new double[outline.length / 2];
        double[] ys = new double[outline.length / 2];
        for (int i = 0; i < xs.length; i++) {
            xs[i] = x + (outline[2 * i] - 6) * 0.9;
            ys[i] = y + (outline[2 * i + 1] - 6) * 0.9;
        }
        pen.setFill(mark.color());
        pen.fillPolygon(xs, ys, xs.length);
    }
}
