package org.wadeplan.planner.decon.record;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import org.wadeplan.planner.decon.TransferRules;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.WeekPlan;

/** Answers whether a kit set may leave for a water at a moment, by the cleanings on record. */
public final class ReleaseCheck {

    private final Round round;
    private final TransferRules rules;
    private final List<KitExposure> exposures;
    private final List<CleaningJudgement> judgements;

    private ReleaseCheck(Round round, List<KitExposure> exposures, List<CleaningJudgement> judgements) {
        this.round = round;
        this.rules = new TransferRules(round);
        this.exposures = exposures;
        this.judgements = judgements;
    }

    /** Judges every cleaning on record once, for any number of questions. */
    public static ReleaseCheck of(Round round, WeekPlan inForce) {
        List<KitExposure> exposures = KitExposures.of(round, inForce);
        return new ReleaseCheck(round, exposures, CleaningJudge.judge(round, exposures));
    }

    public List<CleaningJudgement> judgements() {
        return judgements;
    }

    /**
     * The answer with ways out that were tried.
     *
     * @param kitSet id of a kit set of the round
     */
    public ReleaseAnswer answer(String kitSet, String toWater, Instant at) {
        ReleaseAnswer plain = plain(kitSet, toWater, at);
        return plain.mayLeave() ? plain : new WaysOut(round, rules, this::plain).added(plain, openWaters(plain));
    }

    private ReleaseAnswer plain(String kitSet, String toWater, Instant at) {
        KitSet set = round.store()
                .kitSet(kitSet)
                .orElseThrow(() -> new IllegalArgumentException("no such kit set: " + kitSet));
        List<KitExposure> touched = exposures.stream()
                .filter(one -> one.kitSet().equals(kitSet) && one.from().isBefore(at))
                .sorted(Comparator.comparing(KitExposure::from))
                .toList();
        List<CleaningJudgement> own = judgements.stream()
                .filter(one ->
                        one.kitSet().equals(kitSet) && one.record().startedAt().isBefore(at))
                .toList();
        return new LegCheck(round, rules, set, toWater, at).answer(touched, own);
    }

    private static List<String> openWaters(ReleaseAnswer answer) {
        return answer.held().stream()
                .filter(one -> !one.open().isEmpty())
                .map(ReleaseAnswer.Held::water)
                .distinct()
                .toList();
    }
}
