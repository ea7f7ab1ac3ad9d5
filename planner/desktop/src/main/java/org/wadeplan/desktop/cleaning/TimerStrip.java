package org.wadeplan.desktop.cleaning;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;

/** A bar for each contact time that runs: how much is left, and when the end reading is due. */
final class TimerStrip extends VBox {

    private final ContactTimers timers;
    private final Timeline beat;

    TimerStrip(ContactTimers timers) {
        this.timers = timers;
        setId("timers");
        getStyleClass().add("timers");
        beat = new Timeline(new KeyFrame(Duration.seconds(1), event -> timers.beat()));
        beat.setCycleCount(Animation.INDEFINITE);
        timers.runningProperty().addListener((property, before, now) -> show(now));
        show(timers.runningProperty().get());
    }

    private void show(List<ContactTimer> running) {
        getChildren().setAll(running.stream().map(this::bar).toList());
        setVisible(!running.isEmpty());
        setManaged(!running.isEmpty());
        if (running.isEmpty()) {
            beat.stop();
        } else {
            beat.play();
        }
    }

    private HBox bar(ContactTimer timer) {
        Label words = new Label();
        words.getStyleClass().add("timer-words");
        words.setMinWidth(0);
        ProgressBar bar = new ProgressBar();
        bar.setMinWidth(80);
        bar.setAccessibleText(Words.of("timer.spoken", timer.kitSet()));
        Button stop = new Button(Words.of("timer.stop", timer.kitSet()));
        stop.setMinWidth(USE_PREF_SIZE);
        stop.setOnAction(event -> timers.stop(timer));
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        words.setWrapText(true);
        HBox row = new HBox(words, bar, stop);
        row.getStyleClass().add("timer");
        Runnable show = () -> {
            Instant now = timers.nowProperty().get();
            words.setText(words(timer, now));
            bar.setProgress(timer.share(now));
            row.getStyleClass().removeAll("timer-due");
            if (timer.due(now)) {
                row.getStyleClass().add("timer-due");
            }
        };
        timers.nowProperty().addListener(change -> show.run());
        show.run();
        return row;
    }

    private static String words(ContactTimer timer, Instant now) {
        String due = Times.clock(timer.dueAt(), ZoneId.systemDefault());
        if (timer.due(now)) {
            return Words.of("timer.due", timer.kitSet(), timer.step(), due);
        }
        long left = timer.leftS(now);
        return Words.of(
                "timer.left",
                String.format(Locale.ROOT, "%d:%02d", left / 60, left % 60),
                timer.kitSet(),
                timer.step(),
                due);
    }
}
