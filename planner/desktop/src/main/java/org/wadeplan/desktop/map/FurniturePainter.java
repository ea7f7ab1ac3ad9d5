package org.wadeplan.desktop.map;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import org.wadeplan.desktop.look.Palette;
import org.wadeplan.desktop.words.Words;

/** Scale bar and north arrow. */
final class FurniturePainter {

    private static final double INSET_PX = 14;
    private static final double BAR_PX = 150;

    private final GraphicsContext pen;
    private final ViewBox view;
    private final double textPx;

    FurniturePainter(GraphicsContext pen, ViewBox view, double textPx) {
        this.pen = pen;
        this.view = view;
        this.textPx = textPx;
    }

    /** Labels must leave these corners free. */
    void reserve(MapLabels labels) {
        labels.keepFree(new LabelPlacer.Box(0, view.heightPx() - textPx * 3, BAR_PX + 40, textPx * 3));
        labels.keepFree(new LabelPlacer.Box(view.widthPx() - 46, 0, 46, 70));
    }

    void paint() {
        scale();
        north();
    }

    private void scale() {
        ScaleBar bar = ScaleBar.within(BAR_PX, view.metresPerPx());
        double left = INSET_PX;
        double base = view.heightPx() - INSET_PX;
        pen.setFill(Color.web("#fbfaf6", 0.9));
        pen.fillRect(left - 6, base - textPx - 14, bar.lengthPx() + 12 + textPx, textPx + 22);
        pen.setStroke(Palette.INK);
        pen.setLineWidth(2);
        pen.strokePolyline(
                new double[] {left, left, left + bar.lengthPx(), left + bar.lengthPx()},
                new double[] {base - 7, base, base, base - 7},
                4);
        words(bar.words(), left + bar.lengthPx() / 2, base - 6 - textPx / 2);
    }

    private void north() {
        double x = view.widthPx() - 24;
        double top = INSET_PX;
        pen.setFill(Palette.INK);
        pen.fillPolygon(new double[] {x, x + 9, x, x - 9}, new double[] {top, top + 28, top + 20, top + 28}, 4);
        words(Words.of("map.north"), x, top + 30 + textPx / 2);
    }

    private void words(String text, double x, double y) {
        pen.setFont(Font.font(Font.getDefault().getFamily(), FontWeight.BOLD, textPx));
        pen.setTextAlign(TextAlignment.CENTER);
        pen.setTextBaseline(VPos.CENTER);
        pen.setFill(Palette.INK);
        pen.fillText(text, x, y);
    }
}
