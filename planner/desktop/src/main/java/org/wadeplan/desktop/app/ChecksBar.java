package org.wadeplan.desktop.app;

import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.wadeplan.desktop.command.CommandList;
import org.wadeplan.desktop.command.CommandMenus;
import org.wadeplan.desktop.look.Mark;
import org.wadeplan.desktop.session.PlanSession;
import org.wadeplan.desktop.session.Screen;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.geo.problem.Severity;

/** The bar at the bottom: how much was found of each kind, what happened last, and the work that runs. */
final class ChecksBar extends HBox {

    ChecksBar(ViewModels models, CommandList commands) {
        setId("checks-bar");
        getStyleClass().add("checks-bar");
        for (Severity severity : Severity.values()) {
            getChildren().add(counter(models, severity));
        }
        getChildren().add(notice(models.session()));
        getChildren().add(work(models.session(), commands));
    }

    private static Button counter(ViewModels models, Severity severity) {
        Button button = new Button();
        String word = severity.name().toLowerCase(Locale.ROOT);
        button.setId("count-" + word);
        button.setGraphic(Mark.valueOf(severity.name()).shape());
        button.setMinWidth(USE_PREF_SIZE);
        Runnable show = () -> {
            int found =
                    models.session().session().map(now -> now.count(severity)).orElse(0);
            button.setText(Words.count("count." + word, found));
            button.setAccessibleText(Words.of("checks.spoken", button.getText()));
            button.setDisable(
                    models.session().session().map(PlanSession::opened).isEmpty());
        };
        models.session().sessionProperty().addListener(change -> show.run());
        show.run();
        button.setOnAction(event -> {
            models.problems().onlyProperty().set(Optional.of(severity));
            models.session().screenProperty().set(Screen.PROBLEMS);
        });
        return button;
    }

    private static Label notice(SessionModel session) {
        Label notice = new Label();
        notice.setId("notice");
        notice.textProperty().bind(session.noticeProperty());
        notice.setMaxWidth(Double.MAX_VALUE);
        notice.setMinWidth(0);
        notice.setTooltip(new javafx.scene.control.Tooltip());
        notice.getTooltip().textProperty().bind(session.noticeProperty());
        notice.getTooltip().setWrapText(true);
        notice.getTooltip().setMaxWidth(600);
        HBox.setHgrow(notice, Priority.ALWAYS);
        return notice;
    }

    private static HBox work(SessionModel session, CommandList commands) {
        Label step = new Label();
        step.setId("work-step");
        step.textProperty().bind(session.work().stepProperty());
        ProgressBar bar = new ProgressBar();
        bar.setAccessibleText(Words.of("work.progress"));
        session.work().shareProperty().addListener(change -> bar.setProgress(share(session)));
        session.work().busyProperty().addListener(change -> bar.setProgress(share(session)));
        HBox work = new HBox(step, bar, CommandMenus.button(commands.named("work.cancel")));
        work.getStyleClass().add("work");
        work.visibleProperty().bind(session.work().busyProperty());
        work.managedProperty().bind(session.work().busyProperty());
        return work;
    }

    /** Before the first word of progress nothing is known, and the bar says so by moving to and fro. */
    private static double share(SessionModel session) {
        double share = session.work().shareProperty().get();
        return share > 0 ? share : ProgressBar.INDETERMINATE_PROGRESS;
    }
}
