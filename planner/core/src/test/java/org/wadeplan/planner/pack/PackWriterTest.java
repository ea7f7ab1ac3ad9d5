package org.wadeplan.planner.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.planner.round.Round;

class PackWriterTest {

    private static final Instant MADE_AT = Instant.parse("2027-09-03T16:00:00Z");

    @Test
    void writes(@TempDir Path folder) throws Exception {
        Round round = SmallRound.round(folder);
        PackResult result = PackWriter.write(round, SmallPlan.of(round), SmallBriefings.all(), Path.of("/tmp/pack-out"), MADE_AT);
        System.out.println(result);
        assertThat(result.files()).isNotEmpty();
    }
}
