package org.wadeplan.planner.week.search;

import java.util.Arrays;
import java.util.Optional;

/** Puts one job, all of its parts together, where the whole week is best. */
final class Insertion {

    /** More parts than this in one crew-day are never tried. */
    private static final int MOST_STOPS_A_DAY = 6;

    private final WeekModel model;
    private final WeekEvaluator evaluator;
    private final AloneCheck alone;
    private Optional<WeekState> best = Optional.empty();
    private Optional<Score> bestScore = Optional.empty();

    Insertion(WeekModel model, WeekEvaluator evaluator) {
        this.model = model;
        this.evaluator = evaluator;
        this.alone = new AloneCheck(model);
    }

    /**
     * The best week with the job in it; empty where it fits nowhere. Where it fits nowhere, or only on a reserve day, it is
     * tried with another way of cleaning at the end of each crew-day in turn.
     */
    Optional<WeekState> into(WeekState state, Job job) {
        best = Optional.empty();
        bestScore = Optional.empty();
        place(state, job, 0, -1, -1);
        long reserveBefore = evaluator
                .score(state)
                .map(score -> score.levels()[Score.RESERVE_VISITS])
                .orElse(0L);
        if (bestScore.isEmpty() || bestScore.get().levels()[Score.RESERVE_VISITS] > reserveBefore) {
            tryPuttingAside(state, job);
        }
        return best;
    }

    private void tryPuttingAside(WeekState state, Job job) {
        for (int slot = 0; slot < model.slots().size(); slot++) {
            for (int decon = WeekState.TREAT_OWN; decon <= WeekState.PUT_ASIDE; decon++) {
                if (state.decon()[slot] != decon && state.stops()[slot].length > 0) {
                    WeekState changed = state.copy();
                    changed.decon()[slot] = decon;
                    place(changed, job, 0, -1, -1);
                }
            }
        }
    }

    private void place(WeekState state, Job job, int order, int slotBefore, int positionBefore) {
        if (order == job.stops().size()) {
            keepIfBetter(state);
            return;
        }
        Stop stop = job.stops().get(order);
        boolean sameDay = order > 0 && !stop.onLaterDay();
        int first = sameDay ? slotBefore : Math.max(0, slotBefore);
        int last = sameDay ? slotBefore : model.slots().size() - 1;
        for (int slot = first; slot <= last; slot++) {
            if (stop.fits(slot) && gapCanHold(job, order, slotBefore, slot)) {
                int from = slot == slotBefore ? positionBefore + 1 : 0;
                placeIn(state, job, order, slot, from);
            }
        }
    }

    private void placeIn(WeekState state, Job job, int order, int slot, int from) {
        int length = state.stops()[slot].length;
        if (length >= MOST_STOPS_A_DAY) {
            return;
        }
        for (int position = from; position <= length; position++) {
            WeekState changed = state.copy();
            changed.insert(slot, position, job.stops().get(order).id());
            boolean last = order + 1 == job.stops().size();
            boolean dayDone = last || job.stops().get(order + 1).onLaterDay();
            if (dayDone && !alone.possible(slot, changed.stops()[slot])) {
                continue;
            }
            if (last || evaluator.walks(changed)) {
                place(changed, job, order + 1, slot, position);
            }
        }
    }

    /** A quick look at dates: a gap in whole days must be able to hold the gap in minutes. */
    private boolean gapCanHold(Job job, int order, int slotBefore, int slot) {
        if (order == 0 || slotBefore < 0) {
            return true;
        }
        Stop stop = job.stops().get(order);
        long days = java.time.temporal.ChronoUnit.DAYS.between(
                model.slots().get(slotBefore).roster().date(),
                model.slots().get(slot).roster().date());
        long leastMin = Math.max(0, days * 1440 - 1440);
        long mostMin = days * 1440 + 2880;
        return leastMin <= stop.part().gapMaxMin().orElse(Integer.MAX_VALUE)
                && mostMin >= stop.part().gapMinMin().orElse(0);
    }

    private void keepIfBetter(WeekState state) {
        Optional<Score> score = evaluator.score(state);
        if (score.isPresent() && (bestScore.isEmpty() || score.get().compareTo(bestScore.get()) < 0)) {
            best = Optional.of(
                    new WeekState(state.stops().clone(), Arrays.copyOf(state.decon(), state.decon().length)));
            bestScore = score;
        }
    }
}
