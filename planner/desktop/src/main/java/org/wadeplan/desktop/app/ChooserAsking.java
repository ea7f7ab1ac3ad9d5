package org.wadeplan.desktop.app;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.DirectoryChooser;
import javafx.stage.Stage;
import org.wadeplan.desktop.find.FindDialog;
import org.wadeplan.desktop.find.FindForm;
import org.wadeplan.desktop.session.SeenPest;

/** Asks with the system's own folder chooser and with dialogs. */
final class ChooserAsking implements Asking {

    private final Stage stage;

    ChooserAsking(Stage stage) {
        this.stage = stage;
    }

    @Override
    public Optional<Path> folder(String title, Optional<Path> startIn) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(title);
        startIn.map(ChooserAsking::existing)
                .filter(Files::isDirectory)
                .ifPresent(folder -> chooser.setInitialDirectory(folder.toFile()));
        return Optional.ofNullable(chooser.showDialog(stage)).map(File::toPath);
    }

    @Override
    public Optional<SeenPest> pest(FindForm form) {
        return new FindDialog(stage, form).showAndWait();
    }

    private static Path existing(Path wanted) {
        Path folder = wanted;
        while (!Files.isDirectory(folder)) {
            Path parent = folder.getParent();
            if (parent == null) {
                return folder;
            }
            folder = parent;
        }
        return folder;
    }
}
