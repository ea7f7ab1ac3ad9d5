package org.wadeplan.planner.decon.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.wadeplan.planner.decon.schedule.Benches.Bench;
import org.wadeplan.planner.round.DeconResource;

/** Benches at random: what more room and less work bring, and the same rule played minute by minute. */
class BenchSchedulerPropertyTest {

    @Provide
    Arbitrary<Bench> benches() {
        return Benches.benches();
    }

    @Property(seed = "20270906")
    void isWhatTheRulePlayedMinuteByMinuteGives(@ForAll("benches") Bench bench) {
        assertThat(Benches.releases(bench)).isEqualTo(Benches.playedByTheMinute(bench));
    }

    @Property(seed = "20270906")
    void oneMoreTubNeverMakesAnyReleaseLater(@ForAll("benches") Bench bench, @ForAll int which) {
        noneLater(Benches.releases(bench), Benches.releases(bench.withOneMore(Math.floorMod(which, 3))));
    }

    @Property(seed = "20270906")
    void oneCleaningFewerNeverMakesAnotherLater(@ForAll("benches") Bench bench, @ForAll int which) {
        noneLater(
                Benches.releases(bench),
                Benches.releases(
                        bench.without(Math.floorMod(which, bench.requests().size()))));
    }

    private static void noneLater(Map<String, Instant> before, Map<String, Instant> after) {
        after.forEach((set, released) ->
                assertThat(released).as(set).isBeforeOrEqualTo(before.getOrDefault(set, Instant.MIN)));
    }

    @Property(seed = "20270906")
    void noTubEverHoldsTwoSetsAtOnce(@ForAll("benches") Bench bench) {
        List<BenchTask> tasks = BenchScheduler.schedule(bench.requests(), bench.places());
        for (BenchTask task : tasks) {
            for (BenchTask other : tasks) {
                for (BenchStep step : task.steps()) {
                    for (BenchStep clash : other.steps()) {
                        boolean same = task.equals(other) || step.place().isEmpty();
                        if (!same && step.place().equals(clash.place())) {
                            assertThat(step.start().isBefore(clash.end())
                                            && clash.start().isBefore(step.end()))
                                    .as("%s and %s", step, clash)
                                    .isFalse();
                        }
                    }
                }
            }
        }
        for (DeconResource place : bench.places()) {
            assertThat(tasks.stream()
                            .flatMap(task -> task.steps().stream())
                            .flatMap(step -> step.place().stream())
                            .filter(one -> one.resource().equals(place.id())))
                    .allSatisfy(one -> assertThat(one.number()).isBetween(1, place.capacityKitSets()));
        }
    }

    @Property(seed = "20270906")
    void neverTakesLessThanTheBoundShownBesideIt(@ForAll("benches") Bench bench) {
        List<BenchTask> tasks = BenchScheduler.schedule(bench.requests(), bench.places());
        assertThat(BenchBound.of(tasks))
                .allSatisfy(bound -> assertThat(bound.takenMin()).isGreaterThanOrEqualTo(bound.atLeastMin()));
    }
}
