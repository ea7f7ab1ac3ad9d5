package org.wadeplan.desktop.look;

import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;

/** The size of all text, pixels, of which all else is a multiple; and whether pictures show the key to their signs. */
public final class TextSize {

    public static final double USUAL_PX = 14;
    private static final double SMALLEST_PX = 12;
    private static final double LARGEST_PX = 28;

    private final ReadOnlyDoubleWrapper sizePx = new ReadOnlyDoubleWrapper(USUAL_PX);

    private final BooleanProperty keyShown = new SimpleBooleanProperty(true);

    public void toggleKey() {
        keyShown.set(!keyShown.get());
    }

    /** The node, there only while keys are shown. */
    public <N extends Node> N shownWithKey(N key) {
        key.visibleProperty().bind(keyShown);
        key.managedProperty().bind(keyShown);
        return key;
    }

    public ReadOnlyDoubleProperty sizePxProperty() {
        return sizePx.getReadOnlyProperty();
    }

    public double px() {
        return sizePx.get();
    }

    public void larger() {
        sizePx.set(Math.min(LARGEST_PX, sizePx.get() + 2));
    }

    public void smaller() {
        sizePx.set(Math.max(SMALLEST_PX, sizePx.get() - 2));
    }
}
