package org.wadeplan.desktop.app;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.wadeplan.desktop.session.FindReport;
import org.wadeplan.desktop.session.OpenedRound;
import org.wadeplan.desktop.session.RoundDesk;
import org.wadeplan.desktop.session.SeenPest;
import org.wadeplan.desktop.session.WeekInForce;
import org.wadeplan.desktop.session.WrittenPack;
import org.wadeplan.desktop.work.WorkProgress;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.search.SearchWatch;
import org.wadeplan.planner.files.LoadTickFile;
import org.wadeplan.planner.files.RoundReader;
import org.wadeplan.planner.kit.KitStates;
import org.wadeplan.planner.kit.TickCheck;
import org.wadeplan.planner.kit.TickOutcome;
import org.wadeplan.planner.kit.TickRequest;
import org.wadeplan.planner.pack.PackFile;
import org.wadeplan.planner.pack.PackResult;
import org.wadeplan.planner.pack.PackWriter;
import org.wadeplan.planner.plan.PlanCheck;
import org.wadeplan.planner.plan.PlanOptions;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.reach.CandidateReport;
import org.wadeplan.planner.reach.RoundSearch;
import org.wadeplan.planner.reach.SearchRequest;
import org.wadeplan.planner.round.Biosecurity;
import org.wadeplan.planner.round.FieldLog;
import org.wadeplan.planner.round.LoadTick;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Progress;

/** The planner, plugged in. The only class of the window that calls it. */
public final class CoreDesk implements RoundDesk {

    private final Clock clock;
    private Optional<Known> known = Optional.empty();

    /**
     * The planner on this machine.
     *
     * @param clock gives the time that is printed on pages
     */
    public CoreDesk(Clock clock) {
        this.clock = clock;
    }

    @Override
    public OpenedRound open(Path folder, Set<String> acceptedRepairs, WorkProgress progress) {
        progress.at("files", 0);
        Checked<Round> read = RoundReader.read(folder, acceptedRepairs);
        if (read.hasErrors()) {
            return new OpenedRound(
                    read.value(), read.problems(), read.value().map(Skies::of).orElse(List.of()));
        }
        Round round = read.value().orElseThrow();
        List<Problem> refusals = RoundPlanner.refusals(round);
        if (!refusals.isEmpty()) {
            List<Problem> found = Stream.concat(refusals.stream(), read.problems().stream())
                    .sorted(Problem.WORST_FIRST)
                    .toList();
            return new OpenedRound(read.value(), found, Skies.of(round));
        }
        RoundPlan plan = RoundPlanner.plan(round, PlanOptions.usual(), new Steps(progress));
        progress.at("check", 1);
        List<Problem> problems = Stream.of(read.problems(), plan.findings(), PlanCheck.findings(round, plan))
                .flatMap(List::stream)
                .distinct()
                .sorted(Problem.WORST_FIRST)
                .toList();
        return new OpenedRound(
                read.value(), Optional.of(plan), problems, Skies.of(round), Optional.of(inForce(round, plan)));
    }

    /** The agreed week where the round has one; it is laid out, not searched. */
    private static WeekInForce inForce(Round round, RoundPlan planned) {
        return round.log().agreed().isEmpty()
                ? new WeekInForce(planned, false)
                : new WeekInForce(RoundPlanner.inForce(round, PlanOptions.usual(), Progress.NONE), true);
    }

    @Override
    public WrittenPack print(Round round, RoundPlan plan, Path folder, WorkProgress progress) throws DiskException {
        progress.at("pages", 0);
        PackResult result = PackWriter.write(round, plan, folder, clock.instant());
        if (!result.written()) {
            throw new DiskException(
                    folder,
                    "nothing was written: " + result.problems().get(0).found(),
                    result.problems().get(0).remedy(),
                    new IOException("a private value would have gone out"));
        }
        return new WrittenPack(
                result.folder(), result.files().stream().map(CoreDesk::file).toList(), result.leftOver());
    }

    @Override
    public CandidateReport candidates(Round round, WorkProgress progress) {
        return RoundSearch.search(round, SearchRequest.all(round.header().search()), new Watch(progress));
    }

    @Override
    public TickOutcome check(Round round, WeekInForce week, TickRequest request) {
        Known now = known.filter(last -> last.holdsFor(round, week)).orElseGet(() -> Known.of(round, week));
        known = Optional.of(now);
        return TickCheck.check(round, week.week(), week.kit(), now.states(), request);
    }

    /** What is known of the kit sets: ticks of loads change nothing of it, so a whole list shares it. */
    private record Known(Biosecurity biosecurity, FieldLog log, WeekInForce week, KitStates states) {

        static Known of(Round round, WeekInForce week) {
            return new Known(round.biosecurity(), round.log(), week, TickCheck.states(round, week.week(), week.kit()));
        }

        boolean holdsFor(Round round, WeekInForce other) {
            return biosecurity.equals(round.biosecurity())
                    && log.cleanings().equals(round.log().cleanings())
                    && log.baths().equals(round.log().baths())
                    && week.equals(other);
        }
    }

    @Override
    public void keepTicks(Path folder, List<LoadTick> before, List<LoadTick> after) throws DiskException {
        for (LoadTick tick : before) {
            if (!after.contains(tick)) {
                LoadTickFile.remove(folder, tick);
            }
        }
        for (LoadTick tick : after) {
            if (!before.contains(tick)) {
                LoadTickFile.add(folder, tick);
            }
        }
    }

    @Override
    public FindReport trace(Round round, WeekInForce week, SeenPest seen, WorkProgress progress) {
        return FindPage.of(round, week, seen, progress);
    }

    /** A search's way of telling, in the window's. */
    private record Watch(WorkProgress progress) implements SearchWatch {

        @Override
        public void report(String step, int done, int of) {
            progress.at(step, of > 0 ? (double) done / of : 0);
        }

        @Override
        public boolean cancelled() {
            return progress.cancelled();
        }
    }

    /** The planner's own way of telling, in the window's. */
    private record Steps(WorkProgress progress) implements Progress {

        @Override
        public void report(int done, int of, String words) {
            progress.at(words, of > 0 ? (double) done / of : 0);
        }

        @Override
        public boolean cancelled() {
            return progress.cancelled();
        }
    }

    private static WrittenPack.WrittenFile file(PackFile file) {
        return new WrittenPack.WrittenFile(file.name(), file.what(), file.bytes(), file.pages());
    }

    /** Beside the program: the launcher says where that is; otherwise it is looked for upwards from the program's jar. */
    @Override
    public Optional<Path> demo() {
        List<Path> starts = new ArrayList<>();
        Optional.ofNullable(System.getProperty("wadeplan.home")).map(Path::of).ifPresent(starts::add);
        jar().ifPresent(starts::add);
        return starts.stream()
                .flatMap(start -> Stream.iterate(start, up -> up != null, Path::getParent))
                .map(at -> at.resolve("demo-sites").resolve("ilvermoor"))
                .filter(demo -> Files.isRegularFile(demo.resolve("round.json")))
                .findFirst();
    }

    private static Optional<Path> jar() {
        CodeSource source = CoreDesk.class.getProtectionDomain().getCodeSource();
        try {
            return source == null
                    ? Optional.empty()
                    : Optional.of(Path.of(source.getLocation().toURI()).toAbsolutePath());
        } catch (URISyntaxException odd) {
            return Optional.empty();
        }
    }
}
