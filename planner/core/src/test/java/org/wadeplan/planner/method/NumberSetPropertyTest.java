package org.wadeplan.planner.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Set algebra, checked point by point: every end and every middle between ends. */
class NumberSetPropertyTest {

    private static final List<BigDecimal> POINTS = java.util.stream.IntStream.rangeClosed(-1, 21)
            .mapToObj(half -> BigDecimal.valueOf(half).multiply(new BigDecimal("0.5")))
            .toList();

    @Property(seed = "20270906")
    void operationsAgreeWithMembershipPointByPoint(@ForAll("sets") NumberSet a, @ForAll("sets") NumberSet b) {
        for (BigDecimal point : POINTS) {
            boolean inA = a.contains(point);
            boolean inB = b.contains(point);
            assertThat(a.union(b).contains(point)).isEqualTo(inA || inB);
            assertThat(a.intersect(b).contains(point)).isEqualTo(inA && inB);
            assertThat(a.complement().contains(point)).isEqualTo(!inA);
        }
    }

    @Property(seed = "20270906")
    void equalSetsAreEqualRecords(@ForAll("sets") NumberSet a, @ForAll("sets") NumberSet b) {
        assertThat(a.complement().complement()).isEqualTo(a);
        assertThat(a.union(b)).isEqualTo(b.union(a));
        assertThat(a.intersect(b))
                .isEqualTo(a.complement().union(b.complement()).complement());
    }

    @Provide
    Arbitrary<NumberSet> sets() {
        Arbitrary<Optional<BigDecimal>> ends =
                Arbitraries.integers().between(0, 10).map(BigDecimal::valueOf).optional(0.8);
        Arbitrary<Boolean> included = Arbitraries.of(true, false);
        return Combinators.combine(ends, included, ends, included)
                .as(NumberSetPropertyTest::interval)
                .list()
                .ofMaxSize(4)
                .map(parts ->
                        new NumberSet(parts.stream().flatMap(Optional::stream).toList()));
    }

    private static Optional<Interval> interval(
            Optional<BigDecimal> low, boolean lowIncluded, Optional<BigDecimal> high, boolean highIncluded) {
        boolean withLow = lowIncluded && low.isPresent();
        boolean withHigh = highIncluded && high.isPresent();
        return Interval.isEmpty(low, withLow, high, withHigh)
                ? Optional.empty()
                : Optional.of(new Interval(low, withLow, high, withHigh));
    }
}
