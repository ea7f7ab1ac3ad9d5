package org.wadeplan.desktop.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanExpression;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import org.wadeplan.desktop.command.AppCommand;
import org.wadeplan.desktop.command.CommandList;
import org.wadeplan.desktop.command.MenuName;
import org.wadeplan.desktop.command.Shortcut;
import org.wadeplan.desktop.find.FindForm;
import org.wadeplan.desktop.session.PlanSession;
import org.wadeplan.desktop.session.Screen;
import org.wadeplan.desktop.session.SessionHistory;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.words.Words;

/** The one list of commands. */
final class DesktopCommands {

    private static final BooleanExpression ALWAYS = new ReadOnlyBooleanWrapper(true);

    private final ViewModels models;
    private final SessionModel session;
    private final Asking asking;
    private final WindowActs window;
    private final List<AppCommand> all = new ArrayList<>();

    private DesktopCommands(ViewModels models, Asking asking, WindowActs window) {
        this.models = models;
        this.session = models.session();
        this.asking = asking;
        this.window = window;
    }

    static CommandList of(ViewModels models, Asking asking, WindowActs window) {
        DesktopCommands made = new DesktopCommands(models, asking, window);
        made.round();
        made.edit();
        made.show();
        made.picture();
        made.day();
        made.help();
        return new CommandList(made.all);
    }

    private void add(String id, MenuName menu, Shortcut shortcut, BooleanExpression enabled, Runnable action) {
        all.add(new AppCommand(id, menu, Words.of("command." + id), Optional.of(shortcut), enabled, action));
    }

    private void round() {
        add("round.open", MenuName.ROUND, Shortcut.control("O"), ALWAYS, this::open);
        add("round.demo", MenuName.ROUND, Shortcut.control("D"), ALWAYS, this::openDemo);
        add("round.again", MenuName.ROUND, Shortcut.plain("F5"), isOpen(), session::readAgain);
        add("pack.write", MenuName.ROUND, Shortcut.control("P"), planned(), () -> {
            session.screenProperty().set(Screen.PACK);
            models.pack().write();
        });
        add("app.quit", MenuName.ROUND, Shortcut.control("Q"), ALWAYS, window::quit);
    }

    private void edit() {
        add("edit.undo", MenuName.EDIT, Shortcut.control("Z"), history(true), session::undo);
        add("edit.redo", MenuName.EDIT, Shortcut.control("Y"), history(false), session::redo);
        add("repair.back", MenuName.EDIT, Shortcut.control("B"), repaired(), session::takeBackRepairs);
        add(
                "work.cancel",
                MenuName.EDIT,
                Shortcut.plain("ESCAPE"),
                session.work().busyProperty(),
                session::cancelWork);
    }

    private void show() {
        int digit = 1;
        for (Screen screen : Screen.values()) {
            String key = "DIGIT" + digit++;
            add("screen." + screen.name(), MenuName.SHOW, Shortcut.control(key), ALWAYS, () -> session.screenProperty()
                    .set(screen));
        }
        add("pane.next", MenuName.SHOW, Shortcut.plain("F6"), ALWAYS, () -> window.cyclePane(1));
        add("pane.previous", MenuName.SHOW, Shortcut.shift("F6"), ALWAYS, () -> window.cyclePane(-1));
        add("problem.jump", MenuName.SHOW, Shortcut.control("J"), jumpable(), models.problems()::jump);
        add("text.larger", MenuName.SHOW, Shortcut.control("PLUS"), ALWAYS, models.text()::larger);
        add("text.smaller", MenuName.SHOW, Shortcut.control("MINUS"), ALWAYS, models.text()::smaller);
    }

    private void day() {
        add("load.tick", MenuName.DAY, Shortcut.plain("T"), tickable(), models.kit()::toggle);
        add("timer.toggle", MenuName.DAY, Shortcut.plain("S"), timable(), models.cleaning()::toggleTimer);
        add("pest.seen", MenuName.DAY, Shortcut.control("T"), traceable(), this::askForPest);
    }

    private void askForPest() {
        session.session()
                .flatMap(PlanSession::round)
                .flatMap(round -> asking.pest(
                        FindForm.of(round, models.cleaning().momentProperty().get())))
                .ifPresent(session::seen);
    }

    private BooleanExpression tickable() {
        return Bindings.createBooleanBinding(
                () -> on(Screen.KIT) && models.kit().canTick(),
                session.screenProperty(),
                models.kit().rowsProperty(),
                models.kit().selectedProperty());
    }

    private BooleanExpression timable() {
        return Bindings.createBooleanBinding(
                () -> on(Screen.CLEANING) && models.cleaning().canTime(),
                session.screenProperty(),
                models.cleaning().stepRowsProperty(),
                models.cleaning().selectedStepProperty());
    }

    private BooleanExpression traceable() {
        return Bindings.createBooleanBinding(
                () -> session.session().flatMap(PlanSession::inForce).isPresent()
                        && !session.work().busyProperty().get(),
                session.sessionProperty(),
                session.work().busyProperty());
    }

    private boolean on(Screen screen) {
        return session.screenProperty().get() == screen;
    }

    private void picture() {
        add("picture.in", MenuName.PICTURE, Shortcut.plain("PLUS"), isOpen(), () -> {
            onPicture(models.map()::zoomIn, models.week()::zoomIn, models.cleaning()::zoomIn);
        });
        add("picture.out", MenuName.PICTURE, Shortcut.plain("MINUS"), isOpen(), () -> {
            onPicture(models.map()::zoomOut, models.week()::zoomOut, models.cleaning()::zoomOut);
        });
        add("picture.all", MenuName.PICTURE, Shortcut.plain("DIGIT0"), isOpen(), () -> {
            onPicture(models.map()::fitAll, models.week()::fitAll, models.cleaning()::fitAll);
        });
        add("picture.selected", MenuName.PICTURE, Shortcut.plain("F"), isOpen(), () -> {
            onPicture(models.map()::fitSelected, models.week()::fitSelected, models.cleaning()::fitSelected);
        });
        add("picture.key", MenuName.PICTURE, Shortcut.plain("K"), isOpen(), models.text()::toggleKey);
        add("reach.search", MenuName.PICTURE, Shortcut.control("R"), searchable(), () -> {
            session.screenProperty().set(Screen.MAP);
            models.candidates().search();
        });
        add("site.next", MenuName.PICTURE, Shortcut.plain("N"), isOpen(), () -> session.step(1));
        add("site.previous", MenuName.PICTURE, Shortcut.plain("P"), isOpen(), () -> session.step(-1));
    }

    private void help() {
        add("help.keys", MenuName.HELP, Shortcut.plain("F1"), ALWAYS, window::toggleHelp);
    }

    private void onPicture(Runnable onMap, Runnable onWeek, Runnable onCleaning) {
        if (on(Screen.MAP)) {
            onMap.run();
        } else if (on(Screen.WEEK)) {
            onWeek.run();
        } else if (on(Screen.CLEANING)) {
            onCleaning.run();
        }
    }

    private void open() {
        asking.folder(Words.of("ask.round"), session.session().map(PlanSession::folder))
                .ifPresent(session::open);
    }

    private void openDemo() {
        Optional<Path> demo = session.desk().demo();
        demo.ifPresentOrElse(session::open, () -> session.say(Words.of("notice.noDemo")));
    }

    private BooleanExpression isOpen() {
        return Bindings.createBooleanBinding(() -> session.session().isPresent(), session.sessionProperty());
    }

    private BooleanExpression searchable() {
        return Bindings.createBooleanBinding(
                () -> session.session().flatMap(PlanSession::round).isPresent()
                        && !session.work().busyProperty().get(),
                session.sessionProperty(),
                session.work().busyProperty());
    }

    private BooleanExpression planned() {
        return Bindings.createBooleanBinding(
                () -> session.session().flatMap(PlanSession::plan).isPresent()
                        && !session.work().busyProperty().get(),
                session.sessionProperty(),
                session.work().busyProperty());
    }

    private BooleanExpression repaired() {
        return Bindings.createBooleanBinding(
                () -> session.session()
                        .filter(now -> !now.acceptedRepairs().isEmpty())
                        .isPresent(),
                session.sessionProperty());
    }

    private BooleanExpression jumpable() {
        return Bindings.createBooleanBinding(
                () -> models.problems().canJump(), models.problems().chosenProperty());
    }

    private BooleanExpression history(boolean back) {
        return Bindings.createBooleanBinding(
                () -> session.historyProperty()
                        .get()
                        .map(back ? SessionHistory::before : SessionHistory::after)
                        .filter(steps -> !steps.isEmpty())
                        .isPresent(),
                session.historyProperty());
    }
}
