package org.wadeplan.desktop.session;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.wadeplan.desktop.work.WorkProgress;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import org.wadeplan.geo.search.SearchWatch;
import org.wadeplan.planner.kit.TickObjection;
import org.wadeplan.planner.kit.TickOutcome;
import org.wadeplan.planner.kit.TickRequest;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.reach.CandidateReport;
import org.wadeplan.planner.reach.RoundSearch;
import org.wadeplan.planner.reach.SearchRequest;
import org.wadeplan.planner.round.LoadTick;
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
            return new OpenedRound(Optional.empty(), List.of(error), List.of());
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

    /** Battery pack 2 may not go, unless somebody lets it. */
    @Override
    public TickOutcome check(Round round, WeekInForce week, TickRequest request) {
        List<TickObjection> against = !request.item().equals("P2")
                ? List.of()
                : List.of(new TickObjection(
                        TickObjection.Ground.NOT_CLEAN_AND_DRY, "P2 is dirty (mud in the plug)", "clean it"));
        if (!against.isEmpty() && request.override().isEmpty()) {
            return new TickOutcome.Refused(against);
        }
        LoadTick tick = new LoadTick(
                request.date(),
                request.crew(),
                request.item(),
                request.at(),
                request.by(),
                request.override().map(TickRequest.TickOverride::by),
                request.override().map(TickRequest.TickOverride::reason));
        return new TickOutcome.Accepted(tick, against, List.of());
    }

    @Override
    public void keepTicks(Path folder, List<LoadTick> before, List<LoadTick> after) throws DiskException {
        asked.add("keep " + after.stream().map(LoadTick::item).toList());
        if (diskFull) {
            throw new DiskException(folder, "the disk is full", "make room", new java.io.IOException("full"));
        }
    }

    /** Flags the traps, and has the cleaning of Tuesday last longer. */
    @Override
    public FindReport trace(Round round, WeekInForce week, SeenPest seen, WorkProgress progress) {
        asked.add("trace " + seen.pest() + " " + seen.water());
        progress.at("exposure", 0.5);
        return new FindReport(
                seen,
                seen.pest() + " was seen in " + seen.water(),
                List.of(
                        new FindReport.Section("Kit sets that were exposed", List.of("T2, from Mon 15:25 on")),
                        new FindReport.Section("Notices due", List.of())),
                Map.of("T2", new FindReport.Flag(true, "was in the Pell after the last clear visit")),
                round,
                new WeekInForce(InventedWeek.planWithLongerClean(), false));
    }

    @Override
    public Optional<Path> demo() {
        return Optional.of(Path.of("ilvermoor"));
    }
}
