package org.wadeplan.desktop.map;

import java.nio.IntBuffer;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import org.wadeplan.desktop.look.TextSize;

/** The picture itself: ground, then streams as pixels, then marks. Drawn once for each pulse at most. */
final class MapPane extends Region {

    private static final double STREAM_PX = 2.2;
    private static final double KEY_PAN_PX = 60;

    private final MapViewModel model;
    private final CandidateViewModel candidates;
    private final TextSize text;
    private final Canvas ground = new Canvas();
    private final ImageView streams = new ImageView();
    private final Canvas marks = new Canvas();
    private double dragX;
    private double dragY;
    private boolean dragged;

    MapPane(MapViewModel model, CandidateViewModel candidates, TextSize text) {
        this.model = model;
        this.candidates = candidates;
        this.text = text;
        setId("map-picture");
        getStyleClass().add("picture");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().addAll(ground, streams, marks);
        getChildren().forEach(layer -> layer.setMouseTransparent(true));
        setPickOnBounds(true);
        Rectangle clip = new Rectangle();
        clip.widthProperty().bind(widthProperty());
        clip.heightProperty().bind(heightProperty());
        setClip(clip);
        model.viewProperty().addListener(change -> requestLayout());
        model.pictureProperty().addListener(change -> requestLayout());
        model.selectedProperty().addListener(change -> requestLayout());
        candidates.reportProperty().addListener(change -> requestLayout());
        candidates.chosenProperty().addListener(change -> requestLayout());
        text.sizePxProperty().addListener(change -> requestLayout());
        listen();
    }

    private void listen() {
        addEventHandler(ScrollEvent.SCROLL, turn -> {
            if (turn.getDeltaY() != 0) {
                model.zoomAt(turn.getX(), turn.getY(), turn.getDeltaY() > 0 ? 1.25 : 1 / 1.25);
                turn.consume();
            }
        });
        addEventHandler(MouseEvent.MOUSE_PRESSED, press -> {
            requestFocus();
            dragX = press.getX();
            dragY = press.getY();
            dragged = false;
        });
        addEventHandler(MouseEvent.MOUSE_DRAGGED, drag -> {
            if (dragged || Math.hypot(drag.getX() - dragX, drag.getY() - dragY) > 4) {
                dragged = true;
                model.pan(drag.getX() - dragX, drag.getY() - dragY);
                dragX = drag.getX();
                dragY = drag.getY();
            }
        });
        addEventHandler(MouseEvent.MOUSE_CLICKED, this::clicked);
        addEventHandler(KeyEvent.KEY_PRESSED, this::panByKey);
    }

    private void clicked(MouseEvent click) {
        if (click.getButton() != MouseButton.PRIMARY || dragged) {
            return;
        }
        if (click.getClickCount() == 2) {
            model.centreOn(click.getX(), click.getY());
        } else {
            model.pick(click.getX(), click.getY());
        }
    }

    private void panByKey(KeyEvent press) {
        double far = press.isShiftDown() ? 4 * KEY_PAN_PX : KEY_PAN_PX;
        switch (press.getCode()) {
            case LEFT -> model.pan(far, 0);
            case RIGHT -> model.pan(-far, 0);
            case UP -> model.pan(0, far);
            case DOWN -> model.pan(0, -far);
            default -> {
                return;
            }
        }
        press.consume();
    }

    @Override
    protected void layoutChildren() {
        double width = Math.max(1, Math.floor(getWidth()));
        double height = Math.max(1, Math.floor(getHeight()));
        for (Canvas canvas : new Canvas[] {ground, marks}) {
            canvas.setWidth(width);
            canvas.setHeight(height);
        }
        model.resize(width, height);
        model.pictureProperty().get().ifPresent(this::paint);
        setAccessibleText(org.wadeplan.desktop.words.Words.of("map.spoken", model.spoken()));
    }

    private void paint(MapPicture picture) {
        ViewBox view = model.viewProperty().get();
        double textPx = text.px();
        new GroundPainter(ground.getGraphicsContext2D(), view, textPx).paint(picture);
        streams.setImage(raster(picture, view));
        streams.setFitWidth(view.widthPx());
        streams.setFitHeight(view.heightPx());
        GraphicsContext pen = marks.getGraphicsContext2D();
        pen.clearRect(0, 0, view.widthPx(), view.heightPx());
        MapLabels labels = new MapLabels(pen, view, textPx);
        FurniturePainter furniture = new FurniturePainter(pen, view, textPx);
        furniture.reserve(labels);
        candidates.reportProperty().get().ifPresent(found -> new CandidatePainter(pen, view, labels)
                .paint(found, candidates.chosenProperty().get()));
        new MarkPainter(pen, view, labels)
                .paint(picture, model.selectedProperty().get());
        furniture.paint();
    }

    private WritableImage raster(MapPicture picture, ViewBox view) {
        double scale = getScene() == null || getScene().getWindow() == null
                ? 1
                : getScene().getWindow().getOutputScaleX();
        int width = (int) Math.ceil(view.widthPx() * scale);
        int height = (int) Math.ceil(view.heightPx() * scale);
        StreamRaster raster = new StreamRaster(width, height);
        raster.draw(picture.streams(), view, scale, STREAM_PX * scale);
        IntBuffer pixels = IntBuffer.allocate(width * height);
        raster.copyTo(pixels, 0x0b, 0x5f, 0x86);
        return new WritableImage(new PixelBuffer<>(width, height, pixels, PixelFormat.getIntArgbPreInstance()));
    }

    /** How many of the picture's pixels carry a stream line; for tests. */
    int streamPixels() {
        return streams.getImage() == null ? 0 : countPixels();
    }

    private int countPixels() {
        int count = 0;
        for (int y = 0; y < streams.getImage().getHeight(); y++) {
            for (int x = 0; x < streams.getImage().getWidth(); x++) {
                count += streams.getImage().getPixelReader().getArgb(x, y) == 0 ? 0 : 1;
            }
        }
        return count;
    }
}
