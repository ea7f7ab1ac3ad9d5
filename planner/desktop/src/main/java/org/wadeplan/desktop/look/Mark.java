package org.wadeplan.desktop.look;

import java.util.Arrays;
import javafx.scene.paint.Color;
import javafx.scene.shape.Polygon;

/** Small shapes that stand beside a word. Each is told by its outline alone, without its colour. */
public enum Mark {
    ERROR("#9c1f0a", "4, 0, 8, 0, 12, 4, 12, 8, 8, 12, 4, 12, 0, 8, 0, 4"),
    WARNING("#7a4b00", "6, 0, 12, 12, 0, 12"),
    NOTE("#1c5a7a", "0, 2, 12, 2, 12, 10, 6, 10, 3, 13, 3, 10, 0, 10"),
    PLANNED("#1f6b3a", "0, 6, 2, 4, 5, 7, 10, 1, 12, 3, 5, 11"),
    AWAITING("#7a4b00", "0, 0, 12, 0, 7, 6, 12, 12, 0, 12, 5, 6"),
    NOT_PLANNED("#9c1f0a", "0, 2, 2, 0, 6, 4, 10, 0, 12, 2, 8, 6, 12, 10, 10, 12, 6, 8, 2, 12, 0, 10, 4, 6"),
    UNDECIDED("#9c1f0a", "6, 0, 12, 6, 6, 12, 0, 6"),
    RESERVE("#4e5d62", "0, 5, 12, 5, 12, 8, 0, 8");

    private final String color;
    private final String outline;

    Mark(String color, String outline) {
        this.color = color;
        this.outline = outline;
    }

    public Color color() {
        return Color.web(color);
    }

    /** x and y in turn, in a box of 12 by 13. */
    public double[] outline() {
        return Arrays.stream(outline.split(", ", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    /** A fresh shape for the screen. */
    public Polygon shape() {
        Polygon polygon = new Polygon(outline());
        polygon.setFill(color());
        polygon.getStyleClass().add("mark");
        polygon.setMouseTransparent(true);
        return polygon;
    }
}
