package org.wadeplan.desktop.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PaletteTest {

    /** Least contrast for text: WCAG 2.1, success criterion 1.4.3 (level AA). */
    private static final double LEAST = 4.5;

    private static final Path CSS = Path.of("src/main/resources/org/wadeplan/desktop/wadeplan.css");

    @ParameterizedTest
    @CsvSource({
        // WCAG 2.1, definition of contrast ratio: black on white is 21, a colour on itself 1.
        "#000000, #ffffff, 21.0",
        "#123456, #123456, 1.0",
        // From memory: the grey that just fails on white.
        "#777777, #ffffff, 4.48"
    })
    void contrastFollowsTheStandard(String one, String other, double expected) {
        assertThat(Palette.contrast(Color.web(one), Color.web(other))).isCloseTo(expected, within(0.01));
    }

    @Test
    void textOfTheMapCanBeRead() {
        assertThat(Palette.contrast(Palette.INK, Palette.PAPER)).isGreaterThan(LEAST);
        assertThat(Palette.contrast(Palette.STREAM, Palette.PAPER)).isGreaterThan(LEAST);
        assertThat(Palette.contrast(Palette.SELECTED, Palette.PAPER)).isGreaterThan(LEAST);
        assertThat(Palette.contrast(Palette.QUIET, Color.web("#e6e6e0"))).isGreaterThan(LEAST);
        assertThat(Palette.contrast(Palette.CATCHMENT.darker(), Palette.CATCHMENT_FILL))
                .isGreaterThan(LEAST);
        assertThat(Palette.contrast(Palette.ERROR, Color.web("#f7e3dc"))).isGreaterThan(LEAST);
    }

    @ParameterizedTest
    @EnumSource(Mark.class)
    void everyMarkStandsOutFromWhite(Mark mark) {
        assertThat(Palette.contrast(mark.color(), Color.WHITE)).isGreaterThan(LEAST);
    }

    @Test
    void everyMarkHasAnOutlineOfItsOwn() {
        Set<String> outlines = new HashSet<>();
        for (Mark mark : Mark.values()) {
            assertThat(outlines.add(java.util.Arrays.toString(mark.outline())))
                    .as(mark.name())
                    .isTrue();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "load, #ffffff",
        "travel, #ffffff",
        "visit, #ffffff",
        "reserve, #ffffff",
        "rinse, #ffffff",
        "decon, #ffffff",
        "dirty, #1b2a30",
        "drying, #1b2a30",
        "wait, #1b2a30"
    })
    void wordsInBarsCanBeReadOnEveryStripe(String kind, String text) throws IOException {
        everyStripeStandsOutFrom("bar-" + kind, text);
    }

    @ParameterizedTest
    @CsvSource({
        "clean-dry, #1b2a30",
        "in-use, #ffffff",
        "dirty, #1b2a30",
        "treating, #ffffff",
        "drying, #1b2a30",
        "released, #1b2a30",
        "out-of-service, #ffffff"
    })
    void wordsInSpansOfKitSetsCanBeReadOnEveryStripe(String state, String text) throws IOException {
        everyStripeStandsOutFrom("set-" + state, text);
    }

    private static void everyStripeStandsOutFrom(String style, String text) throws IOException {
        Matcher rule = Pattern.compile("\\." + style + "[^{}\\n]*\\{[^}]*?-fx-background-color: ([^;]+);")
                .matcher(Files.readString(CSS));
        assertThat(rule.find()).isTrue();
        Matcher color = Pattern.compile("#[0-9a-f]{6}").matcher(rule.group(1));
        int colors = 0;
        while (color.find()) {
            colors++;
            assertThat(Palette.contrast(Color.web(color.group()), Color.web(text)))
                    .as(style + " " + color.group())
                    .isGreaterThan(LEAST);
        }
        assertThat(colors).isPositive();
    }
}
