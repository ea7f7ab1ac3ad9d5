package org.wadeplan.geo.io;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * The files that make up one shapefile: they have one name and differ in their ending, in any mix of upper and lower case.
 *
 * @param shp the file with the shapes
 * @param place how problems name it
 */
record ShapefileParts(Path shp, SourcePlace place) {

    /** The file beside it with another ending, {@code .dbf}; empty where there is none. */
    Optional<Path> beside(String ending) {
        Path folder = shp.toAbsolutePath().getParent();
        if (folder == null) {
            return Optional.empty();
        }
        String wanted = stem(String.valueOf(shp.getFileName())) + ending;
        Path exact = folder.resolve(wanted);
        if (Files.isRegularFile(exact)) {
            return Optional.of(exact);
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> String.valueOf(file.getFileName()).equalsIgnoreCase(wanted))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .findFirst();
        } catch (IOException closed) {
            return Optional.empty();
        }
    }

    private static String stem(String name) {
        return name.toLowerCase(Locale.ROOT).endsWith(".shp") ? name.substring(0, name.length() - 4) : name;
    }

    /** How problems name one of the files beside it. */
    SourcePlace placeOf(Path other) {
        String name = place.file();
        int folder = Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\'));
        return SourcePlace.file(name.substring(0, folder + 1) + other.getFileName());
    }

    String placeOfMissing(String ending) {
        return stem(place.file()) + ending;
    }

    /** The layer's name: that of the file without its ending. */
    String layerName() {
        return stem(String.valueOf(shp.getFileName()));
    }
}
