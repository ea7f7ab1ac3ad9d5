package org.wadeplan.desktop.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wadeplan.desktop.work.WorkProgress;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.planner.kit.TickOutcome;
import org.wadeplan.planner.kit.TickRequest;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.reach.CandidateReport;
import org.wadeplan.planner.round.LoadTick;
import org.wadeplan.planner.round.Round;

/** What the window asks of the planner. One class plugs the real one in; tests plug in another. */
public interface RoundDesk {

    /** Reads a folder, plans where no error stands in the way, and says everything that was found. Writes nothing. */
    OpenedRound open(Path folder, Set<String> acceptedRepairs, WorkProgress progress);

    /**
     * Writes the pack into a folder, which is made where it is missing.
     *
     * @throws DiskException where the folder cannot be written to
     */
    WrittenPack print(Round round, RoundPlan plan, Path folder, WorkProgress progress) throws DiskException;

    /** Searches a round's streams for candidate reaches, with every stretch that was ruled out. Writes nothing. */
    CandidateReport candidates(Round round, WorkProgress progress);

    /** Judges whether a thing may be ticked as loaded. Writes nothing. */
    TickOutcome check(Round round, WeekInForce week, TickRequest request);

    /**
     * Keeps ticks of load lists in the round folder; what else stands in the file stays.
     *
     * @param before ticks as they are kept now
     * @param after ticks as they are to be
     * @throws DiskException where they cannot be written
     */
    void keepTicks(Path folder, List<LoadTick> before, List<LoadTick> after) throws DiskException;

    /** Follows a pest that somebody saw through the week: what was exposed, what changes, what can be ruled out. Writes nothing. */
    FindReport trace(Round round, WeekInForce week, SeenPest seen, WorkProgress progress);

    /** The folder of the invented demo round; empty where it was not installed. */
    Optional<Path> demo();
}
