package org.wadeplan.desktop.session;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.wadeplan.desktop.work.WorkProgress;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.reach.CandidateReport;
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

    /** The folder of the invented demo round; empty where it was not installed. */
    Optional<Path> demo();
}
