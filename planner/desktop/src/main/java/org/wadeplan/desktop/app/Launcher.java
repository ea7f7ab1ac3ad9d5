package org.wadeplan.desktop.app;

import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;

/** Starts the window. Not an {@code Application} itself: JavaFX on the class path would refuse that. */
public final class Launcher {

    private static final int FAULT = 5;

    /** Held, so that its level stays set: JavaFX warns about the class path, which is meant here. */
    private static final Logger JAVAFX = Logger.getLogger("javafx");

    private Launcher() {}

    public static void main(String[] arguments) {
        if (arguments.length > 1 || (arguments.length == 1 && arguments[0].startsWith("-"))) {
            System.out.println(
                    "usage: wadeplan window [ROUND]   opens the window, on a round folder where one is named");
            System.exit(arguments.length == 1 && arguments[0].matches("-h|--help") ? 0 : 2);
        }
        Optional<String> missing = StartCheck.forWindow();
        if (missing.isPresent()) {
            refuse(missing.get());
        }
        JAVAFX.setLevel(Level.SEVERE);
        try {
            Application.launch(WadeplanApp.class, arguments);
        } catch (RuntimeException | LinkageError fault) {
            refuse("the window cannot be opened (" + reason(fault) + "). Debian: apt-get install "
                    + StartCheck.WINDOW_PACKAGES);
        }
    }

    private static String reason(Throwable fault) {
        Throwable deepest = fault;
        for (Throwable cause = fault.getCause(); cause != null; cause = cause.getCause()) {
            deepest = cause;
        }
        String said = deepest.getMessage();
        return said == null
                ? deepest.getClass().getSimpleName()
                : said.lines().findFirst().orElse("");
    }

    private static void refuse(String why) {
        System.err.println("wadeplan: " + why + ".");
        System.exit(FAULT);
    }
}
