package org.wadeplan.desktop.week;

import java.util.OptionalInt;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/** A bar on the screen: its ground with a pattern of its kind, the hatched reserve of a visit, and its words. */
final class BarNode extends Pane {

    private static final double LEAST_PX = 3;

    /** Width of a letter of the bars' text on average, in multiples of the usual text size. */
    private static final double GLYPH_EM = 0.54;

    private final WeekBar bar;

    BarNode(WeekBar bar, double widthPx, double heightPx, double pxPerMin, double em) {
        this.bar = bar;
        double width = Math.max(LEAST_PX, widthPx);
        getStyleClass().addAll("bar", bar.kind().style());
        setPrefSize(width, heightPx);
        setMinSize(width, heightPx);
        setMaxSize(width, heightPx);
        setAccessibleRole(AccessibleRole.NODE);
        setAccessibleText(bar.spoken());
        reserve(bar.medianMin(), heightPx, pxPerMin);
        words(width, heightPx, em);
        Tooltip.install(this, new Tooltip(bar.spoken()));
    }

    WeekBar bar() {
        return bar;
    }

    private void reserve(OptionalInt medianMin, double heightPx, double pxPerMin) {
        medianMin.ifPresent(median -> {
            Region tail = new Region();
            tail.getStyleClass().add("bar-reserve");
            double width = Math.max(0, (bar.toMin() - median) * pxPerMin);
            tail.resizeRelocate(getPrefWidth() - width, 0, width, heightPx);
            tail.setManaged(false);
            getChildren().add(tail);
        });
    }

    /** The whole label, or its first word, or nothing: half a word helps nobody. */
    private void words(double width, double heightPx, double em) {
        String first = bar.label().split(" ", 2)[0];
        String shown = fits(bar.label(), width, em) ? bar.label() : fits(first, width, em) ? first : "";
        if (shown.isEmpty()) {
            return;
        }
        Label label = new Label(shown);
        label.getStyleClass().add("bar-words");
        label.setMouseTransparent(true);
        label.setManaged(false);
        label.resizeRelocate(0, 0, width, heightPx);
        getChildren().add(label);
    }

    private static boolean fits(String words, double width, double em) {
        return words.length() * em * GLYPH_EM + 0.5 * em < width;
    }

    void mark(boolean selected, boolean sameSite) {
        getStyleClass().removeAll("bar-selected", "bar-same-site");
        if (selected) {
            getStyleClass().add("bar-selected");
        } else if (sameSite) {
            getStyleClass().add("bar-same-site");
        }
    }
}
