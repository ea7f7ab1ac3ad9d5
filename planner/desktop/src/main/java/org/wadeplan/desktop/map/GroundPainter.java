package org.wadeplan.desktop.map;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.wadeplan.desktop.look.Palette;
import org.wadeplan.desktop.words.Words;

/** What lies under the streams: catchments with dashed outlines, and parcels, hatched where consent was refused. */
final class GroundPainter {

    private static final Paint REFUSED = Palette.hatch(Color.web("#f7e3dc"), Color.web("#b4523c"), 8);
    private static final Color PARCEL = Color.web("#e6e6e0", 0.8);

    private final GraphicsContext pen;
    private final ViewBox view;
    private final double textPx;

    GroundPainter(GraphicsContext pen, ViewBox view, double textPx) {
        this.pen = pen;
        this.view = view;
        this.textPx = textPx;
    }

    void paint(MapPicture picture) {
        pen.setFill(Palette.PAPER);
        pen.fillRect(0, 0, view.widthPx(), view.heightPx());
        picture.catchments().forEach(this::catchment);
        picture.parcels().forEach(this::parcel);
    }

    private void catchment(MapPicture.Area area) {
        if (!seen(area.shape())) {
            return;
        }
        pen.setFill(Palette.CATCHMENT_FILL);
        pen.setStroke(Palette.CATCHMENT);
        pen.setLineWidth(1.2);
        pen.setLineDashes(9, 4, 2, 4);
        outline(area.shape(), true);
        pen.setLineDashes();
    }

    private void parcel(MapPicture.Area area) {
        if (!seen(area.shape())) {
            return;
        }
        double sizePx = area.shape().getEnvelopeInternal().getWidth() / view.metresPerPx();
        pen.setFill(area.refused() ? REFUSED : PARCEL);
        pen.setStroke(area.refused() ? Palette.ERROR : Palette.QUIET);
        pen.setLineWidth(1);
        outline(area.shape(), sizePx > 3);
        if (sizePx > textPx * 9) {
            String text = Words.of(area.refused() ? "map.parcelRefused" : "map.parcel", area.label());
            Coordinate top = area.shape().getEnvelopeInternal().centre();
            Point place = area.shape()
                    .getFactory()
                    .createPoint(new Coordinate(
                            top.x, area.shape().getEnvelopeInternal().getMaxY() - textPx * view.metresPerPx()));
            words(text, place, area.refused() ? Palette.ERROR : Palette.QUIET, textPx * 0.9);
        }
    }

    private boolean seen(Geometry shape) {
        return view.ground().intersects(shape.getEnvelopeInternal());
    }

    private void outline(Geometry shape, boolean drawn) {
        for (int i = 0; i < shape.getNumGeometries(); i++) {
            if (shape.getGeometryN(i) instanceof Polygon polygon) {
                pen.beginPath();
                ring(polygon.getExteriorRing().getCoordinates());
                for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                    ring(polygon.getInteriorRingN(hole).getCoordinates());
                }
                pen.fill();
                if (drawn) {
                    pen.stroke();
                }
            }
        }
    }

    private void ring(Coordinate[] vertices) {
        pen.moveTo(view.x(vertices[0].x), view.y(vertices[0].y));
        for (int i = 1; i < vertices.length; i++) {
            pen.lineTo(view.x(vertices[i].x), view.y(vertices[i].y));
        }
        pen.closePath();
    }

    private void words(String text, Point at, Color color, double sizePx) {
        pen.setFont(Font.font(Font.getDefault().getFamily(), FontWeight.BOLD, sizePx));
        pen.setTextAlign(TextAlignment.CENTER);
        pen.setTextBaseline(VPos.CENTER);
        pen.setFill(color);
        pen.fillText(text, view.x(at.getX()), view.y(at.getY()));
    }
}
