package org.wadeplan.planner.kit.wayout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.kit.KitWords;
import org.wadeplan.planner.kit.Shortage;
import org.wadeplan.planner.kit.ShortageSummary;

/** Says what trying a change showed: whether its shortage is gone, and whether anything else got worse. */
final class WayJudge {

    private static final double LEAST = 1e-9;

    private final Replan replan;
    private final TrialWords words;

    WayJudge(Replan replan) {
        this.replan = replan;
        this.words = new TrialWords(replan.round());
    }

    /** Of a shortage of one kind. */
    WayOut judge(Change change, String kind) {
        Trial trial = replan.trial(change.round(), change.tasks());
        double was = replan.before().shortBy(kind);
        double is = trial.shortBy(kind);
        long wasDays = replan.before().shortDays(kind);
        long isDays = trial.shortDays(kind);
        Optional<String> worse = worse(trial, kind);
        if (worse.isPresent()) {
            return out(change, WayOut.Result.REFUSED, worse.get());
        }
        if (isDays == 0) {
            return out(change, WayOut.Result.OPEN, "nothing else got worse" + remark(change, trial));
        }
        if (is < was - LEAST || isDays < wasDays) {
            return out(change, WayOut.Result.PARTLY, partly(trial, kind, is) + remark(change, trial));
        }
        return out(change, WayOut.Result.REFUSED, "it is still short of " + KitWords.number(is));
    }

    /** Of a crew-day whose vehicle may not drive. */
    WayOut judgeVehicle(Change change, Shortage of) {
        Trial trial = replan.trial(change.round(), change.tasks());
        boolean gone = trial.kit().vehicles().stream()
                .noneMatch(one -> one.date().equals(of.date()) && one.crews().equals(of.crews()));
        Optional<String> worse = worse(trial, "vehicle");
        if (worse.isPresent() || !gone) {
            return out(change, WayOut.Result.REFUSED, worse.orElse("that vehicle may not drive either"));
        }
        return out(change, WayOut.Result.OPEN, "nothing else got worse" + remark(change, trial));
    }

    private static WayOut out(Change change, WayOut.Result result, String found) {
        return new WayOut(change.cost(), change.what(), result, found);
    }

    private static String remark(Change change, Trial trial) {
        String remark = change.remark().apply(trial);
        return remark.isBlank() ? "" : "; " + remark;
    }

    private static String partly(Trial trial, String kind, double is) {
        return ShortageSummary.of(trial.kit()).stream()
                .filter(one -> one.kind().equals(kind))
                .findFirst()
                .map(one -> "still " + KitWords.quantity(is, one.unit()) + " short on " + KitWords.days(one.days()))
                .orElse("");
    }

    private Optional<String> worse(Trial trial, String kind) {
        List<String> found = new ArrayList<>();
        List<Problem> broken = trial.newErrors(replan.before());
        broken.stream().limit(1).forEach(problem -> found.add(words.of(problem, trial)));
        if (broken.size() > 1) {
            found.add((broken.size() - 1) + " more rules broken");
        }
        for (ShortageSummary other : ShortageSummary.of(trial.kit())) {
            double grown = other.shortBy() - replan.before().shortBy(other.kind());
            boolean more = grown > LEAST
                    || trial.shortDays(other.kind()) > replan.before().shortDays(other.kind());
            if (!other.kind().equals(kind) && more) {
                found.add(KitWords.kind(other.kind()) + " would be short by "
                        + KitWords.quantity(other.shortBy(), other.unit()) + " on " + KitWords.days(other.days()));
            }
        }
        if (trial.kit().vehicles().size() > replan.before().kit().vehicles().size()) {
            found.add("another crew-day would have no vehicle");
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", found));
    }
}
