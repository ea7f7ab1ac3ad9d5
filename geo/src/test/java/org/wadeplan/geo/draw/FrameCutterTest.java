package org.wadeplan.geo.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.draw.FrameCutter.Exclusion;
import org.wadeplan.geo.draw.FrameCutter.Part;
import org.wadeplan.geo.lines.LineSet;
import org.wadeplan.geo.lines.LineSetBuilder;

class FrameCutterTest {

    private static LineSet lines() {
        LineSetBuilder lines = new LineSetBuilder();
        lines.add("BRN", new double[] {0, 0, 1000, 0}, 2);
        lines.add("HSK", new double[] {0, 500, 400, 500}, 2);
        return lines.build();
    }

    @Test
    void cutsWhereStrataChangeAndWhereSomethingIsLeftOut() {
        DrawFrame frame = FrameCutter.cut(
                lines(),
                List.of(new Part(0, 0, 600, "1"), new Part(0, 600, 1000, "2")),
                List.of(
                        new Exclusion(0, 500, 700, Standing.DENIED, "consent refused on P-1"),
                        new Exclusion(0, 650, 750, Standing.DRY, "dry at BRN-03")));

        assertThat(frame.stretches())
                .containsExactly(
                        new FrameStretch(0, 0, 500, "1", Standing.ELIGIBLE, List.of()),
                        new FrameStretch(0, 500, 600, "1", Standing.DENIED, List.of("consent refused on P-1")),
                        new FrameStretch(0, 600, 650, "2", Standing.DENIED, List.of("consent refused on P-1")),
                        new FrameStretch(
                                0, 650, 700, "2", Standing.DRY, List.of("consent refused on P-1", "dry at BRN-03")),
                        new FrameStretch(0, 700, 750, "2", Standing.DRY, List.of("dry at BRN-03")),
                        new FrameStretch(0, 750, 1000, "2", Standing.ELIGIBLE, List.of()),
                        new FrameStretch(1, 0, 400, "unknown", Standing.ELIGIBLE, List.of()));
    }

    @Test
    void theRecordOfLengthsAddsUpToWhatIsMapped() {
        FrameLengths lengths = FrameCutter.cut(
                        lines(),
                        List.of(),
                        List.of(
                                new Exclusion(1, -5, 400.0004, Standing.NON_TARGET, "pipe"),
                                new Exclusion(0, 900, 1000, Standing.DENIED, "consent refused on P-1"),
                                new Exclusion(0, 0, 50, Standing.FILTERED, "over 500 m from a road")))
                .lengths();

        assertThat(lengths)
                .isEqualTo(new FrameLengths(
                        1400,
                        850,
                        50,
                        100,
                        0,
                        400,
                        List.of(
                                new FrameLengths.LeftOut("denied: consent refused on P-1", 100),
                                new FrameLengths.LeftOut("filtered: over 500 m from a road", 50),
                                new FrameLengths.LeftOut("non-target: pipe", 400))));
        assertThat(lengths.sharePct(lengths.eligibleM())).isEqualTo(100 * 850 / 1400.0);
    }

    @Test
    void thePrintChangesWithAnythingThatADrawDependsOn() {
        String whole = FrameCutter.cut(lines(), List.of(), List.of()).print();

        assertThat(whole)
                .hasSize(64)
                .isEqualTo(FrameCutter.cut(lines(), List.of(), List.of()).print());
        assertThat(FrameCutter.cut(lines(), List.of(new Part(1, 0, 400, "2")), List.of())
                        .print())
                .isNotEqualTo(whole);
        assertThat(FrameCutter.cut(lines(), List.of(), List.of(new Exclusion(1, 0, 400, Standing.DRY, "dry")))
                        .print())
                .isNotEqualTo(whole);
    }
}
