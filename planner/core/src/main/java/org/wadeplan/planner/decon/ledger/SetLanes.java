package org.wadeplan.planner.decon.ledger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.wadeplan.planner.decon.DeconStep;
import org.wadeplan.planner.decon.record.CleaningJudge;
import org.wadeplan.planner.decon.record.CleaningJudgement;
import org.wadeplan.planner.decon.record.KitExposures;
import org.wadeplan.planner.round.CleaningRecord;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.KitSet;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.DeconTask;
import org.wadeplan.planner.week.WeekPlan;

/** Follows a kit set through a week. */
final class SetLanes {

    private final Round round;
    private final WeekPlan week;
    private final List<Touches.Visit> visits;
    private final List<CleaningJudgement> judgements;

    SetLanes(Round round, WeekPlan week) {
        this.round = round;
        this.week = week;
        this.visits = Touches.visits(round, week);
        this.judgements = CleaningJudge.judge(round, KitExposures.of(round, week));
    }

    Lane of(KitSet set) {
        List<Touch> own = visits.stream()
                .filter(visit -> visit.activity().kitSets().contains(set.id()))
                .map(Touches.Visit::touch)
                .toList();
        List<Touch> touches = new ArrayList<>(Touches.before(round, set.exposedTo(), set.wetSince()));
        touches.addAll(set.purpose() == KitPurpose.TRAPS ? Touches.withSoaks(visits, own) : own);
        return new Lane(set, set.note().orElse(""), false, 1, List.copyOf(touches), treated(set, touches));
    }

    /** What is on record, and what is planned for stretches between two uses of which nothing is on record. */
    private List<Treated> treated(KitSet set, List<Touch> touches) {
        List<Treated> treated = new ArrayList<>();
        Set<Long> recorded = new TreeSet<>();
        for (CleaningJudgement judgement : judgements) {
            if (judgement.kitSet().equals(set.id())) {
                treated.add(done(judgement));
                recorded.add(usesBefore(touches, judgement.record().startedAt()));
            }
        }
        week.decon().stream()
                .filter(task -> task.kitSet().equals(set.id()))
                .filter(task -> !recorded.contains(usesBefore(touches, task.start())))
                .map(SetLanes::planned)
                .forEach(treated::add);
        treated.sort(Comparator.comparing(Treated::start));
        return List.copyOf(treated);
    }

    private static long usesBefore(List<Touch> touches, Instant at) {
        return touches.stream().filter(touch -> touch.from().isBefore(at)).count();
    }

    private static Treated done(CleaningJudgement judgement) {
        CleaningRecord record = judgement.record();
        List<String> reasons = new ArrayList<>(judgement.reasons());
        judgement
                .override()
                .ifPresent(let -> reasons.add(
                        "let go all the same by " + let.by() + ": " + let.reason() + "; that credits nothing"));
        return new Treated(
                record.id() + ", " + record.treatment() + " as "
                        + record.mode().name().toLowerCase(Locale.ROOT),
                record.operator(),
                record.startedAt(),
                record.endedAt(),
                judgement.accepted() ? judgement.dryAt() : Optional.empty(),
                judgement.credits().stream()
                        .map(credit -> new Treated.Credit(credit.cover(), credit.from()))
                        .toList(),
                List.of(),
                true,
                List.copyOf(reasons));
    }

    private static Treated planned(DeconTask task) {
        return new Treated(
                words(task.steps()),
                "crew " + task.crew(),
                task.start(),
                task.crewFree(),
                Optional.of(task.released()),
                task.covers().stream()
                        .map(cover -> new Treated.Credit(cover, task.released()))
                        .toList(),
                task.steps(),
                false,
                List.of());
    }

    /** {@code brush 20, soak 40 (60 °C), rinse 30}: minutes for which somebody is busy. */
    static String words(List<DeconStep> steps) {
        return steps.stream()
                .filter(DeconStep::crewBusy)
                .map(step -> step.step() + " " + step.minutes()
                        + step.target().map(target -> " (" + target + ")").orElse(""))
                .collect(Collectors.joining(", "));
    }
}
