package org.wadeplan.desktop.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StartCheckTest {

    private static final String ALL = "libgtk-3.so.0 libXtst.so.6 libGL.so.1 libXxf86vm.so.1 libpangoft2-1.0.so.0";

    @TempDir
    Path root = Path.of(".");

    @BeforeEach
    void wholeMachine() throws IOException {
        libraries(ALL);
        Files.createDirectories(root.resolve("usr/share/fonts/truetype"));
        Files.writeString(root.resolve("usr/share/fonts/truetype/Some.ttf"), "");
        Files.createDirectories(root.resolve("tmp/.X11-unix"));
        Files.writeString(root.resolve("tmp/.X11-unix/X0"), "");
    }

    private void libraries(String known) throws IOException {
        Files.createDirectories(root.resolve("etc"));
        Files.writeString(root.resolve("etc/ld.so.cache"), known);
    }

    private StartCheck check(Map<String, String> surroundings) {
        return new StartCheck(root, surroundings);
    }

    @Test
    void aWholeMachineHasNothingAgainstIt() {
        assertThat(check(Map.of("DISPLAY", ":0")).window()).isEmpty();
        assertThat(check(Map.of()).drawing()).isEmpty();
    }

    @Test
    void aMissingLibraryIsNamedWithThePackagesToInstall() throws IOException {
        libraries(ALL.replace("libgtk-3.so.0", ""));
        assertThat(check(Map.of("DISPLAY", ":0")).window())
                .contains("the window needs libgtk-3.so.0. Debian: apt-get install "
                        + "libgtk-3-0 libxtst6 libgl1 libxxf86vm1 fonts-dejavu-core");
        assertThat(check(Map.of()).drawing()).isEmpty();
    }

    @Test
    void drawingWithoutAScreenNeedsPangoAndAFont() throws IOException {
        libraries("libc.so.6");
        assertThat(check(Map.of()).drawing())
                .get()
                .asString()
                .contains("libpangoft2-1.0-0")
                .doesNotContain("\n");
        libraries(ALL);
        Files.delete(root.resolve("usr/share/fonts/truetype/Some.ttf"));
        assertThat(check(Map.of()).drawing()).get().asString().contains("fonts-dejavu-core");
    }

    @Test
    void aMissingOrClosedDisplayIsNamed() {
        assertThat(check(Map.of()).window()).get().asString().contains("DISPLAY is not set");
        assertThat(check(Map.of("DISPLAY", ":7")).window()).get().asString().contains("display :7 cannot be opened");
        assertThat(check(Map.of("DISPLAY", "far:10.0")).window()).isEmpty();
    }
}
