package org.wadeplan.desktop.week;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.DoubleBinding;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import org.wadeplan.desktop.look.TextSize;

/** The timeline in its scrolling frame. Arrow keys go from bar to bar; the wheel with Ctrl held zooms. */
final class WeekPane extends ScrollPane {

    private final WeekViewModel model;
    private final TextSize text;
    private Optional<WeekSheet> sheet = Optional.empty();

    WeekPane(WeekViewModel model, TextSize text) {
        this.model = model;
        this.text = text;
        setId("week-picture");
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
        model.selectedBarProperty().addListener(change -> show());
        model.selectedSiteProperty().addListener(change -> show());
        addEventFilter(KeyEvent.KEY_PRESSED, this::step);
        addEventFilter(ScrollEvent.SCROLL, this::zoom);
        build();
    }

    List<BarNode> bars() {
        return sheet.map(WeekSheet::bars).orElse(List.of());
    }

    private void build() {
        Optional<WeekPicture> picture = model.pictureProperty().get();
        if (picture.isEmpty()) {
            sheet = Optional.empty();
            Label empty = new Label();
            empty.textProperty().bind(model.emptyWordsProperty());
            empty.setId("week-empty");
            empty.getStyleClass().add("empty-words");
            empty.setWrapText(true);
            setContent(empty);
            return;
        }
        double width = Math.max(text.px() * 30, getViewportBounds().getWidth())
                * model.zoomProperty().get();
        WeekSheet made = new WeekSheet(picture.get(), text.px(), width);
        made.hold(scrolledX(made), scrolledY(made));
        made.bars().forEach(this::listen);
        sheet = Optional.of(made);
        setContent(made);
        show();
    }

    private void listen(BarNode node) {
        node.addEventHandler(MouseEvent.MOUSE_CLICKED, click -> {
            requestFocus();
            model.select(node.bar().id());
        });
    }

    private DoubleBinding scrolledX(WeekSheet made) {
        return Bindings.createDoubleBinding(
                () -> getHvalue()
                        * Math.max(0, made.getPrefWidth() - getViewportBounds().getWidth()),
                hvalueProperty(),
                viewportBoundsProperty());
    }

    private DoubleBinding scrolledY(WeekSheet made) {
        return Bindings.createDoubleBinding(
                () -> getVvalue()
                        * Math.max(0, made.getPrefHeight() - getViewportBounds().getHeight()),
                vvalueProperty(),
                viewportBoundsProperty());
    }

    private void show() {
        setAccessibleText(model.spoken());
        sheet.ifPresent(shown -> {
            shown.mark(
                    model.selectedBarProperty().get(),
                    model.selectedSiteProperty().get());
            model.focusedBar().ifPresent(id -> shown.bars().stream()
                    .filter(node -> node.bar().id().equals(id))
                    .findFirst()
                    .ifPresent(node -> bringIntoView(shown, node)));
        });
    }

    private void bringIntoView(WeekSheet shown, Node node) {
        Bounds bounds = node.getBoundsInParent();
        Bounds seen = getViewportBounds();
        double spareX = shown.getPrefWidth() - seen.getWidth();
        double spareY = shown.getPrefHeight() - seen.getHeight();
        double left = getHvalue() * spareX;
        double top = getVvalue() * spareY;
        double edge = text.px() * 6;
        if (spareX > 0 && (bounds.getMinX() < left + edge || bounds.getMaxX() > left + seen.getWidth())) {
            setHvalue(Math.min(1, Math.max(0, (bounds.getMinX() - edge) / spareX)));
        }
        if (spareY > 0 && (bounds.getMinY() < top + edge / 2 || bounds.getMaxY() > top + seen.getHeight())) {
            setVvalue(Math.min(1, Math.max(0, (bounds.getMinY() - edge) / spareY)));
        }
    }

    private void step(KeyEvent press) {
        if (press.isShortcutDown() || press.isAltDown()) {
            return;
        }
        switch (press.getCode()) {
            case LEFT -> model.step(WeekPicture.Step.LEFT);
            case RIGHT -> model.step(WeekPicture.Step.RIGHT);
            case UP -> model.step(WeekPicture.Step.UP);
            case DOWN -> model.step(WeekPicture.Step.DOWN);
            default -> {
                return;
            }
        }
        press.consume();
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
