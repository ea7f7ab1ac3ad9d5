package org.wadeplan.geo.lines;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LineIdsTest {

    @Test
    void everyIdComesBackAsItWentIn() {
        List<String> ids = List.of(
                "17",
                "0",
                "17/2",
                "017",
                "17/02",
                "-3",
                "",
                "/",
                "17/",
                "/2",
                "17/2/1",
                "99999999999999999999",
                "17/9999999999",
                "Hesk Water",
                "٣",
                "42");
        LineIds kept = new LineIds();
        ids.forEach(kept::add);

        assertThat(IntStream.range(0, kept.count()).mapToObj(kept::get)).containsExactlyElementsOf(ids);
    }

    @Test
    void manyIdsOfBothKindsComeBackAfterGrowing() {
        LineIds kept = new LineIds();
        List<String> ids = IntStream.range(0, 5000)
                .mapToObj(i -> i % 7 == 3 ? "s" + i : i + "/" + (i % 5))
                .toList();
        ids.forEach(kept::add);

        assertThat(IntStream.range(0, kept.count()).mapToObj(kept::get)).containsExactlyElementsOf(ids);
    }
}
