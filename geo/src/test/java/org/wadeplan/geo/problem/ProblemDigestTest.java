package org.wadeplan.geo.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ProblemDigestTest {

    private static Stream<Problem> many(Severity severity, int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(
                        i -> new Problem(severity, "gap", SourcePlace.part("s.gpkg", "feature " + i), "a gap", "", ""));
    }

    @Test
    void nineHundredNotesDoNotBuryOneError() {
        Problem error = Problem.error("crs-missing", SourcePlace.file("s.gpkg"), "no system", "", "");
        List<Problem> all =
                Stream.concat(Stream.of(error), many(Severity.NOTE, 900)).toList();

        assertThat(ProblemDigest.of(all))
                .extracting(Problem::sentence)
                .containsExactly(
                        "s.gpkg: no system",
                        "s.gpkg, feature 1: a gap",
                        "s.gpkg, feature 2: a gap",
                        "s.gpkg, feature 3: a gap",
                        "s.gpkg: 897 more like the 3 above. Do: to see every one, ask with --json");
    }

    @Test
    void tenOfAKindAreAllShown() {
        List<Problem> ten = many(Severity.WARNING, 10).toList();

        assertThat(ProblemDigest.of(ten)).isEqualTo(ten);
    }

    @Test
    void manyErrorsOfOneKindAreSummedUpWithTheWayToAcceptThemAll() {
        List<Problem> errors = IntStream.rangeClosed(1, 400)
                .mapToObj(i -> Problem.error(
                        "spike",
                        SourcePlace.part("s.gpkg", "feature " + i),
                        "a spike",
                        "",
                        "--accept drop-spike:X" + i))
                .toList();

        assertThat(ProblemDigest.of(errors.subList(0, 30))).isEqualTo(errors.subList(0, 30));
        assertThat(ProblemDigest.of(errors)).hasSize(11).startsWith(errors.get(0));
        assertThat(ProblemDigest.of(errors).get(10).sentence())
                .isEqualTo("s.gpkg: 390 more like the 10 above. Do: to see every one, ask with --json; to accept this"
                        + " repair for every one after a look at the map, say --accept drop-spike:*");
    }
}
