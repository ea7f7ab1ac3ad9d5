package org.wadeplan.desktop.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.FieldLog;
import org.wadeplan.planner.round.Round;

/**
 * An open round folder: what was read, what was planned, what was found, what is selected. Never changes; undo is the
 * value before.
 *
 * @param acceptedRepairs repairs to stream lines agreed to in this window only; no file is changed by them
 * @param work what people did and saw on the day
 */
public record PlanSession(
        Path folder, Set<String> acceptedRepairs, OpenedRound opened, Selection selection, DayWork work) {

    public PlanSession {
        acceptedRepairs = Set.copyOf(acceptedRepairs);
    }

    public Optional<Round> round() {
        return opened.round();
    }

    public Optional<RoundPlan> plan() {
        return opened.plan();
    }

    public List<Problem> problems() {
        return opened.problems();
    }

    public int count(Severity severity) {
        return (int) problems().stream()
                .filter(problem -> problem.severity() == severity)
                .count();
    }

    public PlanSession select(Selection now) {
        return new PlanSession(folder, acceptedRepairs, opened, now, work);
    }

    public PlanSession with(DayWork done) {
        return new PlanSession(folder, acceptedRepairs, opened, selection, done);
    }

    /** The week that people work by, as it stands after the last find. */
    public Optional<WeekInForce> inForce() {
        return work.find().map(FindReport::week).or(opened::inForce);
    }

    /** The round as it is known now: with a pest that was seen, and with the ticks that were made. */
    public Optional<Round> known() {
        return work.find().map(FindReport::round).or(this::round).map(round -> {
            FieldLog log = round.log();
            return round.with(new FieldLog(log.agreed(), log.baths(), log.cleanings(), work.ticks()));
        });
    }
}
