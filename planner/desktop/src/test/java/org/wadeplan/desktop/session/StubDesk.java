package org.wadeplan.desktop.session;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.desktop.work.WorkProgress;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.search.SearchWatch;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.reach.CandidateReport;
import org.wadeplan.planner.reach.RoundSearch;
import org.wadeplan.planner.reach.SearchRequest;
import org.wadeplan.planner.round.Round;

/** A planner that answers at once with the invented week. A folder called {@code broken} has nothing but an error. */
public final class StubDesk implements RoundDesk {

    /** What was asked of it, in words. */
    public final List<String> asked = new ArrayList<>();

    /** Makes printing fail. */
    public boolean diskFull;

    @Override
    public OpenedRound open(Path folder, Set<String> acceptedRepairs, WorkProgress progress) {
        asked.add("open " + folder.getFileName() + " " + new TreeSet<>(acceptedRepairs));
        progress.at("files", 0.5);
        if (folder.endsWith("broken")) {
            Problem error = Problem.error(
                    "no-round-folder",
                    SourcePlace.file("round.json"),
                    "there is no file of that name",
                    "a round folder: one that holds round.json",
                    "check the path");
            return new OpenedRound(Optional.empty(), Optional.empty(), List.of(error), List.of());
        }
        return InventedWeek.opened();
    }

    @Override
    public WrittenPack print(Round round, RoundPlan plan, Path folder, WorkProgress progress) throws DiskException {
        asked.add("print " + folder.getFileName());
        if (diskFull) {
            throw new DiskException(
                    folder, "the disk is full", "choose another folder", new java.io.IOException("full"));
        }
        return new WrittenPack(
                folder,
                List.of(
                        new WrittenPack.WrittenFile("round_overview.pdf", "the week", 51_200, OptionalInt.of(2)),
                        new WrittenPack.WrittenFile(
                                "2027-09-06_A.pdf", "papers of crew A", 90_000, OptionalInt.of(19))),
                List.of());
    }

    /** The invented week lies on the demo's streams, so the search is the real one. */
    @Override
    public CandidateReport candidates(Round round, WorkProgress progress) {
        asked.add("candidates");
        return RoundSearch.search(round, SearchRequest.all(round.header().search()), SearchWatch.NONE);
    }

    @Override
    public Optional<Path> demo() {
        return Optional.of(Path.of("ilvermoor"));
    }
}
