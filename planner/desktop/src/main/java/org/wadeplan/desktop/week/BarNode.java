package org.wadeplan.desktop.week;

import java.util.OptionalInt;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import org.wadeplan.desktop.look.BarWords;

/** A bar on the screen: its ground with a pattern of its kind, the hatched reserve of a visit, and its words. */
final class BarNode extends Pane {

    private static final double LEAST_PX = 3;

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
        BarWords.fitting(bar.label(), width, heightPx, em).ifPresent(getChildren()::add);
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

    void mark(boolean selected, boolean sameSite) {
        getStyleClass().removeAll("bar-selected", "bar-same-site");
        if (selected) {
            getStyleClass().add("bar-selected");
        } else if (sameSite) {
            getStyleClass().add("bar-same-site");
        }
    }
}
