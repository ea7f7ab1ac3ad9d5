package org.wadeplan.desktop.look;

import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;

/** The size of all text, pixels. Everything else is laid out in multiples of it. */
public final class TextSize {

    public static final double USUAL_PX = 14;
    private static final double SMALLEST_PX = 12;
    private static final double LARGEST_PX = 28;

    private final ReadOnlyDoubleWrapper sizePx = new ReadOnlyDoubleWrapper(USUAL_PX);

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
