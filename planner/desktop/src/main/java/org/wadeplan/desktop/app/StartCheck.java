package org.wadeplan.desktop.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Looks whether a window can be opened here, so that a person gets a sentence and not a linkage error. */
public final class StartCheck {

    static final String WINDOW_PACKAGES = "libgtk-3-0 libxtst6 libgl1 libxxf86vm1 fonts-dejavu-core";
    static final String DRAWING_PACKAGES = "libpangoft2-1.0-0 fonts-dejavu-core";

    private static final List<String> DRAWING = List.of("libpangoft2-1.0.so.0");
    private static final List<String> WINDOW =
            List.of("libgtk-3.so.0", "libXtst.so.6", "libGL.so.1", "libXxf86vm.so.1", "libpangoft2-1.0.so.0");

    private final Path root;
    private final Map<String, String> surroundings;

    StartCheck(Path root, Map<String, String> surroundings) {
        this.root = root;
        this.surroundings = surroundings;
    }

    /** What keeps a real window from opening, as one line with what to install; empty where nothing was found. */
    public static Optional<String> forWindow() {
        return onLinux() ? new StartCheck(Path.of("/"), System.getenv()).window() : Optional.empty();
    }

    /** What keeps the tests, which need no screen, from drawing; empty where nothing was found. */
    public static Optional<String> forDrawing() {
        return onLinux() ? new StartCheck(Path.of("/"), System.getenv()).drawing() : Optional.empty();
    }

    private static boolean onLinux() {
        return System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux");
    }

    Optional<String> window() {
        Optional<String> library = missing(WINDOW);
        if (library.isPresent()) {
            return Optional.of("the window needs " + library.get() + ". Debian: apt-get install " + WINDOW_PACKAGES);
        }
        if (!fonts()) {
            return Optional.of("no font was found. Debian: apt-get install " + WINDOW_PACKAGES);
        }
        return display();
    }

    Optional<String> drawing() {
        Optional<String> library = missing(DRAWING);
        if (library.isPresent()) {
            return Optional.of(
                    "JavaFX needs " + library.get() + " to draw text. Debian: apt-get install " + DRAWING_PACKAGES);
        }
        return fonts()
                ? Optional.empty()
                : Optional.of("JavaFX needs a font to draw text. Debian: apt-get install " + DRAWING_PACKAGES);
    }

    private Optional<String> display() {
        String display = surroundings.getOrDefault("DISPLAY", "");
        if (display.isBlank()) {
            return Optional.of("there is no display (DISPLAY is not set). Start it on a desktop; everything that"
                    + " is not the window works without one");
        }
        boolean local = display.matches(":\\d+(\\.\\d+)?");
        Path socket = root.resolve("tmp/.X11-unix/X" + display.replaceAll("^:|\\..*$", ""));
        boolean closed = local && Files.isDirectory(root.resolve("tmp/.X11-unix")) && !Files.exists(socket);
        return closed
                ? Optional.of("the display " + display + " cannot be opened. Check DISPLAY, or start it on a desktop")
                : Optional.empty();
    }

    /** The loader's own list of libraries; where there is none, nothing can be said and nothing is. */
    private Optional<String> missing(List<String> libraries) {
        try {
            String known = Files.readString(root.resolve("etc/ld.so.cache"), StandardCharsets.ISO_8859_1);
            return libraries.stream()
                    .filter(library -> !known.contains(library))
                    .findFirst();
        } catch (IOException noList) {
            return Optional.empty();
        }
    }

    private boolean fonts() {
        String home = surroundings.getOrDefault("HOME", "/nowhere");
        return Stream.of("usr/share/fonts", "usr/local/share/fonts", home + "/.fonts", home + "/.local/share/fonts")
                .map(folder -> root.resolve(folder.startsWith("/") ? folder.substring(1) : folder))
                .anyMatch(StartCheck::holdsFont);
    }

    private static boolean holdsFont(Path folder) {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            return files.anyMatch(
                    file -> file.toString().toLowerCase(Locale.ROOT).matches(".*\\.(ttf|otf|ttc|pfb)"));
        } catch (IOException | java.io.UncheckedIOException unreadable) {
            return false;
        }
    }
}
