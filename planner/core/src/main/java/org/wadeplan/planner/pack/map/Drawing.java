package org.wadeplan.planner.pack.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;

/**
 * A black-and-white picture in millimetres from its top left corner: lines as SVG vectors, words as HTML over them.
 *
 * <p>Words stay out of the SVG so that they are printed in the pages' own embedded font and can be searched. Nothing is
 * filled: pages are printed on waterproof paper.
 */
public final class Drawing {

    /** On which side of its point a label stands. */
    public enum Anchor {
        LEFT_OF,
        CENTRED,
        RIGHT_OF
    }

    private static final double LABEL_WIDTH_MM = 60;
    private static final double MM_PER_PT = 25.4 / 72;

    private final double widthMm;
    private final double heightMm;
    private final StringBuilder shapes = new StringBuilder();
    private final StringBuilder labels = new StringBuilder();

    public Drawing(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }

    /** A line through points that are already in millimetres on the paper. */
    public Drawing line(List<Coordinate> points, double strokeMm) {
        return path(points, strokeMm, "", false);
    }

    /** The same, broken into dashes such as {@code "2 1"}, in millimetres. */
    public Drawing dashed(List<Coordinate> points, double strokeMm, String dashes) {
        return path(points, strokeMm, " stroke-dasharray=\"" + dashes + "\"", false);
    }

    /** A closed outline without a filling. */
    public Drawing outline(List<Coordinate> points, double strokeMm) {
        return path(points, strokeMm, "", true);
    }

    public Drawing segment(double fromX, double fromY, double toX, double toY, double strokeMm) {
        return line(List.of(new Coordinate(fromX, fromY), new Coordinate(toX, toY)), strokeMm);
    }

    public Drawing box(double left, double top, double width, double height, double strokeMm) {
        return outline(
                List.of(
                        new Coordinate(left, top),
                        new Coordinate(left + width, top),
                        new Coordinate(left + width, top + height),
                        new Coordinate(left, top + height)),
                strokeMm);
    }

    /** Slanting lines inside a box, {@code everyMm} apart: what other programs would fill. */
    public Drawing hatch(double left, double top, double width, double height, double everyMm) {
        for (double at = everyMm; at < width + height; at += everyMm) {
            double fromX = Math.min(at, width);
            double toX = Math.max(0, at - height);
            segment(left + fromX, top + at - fromX, left + toX, top + at - toX, 0.15);
        }
        return this;
    }

    /** A circle without a filling. */
    public Drawing ring(double x, double y, double radiusMm, double strokeMm) {
        shapes.append(String.format(
                Locale.ROOT,
                "<circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\" fill=\"white\" stroke=\"black\" stroke-width=\"%.2f\"/>",
                x,
                y,
                radiusMm,
                strokeMm));
        return this;
    }

    /** Words whose middle height is at {@code y}. */
    public Drawing label(double x, double y, double sizePt, Anchor anchor, String words) {
        return label(x, y, sizePt, anchor, false, words);
    }

    public Drawing boldLabel(double x, double y, double sizePt, Anchor anchor, String words) {
        return label(x, y, sizePt, anchor, true, words);
    }

    private Drawing label(double x, double y, double sizePt, Anchor anchor, boolean bold, String words) {
        double heightOfLineMm = sizePt * 1.2 * MM_PER_PT;
        double left =
                switch (anchor) {
                    case LEFT_OF -> x - LABEL_WIDTH_MM;
                    case CENTRED -> x - LABEL_WIDTH_MM / 2;
                    case RIGHT_OF -> x;
                };
        String align =
                switch (anchor) {
                    case LEFT_OF -> "right";
                    case CENTRED -> "center";
                    case RIGHT_OF -> "left";
                };
        labels.append(String.format(
                Locale.ROOT,
                "<div class=\"label\" style=\"left:%.2fmm;top:%.2fmm;width:%.0fmm;text-align:%s;font-size:%.1fpt%s\"><span>%s</span></div>",
                left,
                y - heightOfLineMm / 2,
                LABEL_WIDTH_MM,
                align,
                sizePt,
                bold ? ";font-weight:bold" : "",
                escaped(words)));
        return this;
    }

    /** The picture as a piece of XHTML for a page. */
    public String html() {
        return String.format(
                Locale.ROOT,
                "<div class=\"drawing\" style=\"width:%1$.1fmm;height:%2$.1fmm\">"
                        + "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$.1fmm\" height=\"%2$.1fmm\""
                        + " viewBox=\"0 0 %1$.1f %2$.1f\">%3$s</svg>%4$s</div>",
                widthMm,
                heightMm,
                shapes,
                labels);
    }

    private Drawing path(List<Coordinate> points, double strokeMm, String dashes, boolean closed) {
        List<String> moves = new ArrayList<>();
        for (Coordinate point : points) {
            moves.add(String.format(Locale.ROOT, "%s%.2f %.2f", moves.isEmpty() ? "M" : "L", point.x, point.y));
        }
        shapes.append(String.format(
                Locale.ROOT,
                "<path d=\"%s%s\" fill=\"none\" stroke=\"black\" stroke-width=\"%.2f\"%s/>",
                String.join(" ", moves),
                closed ? " Z" : "",
                strokeMm,
                dashes));
        return this;
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
