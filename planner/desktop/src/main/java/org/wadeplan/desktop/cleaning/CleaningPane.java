package org.wadeplan.desktop.cleaning;

import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.DoubleBinding;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import org.wadeplan.desktop.look.TextSize;

/**
 * The lanes in their scrolling frame. Arrow keys go from span to span, with Shift they move the arrow of time by a quarter of
 * an hour; the wheel with Ctrl held zooms.
 */
final class CleaningPane extends ScrollPane {

    private static final int MOVE_MIN = 15;

    private final CleaningViewModel model;
    private final TextSize text;
    private Optional<CleaningSheet> sheet = Optional.empty();

    CleaningPane(CleaningViewModel model, TextSize text) {
        this.model = model;
        this.text = text;
        setId("cleaning-picture");
        getStyleClass().add("picture");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.NODE);
        model.pictureProperty().addListener(change -> build());
        model.zoomProperty().addListener(change -> build());
        text.sizePxProperty().addListener(change -> build());
        viewportBoundsProperty().addListener((property, before, now) -> {
            if (before.getWidth() != now.getWidth()) {
                build();
            }
        });
        model.selectedProperty().addListener(change -> show());
        model.momentProperty().addListener(change -> show());
        addEventFilter(KeyEvent.KEY_PRESSED, this::step);
        addEventFilter(ScrollEvent.SCROLL, this::zoom);
        build();
    }

    private void build() {
        Optional<CleaningPicture> picture = model.pictureProperty().get();
        if (picture.isEmpty()) {
            sheet = Optional.empty();
            Label empty = new Label();
            empty.textProperty().bind(model.emptyWordsProperty());
            empty.setId("cleaning-empty");
            empty.getStyleClass().add("empty-words");
            empty.setWrapText(true);
            setContent(empty);
            return;
        }
        double width = Math.max(text.px() * 40, getViewportBounds().getWidth())
                * model.zoomProperty().get();
        CleaningSheet made = new CleaningSheet(picture.get(), text.px(), width);
        made.hold(scrolledX(made), scrolledY(made));
        made.addEventHandler(MouseEvent.MOUSE_CLICKED, click -> choose(made, click));
        sheet = Optional.of(made);
        setContent(made);
        show();
    }

    /** A click anywhere moves the arrow of time there; on a span it selects it too. */
    private void choose(CleaningSheet made, MouseEvent click) {
        requestFocus();
        model.chooseMoment(made.at(click.getX()));
        made.spans().stream()
                .filter(node -> node.getBoundsInParent().contains(click.getX(), click.getY()))
                .filter(node -> node.span().holds(model.momentProperty().get()))
                .findFirst()
                .ifPresent(node -> model.select(node.span().id()));
    }

    private DoubleBinding scrolledX(CleaningSheet made) {
        return Bindings.createDoubleBinding(
                () -> getHvalue()
                        * Math.max(0, made.getPrefWidth() - getViewportBounds().getWidth()),
                hvalueProperty(),
                viewportBoundsProperty());
    }

    private DoubleBinding scrolledY(CleaningSheet made) {
        return Bindings.createDoubleBinding(
                () -> getVvalue()
                        * Math.max(0, made.getPrefHeight() - getViewportBounds().getHeight()),
                vvalueProperty(),
                viewportBoundsProperty());
    }

    private void show() {
        setAccessibleText(model.spoken());
        sheet.ifPresent(shown -> {
            shown.mark(model.selectedProperty().get(), model.span().flatMap(SetSpan::site));
            shown.moment(model.momentProperty().get(), model.momentWords());
            bringIntoView(shown, shown.xOfMoment(model.momentProperty().get()));
            model.selectedProperty().get().ifPresent(id -> shown.spans().stream()
                    .filter(node -> node.span().id().equals(id))
                    .findFirst()
                    .ifPresent(node -> bringDown(shown, node.getBoundsInParent())));
        });
    }

    private void bringIntoView(CleaningSheet shown, double x) {
        double seen = getViewportBounds().getWidth();
        double spare = shown.getPrefWidth() - seen;
        double left = getHvalue() * spare;
        double edge = text.px() * 9;
        if (spare > 0 && (x < left + edge || x > left + seen - edge / 2)) {
            setHvalue(Math.min(1, Math.max(0, (x - seen / 3) / spare)));
        }
    }

    private void bringDown(CleaningSheet shown, Bounds bounds) {
        double seen = getViewportBounds().getHeight();
        double spare = shown.getPrefHeight() - seen;
        double top = getVvalue() * spare;
        double edge = text.px() * 3.6;
        if (spare > 0 && (bounds.getMinY() < top + edge || bounds.getMaxY() > top + seen)) {
            setVvalue(Math.min(1, Math.max(0, (bounds.getMinY() - edge) / spare)));
        }
    }

    private void step(KeyEvent press) {
        if (press.isShortcutDown() || press.isAltDown()) {
            return;
        }
        boolean time = press.isShiftDown();
        switch (press.getCode()) {
            case LEFT -> left(time);
            case RIGHT -> right(time);
            case UP -> model.step(CleaningPicture.Step.UP);
            case DOWN -> model.step(CleaningPicture.Step.DOWN);
            default -> {
                return;
            }
        }
        press.consume();
    }

    private void left(boolean time) {
        if (time) {
            model.moveMoment(-MOVE_MIN);
        } else {
            model.step(CleaningPicture.Step.LEFT);
        }
    }

    private void right(boolean time) {
        if (time) {
            model.moveMoment(MOVE_MIN);
        } else {
            model.step(CleaningPicture.Step.RIGHT);
        }
    }

    private void zoom(ScrollEvent turn) {
        if (turn.isShortcutDown() && turn.getDeltaY() != 0) {
            if (turn.getDeltaY() > 0) {
                model.zoomIn();
            } else {
                model.zoomOut();
            }
            turn.consume();
        }
    }
}
