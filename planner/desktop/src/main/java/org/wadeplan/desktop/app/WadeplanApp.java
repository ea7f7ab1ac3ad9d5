package org.wadeplan.desktop.app;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.stage.Stage;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.work.BackgroundWork;

/** The program with a window. */
public final class WadeplanApp extends Application {

    private final ExecutorService background = Executors.newCachedThreadPool(task -> {
        Thread thread = new Thread(task, "wadeplan-work");
        thread.setDaemon(true);
        return thread;
    });

    @Override
    public void start(Stage stage) {
        Clock clock = Clock.systemUTC();
        SessionModel session =
                new SessionModel(new CoreDesk(clock), new BackgroundWork(background, Platform::runLater));
        Thread.currentThread().setUncaughtExceptionHandler((thread, fault) -> session.failed(asException(fault)));
        ViewModels models = ViewModels.of(session, Path.of(System.getProperty("user.home", ".")), clock);
        MainWindow window = new MainWindow(stage, models, new ChooserAsking(stage));
        Rectangle2D room = javafx.stage.Screen.getPrimary().getVisualBounds();
        window.show(Math.min(1500, room.getWidth()), Math.min(940, room.getHeight()));
        List<String> folders = getParameters().getUnnamed();
        if (!folders.isEmpty()) {
            session.open(Path.of(folders.get(0)));
        }
    }

    private static Exception asException(Throwable fault) {
        return fault instanceof Exception exception ? exception : new IllegalStateException(fault);
    }

    @Override
    public void stop() {
        background.shutdownNow();
    }
}
