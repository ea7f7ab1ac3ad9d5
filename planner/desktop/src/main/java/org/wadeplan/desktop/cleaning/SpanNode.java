package org.wadeplan.desktop.cleaning;

import javafx.scene.AccessibleRole;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Pane;
import org.wadeplan.desktop.look.BarWords;
import org.wadeplan.desktop.words.Words;

/** A span on the screen: the pattern of its state, its words, and why as a tip. */
final class SpanNode extends Pane {

    private static final double LEAST_PX = 3;

    private final SetSpan span;

    SpanNode(SetSpan span, double widthPx, double heightPx, double em) {
        this.span = span;
        double width = Math.max(LEAST_PX, widthPx);
        getStyleClass().addAll("bar", span.state().style());
        setPrefSize(width, heightPx);
        setMinSize(width, heightPx);
        setMaxSize(width, heightPx);
        setAccessibleRole(AccessibleRole.NODE);
        span.breach().ifPresent(breach -> getStyleClass().add("set-breach"));
        setAccessibleText(span.spoken());
        BarWords.fitting(span.label(), width, heightPx, em).ifPresent(getChildren()::add);
        Tooltip tip = new Tooltip(tipWords());
        tip.setWrapText(true);
        tip.setMaxWidth(520);
        Tooltip.install(this, tip);
    }

    private String tipWords() {
        String waters = span.waters().isEmpty()
                ? ""
                : "\n" + Words.of("cleaning.touched") + ": " + String.join(", ", span.waters());
        return span.spoken() + "\n" + span.cause() + waters + "\n" + Words.of("cleaning.tipMore");
    }

    SetSpan span() {
        return span;
    }

    void mark(boolean selected, boolean sameSite) {
        getStyleClass().removeAll("bar-selected", "bar-same-site");
        if (selected) {
            getStyleClass().add("bar-selected");
            toFront();
        } else if (sameSite) {
            getStyleClass().add("bar-same-site");
        }
    }
}
