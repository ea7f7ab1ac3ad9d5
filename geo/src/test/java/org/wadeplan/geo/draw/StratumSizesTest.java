package org.wadeplan.geo.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.wadeplan.geo.problem.Problem;

class StratumSizesTest {

    private static SortedMap<String, Long> lengthsKm(Object... nameAndKm) {
        SortedMap<String, Long> lengths = new TreeMap<>(Strata.IN_ORDER);
        for (int i = 0; i < nameAndKm.length; i += 2) {
            lengths.put((String) nameAndKm[i], Math.round(((Number) nameAndKm[i + 1]).doubleValue() * 1e6));
        }
        return lengths;
    }

    private static DrawDesign design(int size, int reservePct, Allocation allocation) {
        return new DrawDesign(size, reservePct, allocation, 100, 150, 1);
    }

    private static Map<String, Integer> sizes(DrawDesign design, SortedMap<String, Long> lengths) {
        return StratumSizes.of(design, lengths).value().orElseThrow();
    }

    private static List<String> sentences(DrawDesign design, SortedMap<String, Long> lengths) {
        return StratumSizes.of(design, lengths).problems().stream()
                .map(Problem::sentence)
                .toList();
    }

    @Test
    void inProportionTheSizeFollowsTheLengthsAndNoStratumGoesWithout() {
        assertThat(sizes(
                        design(50, 25, new Allocation.Proportional()),
                        lengthsKm("1", 301.2, "2", 106.1, "3", 85.5, "4", 80.1, "5", 4.5)))
                .containsExactly(entry("1", 26), entry("2", 9), entry("3", 7), entry("4", 7), entry("5", 1));
    }

    @Test
    void equallySharedTheRestGoesToTheLongest() {
        assertThat(sizes(design(11, 25, new Allocation.Equal()), lengthsKm("1", 10, "2", 30, "3", 20)))
                .containsExactly(entry("1", 3), entry("2", 4), entry("3", 4));
    }

    @Test
    void ofTheSameLengthTheFirstStratumGetsTheRest() {
        assertThat(sizes(design(3, 25, new Allocation.Equal()), lengthsKm("10", 10, "9", 10)))
                .containsExactly(entry("9", 2), entry("10", 1));
    }

    @Test
    void givenSizesAreTaken() {
        assertThat(sizes(
                        design(5, 25, new Allocation.Given(Map.of("BRN", 2, "PEL", 3))),
                        lengthsKm("BRN", 10, "PEL", 9)))
                .containsExactly(entry("BRN", 2), entry("PEL", 3));
    }

    @Test
    void everythingThatIsWrongWithTheWishesIsSaidAtOnce() {
        Map<String, Integer> given = new LinkedHashMap<>();
        given.put("1", 3);
        given.put("7", 2);

        assertThat(sentences(design(0, 20, new Allocation.Given(given)), lengthsKm("1", 0.4, "2", 3)))
                .containsExactly(
                        "draw, reserve: 20 % in reserve are wanted. Allowed: 25 to 100 %: in published surveys about a"
                                + " fifth of drawn sites fell away, and more where land is in private hands. Do: give a"
                                + " share in that range, such as 50",
                        "draw, size: 0 units are wanted. Allowed: 1 to 9999. Do: give the number of reaches that the"
                                + " crews can visit",
                        "draw, strata: the strata's numbers add up to 5. Allowed: the size, 0. Do: correct the numbers"
                                + " or the size",
                        "draw, strata: 3 units and 1 reserves in stratum \"1\", which has 0.40 km. Allowed: 0.60 km or"
                                + " more: room for all reaches end to end. Do: draw at most 2 there, or hold fewer in"
                                + " reserve, or join strata",
                        "draw, strata: there is no stratum \"7\" with any length to draw from. Allowed: one of 1, 2. Do:"
                                + " correct its name, or leave it out",
                        "draw, strata: stratum \"2\" gets 0 units, so its 3.00 km could not be drawn from. Allowed: 1 or"
                                + " more for every stratum. Do: give it a number, or leave its lines out of the frame");
    }

    @Test
    void aSizeMayNotExceedWhatTheFrameHasRoomFor() {
        SortedMap<String, Long> frame = lengthsKm("unknown", 3);

        assertThat(sizes(design(16, 25, new Allocation.Proportional()), frame)).containsExactly(entry("unknown", 16));
        assertThat(sentences(design(17, 25, new Allocation.Proportional()), frame))
                .containsExactly(
                        "draw, size: 17 units and 5 reserves in stratum \"unknown\", which has 3.00 km. Allowed:"
                                + " 3.30 km or more: room for all reaches end to end. Do: draw at most 16 there, or hold fewer in"
                                + " reserve, or join strata");
    }

    @Test
    void fewerUnitsThanStrataAndAnEmptyFrameAreRefused() {
        assertThat(sentences(design(1, 25, new Allocation.Equal()), lengthsKm("1", 10, "2", 10)))
                .containsExactly(
                        "draw, size: 1 units cannot be shared among 2 strata: 1, 2. Allowed: at least 2, one for"
                                + " each stratum, better two or more. Do: draw more units, or use fewer strata");
        assertThat(sentences(design(1, 25, new Allocation.Equal()), lengthsKm()))
                .containsExactly(
                        "draw, strata: no stretch of the mapped lines may be drawn. Allowed: some length that is"
                                + " neither denied, dry, filtered out nor non-target. Do: look at the record of the frame for what"
                                + " was left out and why");
    }
}
