package org.wadeplan.planner.week.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.wadeplan.planner.week.Progress;

/**
 * Construction by best insertion, then ruin and recreate: some visits are taken out and put back where the week is best. A
 * slightly longer week is accepted early in the search so that it does not stick. The budget is a number of iterations
 * and all numbers are whole, so the same inputs and seed give the same week everywhere.
 */
final class RuinRecreate {

    /** How many crew minutes worse a week may be at the start of the search and still be gone on from. */
    private static final int START_TOLERANCE_MIN = 60;

    private final WeekModel model;
    private final WeekEvaluator evaluator;
    private final Insertion insertion;
    private final SplittableRandom random;

    RuinRecreate(WeekModel model, WeekEvaluator evaluator, long seed) {
        this.model = model;
        this.evaluator = evaluator;
        this.insertion = new Insertion(model, evaluator);
        this.random = new SplittableRandom(seed);
    }

    WeekState search(int iterations, Progress progress) {
        WeekState current = recreate(WeekState.empty(model.slots().size()), constructionOrder());
        Score currentScore = evaluator.score(current).orElseThrow();
        WeekState best = current;
        Score bestScore = currentScore;
        for (int i = 0; i < iterations && !progress.cancelled(); i++) {
            Optional<WeekState> tried = ruinAndRecreate(current);
            Optional<Score> score = tried.flatMap(evaluator::score);
            long tolerance = (long) START_TOLERANCE_MIN * (iterations - i) / iterations;
            if (score.isPresent() && score.get().within(tolerance, currentScore)) {
                current = tried.get();
                currentScore = score.get();
            }
            if (currentScore.compareTo(bestScore) < 0) {
                best = current;
                bestScore = currentScore;
            }
            progress.report(i + 1, iterations, "order of visits");
        }
        return best;
    }

    /** Most important first; among these the ones with the fewest crew-days to stand in. */
    private List<Job> constructionOrder() {
        return model.jobs().stream()
                .sorted(Comparator.comparing(Job::priority)
                        .thenComparingInt(this::choices)
                        .thenComparingInt(Job::index))
                .toList();
    }

    private int choices(Job job) {
        int fewest = Integer.MAX_VALUE;
        for (Stop stop : job.stops()) {
            int fitting = (int) model.slots().stream()
                    .filter(slot -> stop.fits(slot.index()))
                    .count();
            fewest = Math.min(fewest, fitting);
        }
        return fewest;
    }

    private WeekState recreate(WeekState state, List<Job> jobs) {
        WeekState result = state;
        for (Job job : jobs) {
            result = insertion.into(result, job).orElse(result);
        }
        return result;
    }

    private Optional<WeekState> ruinAndRecreate(WeekState current) {
        WeekState ruined = current.copy();
        boolean[] out = new boolean[model.jobs().size()];
        for (Job job : model.jobs()) {
            out[job.index()] = !placed(current, job);
        }
        markForRuin(current, out);
        removeMarked(ruined, out);
        for (int slot = 0; slot < model.slots().size(); slot++) {
            if (random.nextInt(6) == 0) {
                ruined.decon()[slot] = random.nextInt(3);
            }
        }
        if (evaluator.score(ruined).isEmpty()) {
            System.arraycopy(current.decon(), 0, ruined.decon(), 0, ruined.decon().length);
            if (evaluator.score(ruined).isEmpty()) {
                return Optional.empty();
            }
        }
        return Optional.of(recreate(ruined, shuffled(out)));
    }

    private void markForRuin(WeekState current, boolean[] out) {
        int jobs = model.jobs().size();
        if (jobs == 0) {
            return;
        }
        if (random.nextInt(3) == 0) {
            int[] day = current.stops()[random.nextInt(current.stops().length)];
            for (int stop : day) {
                out[model.stops().get(stop).job()] = true;
            }
        }
        int more = 1 + random.nextInt(3);
        for (int i = 0; i < more; i++) {
            out[random.nextInt(jobs)] = true;
        }
    }

    private void removeMarked(WeekState state, boolean[] out) {
        for (int slot = 0; slot < state.stops().length; slot++) {
            for (int position = state.stops()[slot].length - 1; position >= 0; position--) {
                if (out[model.stops().get(state.stops()[slot][position]).job()]) {
                    state.remove(slot, position);
                }
            }
        }
    }

    private boolean placed(WeekState state, Job job) {
        int first = job.stops().get(0).id();
        for (int[] day : state.stops()) {
            for (int stop : day) {
                if (stop == first) {
                    return true;
                }
            }
        }
        return false;
    }

    /** By priority in half of the cases; in any order in the others, because the score minds priority anyway. */
    private List<Job> shuffled(boolean[] out) {
        List<Job> jobs = new ArrayList<>(
                model.jobs().stream().filter(job -> out[job.index()]).toList());
        for (int i = jobs.size() - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            Job swapped = jobs.set(i, jobs.get(j));
            jobs.set(j, swapped);
        }
        if (random.nextBoolean()) {
            jobs.sort(Comparator.comparing(Job::priority));
        }
        return jobs;
    }
}
