package org.wadeplan.desktop.app;

import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Fails with one line that says what to install, where JavaFX could not even draw text. */
public final class NeedsDrawing implements BeforeAllCallback {

    @Override
    public void beforeAll(ExtensionContext context) {
        StartCheck.forDrawing().ifPresent(missing -> {
            throw new AssertionError(missing);
        });
    }
}
