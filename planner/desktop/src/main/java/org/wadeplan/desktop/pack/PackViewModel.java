package org.wadeplan.desktop.pack;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.wadeplan.desktop.session.PlanSession;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.session.WrittenPack;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.desktop.work.Job;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.CrewDay;

/** What the pack will hold, where it goes, and what was written. */
public final class PackViewModel {

    private final SessionModel model;
    private final Path home;
    private final StringProperty folder = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<List<PackLine>> lines = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyStringWrapper result = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Boolean> ready = new ReadOnlyObjectWrapper<>(false);

    /**
     * A pack for whatever is open.
     *
     * @param home folder in which packs are offered to be written; never the round folder
     */
    public PackViewModel(SessionModel model, Path home) {
        this.model = model;
        this.home = home;
        model.sessionProperty().addListener((property, before, now) -> {
            if (!before.map(PlanSession::opened).equals(now.map(PlanSession::opened))) {
                follow(before, now);
            }
        });
        follow(Optional.empty(), model.session());
    }

    /** The folder to write to, as typed or chosen. */
    public StringProperty folderProperty() {
        return folder;
    }

    public ReadOnlyObjectProperty<List<PackLine>> linesProperty() {
        return lines.getReadOnlyProperty();
    }

    /** What came of writing, in sentences; empty before. */
    public ReadOnlyStringProperty resultProperty() {
        return result.getReadOnlyProperty();
    }

    /** Whether there is a plan to print. */
    public ReadOnlyObjectProperty<Boolean> readyProperty() {
        return ready.getReadOnlyProperty();
    }

    private void follow(Optional<PlanSession> before, Optional<PlanSession> now) {
        ready.set(now.flatMap(PlanSession::plan).isPresent());
        lines.set(now.flatMap(PlanSession::plan).map(PackViewModel::expected).orElse(List.of()));
        result.set("");
        if (!before.map(PlanSession::folder).equals(now.map(PlanSession::folder))) {
            folder.set(now.flatMap(PlanSession::round)
                    .map(round -> home.resolve("wadeplan-packs")
                            .resolve(round.header().id())
                            .toString())
                    .orElse(""));
        }
    }

    private static List<PackLine> expected(RoundPlan plan) {
        List<PackLine> lines = new ArrayList<>();
        lines.add(PackLine.expected(Words.of("pack.overview"), Words.of("pack.overviewWhat")));
        for (CrewDay day : plan.week().crewDays()) {
            String sites = String.join(
                    ", ",
                    day.visits().stream()
                            .map(visit -> visit.site().orElse(visit.place()))
                            .distinct()
                            .toList());
            lines.add(PackLine.expected(
                    Words.of("pack.crewDay", Times.day(day.date()), day.crew()), Words.of("pack.crewDayWhat", sites)));
        }
        lines.add(PackLine.expected(Words.of("pack.carry"), Words.of("pack.carryWhat")));
        return List.copyOf(lines);
    }

    /** What to mind before printing: how much was found, or why nothing can be printed. */
    public String warning() {
        if (model.session().isEmpty()) {
            return Words.of("pack.nothingOpen");
        }
        PlanSession now = model.session().get();
        if (now.plan().isEmpty()) {
            return Words.of("pack.noPlan", Words.count("count.error", now.count(Severity.ERROR)));
        }
        return Words.of(
                "pack.mind",
                Words.count("count.error", now.count(Severity.ERROR)),
                Words.count("count.warning", now.count(Severity.WARNING)));
    }

    /** Writes the pack into the folder. Says what was written, or in plain words why not. */
    public void write() {
        Optional<Round> round = model.session().flatMap(PlanSession::round);
        Optional<RoundPlan> plan = model.session().flatMap(PlanSession::plan);
        Optional<Path> target = target();
        if (round.isEmpty() || plan.isEmpty() || target.isEmpty()) {
            return;
        }
        result.set("");
        model.work()
                .run(new Job<>(
                        Words.of("work.writing"),
                        progress -> model.desk().print(round.get(), plan.get(), target.get(), progress),
                        this::written,
                        this::refused));
    }

    private Optional<Path> target() {
        String typed = folder.get().strip();
        if (typed.isEmpty()) {
            result.set(Words.of("pack.noFolder"));
            return Optional.empty();
        }
        try {
            Path path = Path.of(typed).toAbsolutePath().normalize();
            if (model.session().filter(now -> path.startsWith(now.folder())).isPresent()) {
                result.set(Words.of("pack.inRound", path));
                return Optional.empty();
            }
            return Optional.of(path);
        } catch (InvalidPathException odd) {
            result.set(Words.of("pack.oddFolder", typed));
            return Optional.empty();
        }
    }

    private void written(WrittenPack pack) {
        lines.set(pack.files().stream().map(PackLine::written).toList());
        String said = Words.of(
                "pack.written",
                Words.count("count.file", pack.files().size()),
                Words.count("count.page", pack.pages()),
                pack.folder());
        String old =
                pack.leftOver().isEmpty() ? "" : "\n" + Words.of("pack.leftOver", String.join(", ", pack.leftOver()));
        result.set(said + old);
        model.say(said);
    }

    private void refused(Exception failure) {
        model.failed(failure);
        result.set(
                failure instanceof DiskException disk
                        ? disk.problem().sentence()
                        : model.noticeProperty().get());
    }
}
