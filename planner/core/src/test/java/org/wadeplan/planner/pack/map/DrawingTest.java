package org.wadeplan.planner.pack.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.pack.map.Drawing.Anchor;

class DrawingTest {

    @Test
    void keepsWordsOutOfTheVectorsAndEscapesThem() {
        String html = new Drawing(50, 20)
                .label(10, 5, 9, Anchor.CENTRED, "a < b & c")
                .segment(0, 0, 50, 20, 0.5)
                .html();
        assertThat(html).contains("a &lt; b &amp; c").doesNotContain("<text");
    }

    @Test
    void fillsNothing() {
        String html = new Drawing(50, 20)
                .box(1, 1, 10, 10, 0.4)
                .hatch(1, 1, 10, 10, 2)
                .html();
        assertThat(html).contains("fill=\"none\"").doesNotContain("fill=\"black\"");
    }

    @Test
    void hatchesInsideTheBoxOnly() {
        String html = new Drawing(30, 30).hatch(5, 5, 10, 4, 1).html();
        Matcher places = Pattern.compile("[ML](\\S+) ([0-9.]+)").matcher(html);
        int seen = 0;
        while (places.find()) {
            assertThat(Double.parseDouble(places.group(1))).isBetween(5.0, 15.0);
            assertThat(Double.parseDouble(places.group(2))).isBetween(5.0, 9.0);
            seen++;
        }
        assertThat(seen).isEqualTo(2 * 13);
    }
}
