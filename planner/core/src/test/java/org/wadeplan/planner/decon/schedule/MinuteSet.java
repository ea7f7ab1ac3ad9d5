package org.wadeplan.planner.decon.schedule;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.round.DeconResource;

/** One kit set on the bench, played minute by minute. */
final class MinuteSet {

    final BenchRequest request;
    Instant endOfStep;
    private int next;
    private boolean begun;

    MinuteSet(BenchRequest request) {
        this.request = request;
        this.endOfStep = request.start();
    }

    boolean done() {
        return begun && next == request.steps().size();
    }

    /** Takes as many steps as this minute allows. */
    void play(Instant now, List<MinuteSet> earlier, List<DeconResource> places) {
        if (!begun) {
            long before = earlier.stream()
                    .filter(other -> other.request.crew().equals(request.crew()) && other.attendedAfter(now))
                    .count();
            begun = !now.isBefore(request.start()) && before < request.crewSize();
            endOfStep = begun ? now : endOfStep;
        }
        while (begun && !done() && !endOfStep.isAfter(now) && free(now, earlier, places)) {
            DeconStep step = request.steps().get(next);
            endOfStep = now.plus(Duration.ofMinutes(step.minutes()));
            next++;
        }
    }

    private boolean free(Instant now, List<MinuteSet> earlier, List<DeconResource> places) {
        Optional<String> where = request.steps().get(next).resource();
        boolean stays = next > 0 && request.steps().get(next - 1).resource().equals(where);
        if (where.isEmpty() || stays) {
            return true;
        }
        int room = places.stream()
                .filter(place -> place.id().equals(where.get()))
                .mapToInt(DeconResource::capacityKitSets)
                .findFirst()
                .orElseThrow();
        long toCome = earlier.stream()
                .mapToLong(other -> other.visitsLeft(where.get(), now))
                .sum();
        return toCome < room;
    }

    private boolean attendedAfter(Instant now) {
        return !begun || attendedLeft() || (lastDoneWasAttended() && endOfStep.isAfter(now));
    }

    private boolean attendedLeft() {
        return request.steps().subList(next, request.steps().size()).stream().anyMatch(DeconStep::crewBusy);
    }

    private boolean lastDoneWasAttended() {
        return next > 0 && request.steps().get(next - 1).crewBusy();
    }

    /** Stays in that place that are not over: the one it is in, and those to come. */
    private long visitsLeft(String place, Instant now) {
        long left = 0;
        for (int i = Math.max(0, next - 1); i < request.steps().size(); i++) {
            boolean there =
                    request.steps().get(i).resource().filter(place::equals).isPresent();
            boolean goesOn = i > 0
                    && request.steps()
                            .get(i - 1)
                            .resource()
                            .filter(place::equals)
                            .isPresent();
            boolean current = i == next - 1;
            if (there && current) {
                left += endOfStep.isAfter(now) || nextStays(place) ? 1 : 0;
            } else if (there && !goesOn) {
                left++;
            }
        }
        return left;
    }

    private boolean nextStays(String place) {
        return next < request.steps().size()
                && request.steps().get(next).resource().filter(place::equals).isPresent();
    }
}
