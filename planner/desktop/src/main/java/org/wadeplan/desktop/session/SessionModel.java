package org.wadeplan.desktop.session;

import java.lang.System.Logger.Level;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.desktop.work.BackgroundWork;
import org.wadeplan.desktop.work.Job;
import org.wadeplan.desktop.work.WorkProgress;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.round.LoadTick;
import org.wadeplan.planner.round.Site;

/** What is open, what is selected, which screen is shown, and everything that can be done to them. */
public final class SessionModel {

    private static final System.Logger LOG = System.getLogger(SessionModel.class.getName());

    private final RoundDesk desk;
    private final BackgroundWork work;
    private final ReadOnlyObjectWrapper<Optional<SessionHistory>> history =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<PlanSession>> session = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObjectProperty<Screen> screen = new SimpleObjectProperty<>(Screen.MAP);
    private final ReadOnlyStringWrapper notice = new ReadOnlyStringWrapper("");

    public SessionModel(RoundDesk desk, BackgroundWork work) {
        this.desk = desk;
        this.work = work;
        history.addListener((property, before, now) -> session.set(now.map(SessionHistory::now)));
    }

    public RoundDesk desk() {
        return desk;
    }

    public BackgroundWork work() {
        return work;
    }

    public ReadOnlyObjectProperty<Optional<PlanSession>> sessionProperty() {
        return session.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<SessionHistory>> historyProperty() {
        return history.getReadOnlyProperty();
    }

    public ObjectProperty<Screen> screenProperty() {
        return screen;
    }

    /** The last thing that happened, in a sentence. */
    public ReadOnlyStringProperty noticeProperty() {
        return notice.getReadOnlyProperty();
    }

    public Optional<PlanSession> session() {
        return session.get();
    }

    public Selection selection() {
        return session().map(PlanSession::selection).orElse(Selection.NOTHING);
    }

    public void say(String sentence) {
        notice.set(sentence);
    }

    /** Reads and plans a folder; the session that was open is replaced. */
    public void open(Path folder) {
        Path whole = folder.toAbsolutePath().normalize();
        read(whole, Set.of(), Optional.empty(), reading -> {
            history.set(Optional.of(
                    SessionHistory.of(reading.session(whole, Set.of()).select(Selection.NOTHING))));
            screen.set(errors() ? Screen.PROBLEMS : Screen.MAP);
        });
    }

    /** Reads the folder again, as it stands now. What was selected and a pest that was seen stay; the rest is forgotten. */
    public void readAgain() {
        session()
                .ifPresent(now -> read(now.folder(), now.acceptedRepairs(), seen(now), reading -> {
                    history.set(Optional.of(SessionHistory.of(
                            reading.session(now.folder(), now.acceptedRepairs()).select(selection()))));
                    if (errors()) {
                        screen.set(Screen.PROBLEMS);
                    }
                }));
    }

    /** Reads again with one more repair agreed to. Can be undone; no file is changed. */
    public void accept(String repair) {
        session().ifPresent(now -> {
            Set<String> repairs = new TreeSet<>(now.acceptedRepairs());
            repairs.add(repair);
            readWith(now, repairs);
        });
    }

    /** Reads again with no repair but those that {@code round.json} names. Can be undone. */
    public void takeBackRepairs() {
        session().filter(now -> !now.acceptedRepairs().isEmpty()).ifPresent(now -> readWith(now, Set.of()));
    }

    private void readWith(PlanSession now, Set<String> repairs) {
        read(
                now.folder(),
                repairs,
                seen(now),
                reading -> push(reading.session(now.folder(), repairs).select(selection())));
    }

    private static Optional<SeenPest> seen(PlanSession now) {
        return now.work().find().map(FindReport::seen);
    }

    /** What was read, with a pest that was seen before traced again in it. */
    private record Reading(OpenedRound opened, Optional<FindReport> find) {

        PlanSession session(Path folder, Set<String> repairs) {
            List<LoadTick> ticks =
                    opened.round().map(round -> round.log().ticks()).orElse(List.of());
            return new PlanSession(folder, repairs, opened, Selection.NOTHING, new DayWork(ticks, find));
        }
    }

    private void read(Path folder, Set<String> repairs, Optional<SeenPest> seen, Consumer<Reading> then) {
        work.run(new Job<>(
                Words.of("work.reading", folderName(folder)),
                progress -> {
                    OpenedRound opened = desk.open(folder, repairs, progress);
                    return new Reading(opened, seen.flatMap(pest -> traced(opened, pest, progress)));
                },
                reading -> {
                    then.accept(reading);
                    say(Words.of(noticeOf(reading.opened()), folderName(folder)));
                },
                this::failed));
    }

    private Optional<FindReport> traced(OpenedRound opened, SeenPest seen, WorkProgress progress) {
        return opened.round().flatMap(round -> opened.inForce().map(week -> desk.trace(round, week, seen, progress)));
    }

    /** Traces a pest that somebody saw, through the week as it was read. Can be undone. */
    public void seen(SeenPest pest) {
        session()
                .ifPresent(now -> work.run(new Job<>(
                        Words.of("work.tracing", pest.pest(), pest.water()),
                        progress -> traced(now.opened(), pest, progress),
                        report -> report.ifPresent(this::found),
                        this::failed)));
    }

    private void found(FindReport report) {
        session().ifPresent(now -> {
            push(now.with(now.work().with(report)));
            screen.set(Screen.CLEANING);
            say(report.title());
        });
    }

    /**
     * Keeps what people did. Ticks are written before anything on the screen changes, so that the screen never shows a tick
     * that is lost when the window closes.
     *
     * @return false where it could not be kept; the person was told
     */
    public boolean keep(DayWork next) {
        return session()
                .filter(now -> !now.work().equals(next))
                .filter(now -> kept(now, next))
                .map(now -> {
                    push(now.with(next));
                    return true;
                })
                .orElse(false);
    }

    private boolean kept(PlanSession now, DayWork next) {
        if (now.work().ticks().equals(next.ticks())) {
            return true;
        }
        try {
            desk.keepTicks(now.folder(), now.work().ticks(), next.ticks());
            return true;
        } catch (DiskException failure) {
            failed(failure);
            return false;
        }
    }

    private static String noticeOf(OpenedRound opened) {
        if (opened.round().isEmpty()) {
            return "notice.unreadable";
        }
        return opened.plan().isPresent() ? "notice.planned" : "notice.notPlanned";
    }

    private static String folderName(Path folder) {
        return Optional.ofNullable(folder.getFileName()).map(Path::toString).orElse(folder.toString());
    }

    private boolean errors() {
        return session().filter(now -> now.count(Severity.ERROR) > 0).isPresent();
    }

    public void select(Selection selection) {
        session().filter(now -> !now.selection().equals(selection)).ifPresent(now -> push(now.select(selection)));
    }

    /** Selects a site of the list; an unknown id changes nothing. */
    public void selectSite(String id) {
        if (sites().contains(id) && !selection().site().equals(Optional.of(id))) {
            select(Selection.site(id));
        }
    }

    /** Goes along the site list, round its ends; -1 for the one before. */
    public void step(int by) {
        List<String> sites = sites();
        if (!sites.isEmpty()) {
            int at = selection().site().map(sites::indexOf).orElse(by > 0 ? -1 : 0);
            select(Selection.site(sites.get(Math.floorMod(at + by, sites.size()))));
        }
    }

    private List<String> sites() {
        return session()
                .flatMap(PlanSession::round)
                .map(round -> round.sites().stream().map(Site::id).toList())
                .orElse(List.of());
    }

    private void push(PlanSession next) {
        history.set(history.get().map(so -> so.next(next)));
    }

    public void undo() {
        goTo(SessionHistory::undo);
    }

    public void redo() {
        goTo(SessionHistory::redo);
    }

    private void goTo(UnaryOperator<SessionHistory> step) {
        history.get()
                .filter(so -> kept(so.now(), step.apply(so).now().work()))
                .ifPresent(so -> history.set(Optional.of(step.apply(so))));
    }

    /** Stops the work that runs; what was open stays as it was. */
    public void cancelWork() {
        work.cancel();
        say(Words.of("notice.stopped"));
    }

    /** The person is told in a sentence; the log has the rest. */
    public void failed(Exception failure) {
        if (failure instanceof DiskException disk) {
            say(disk.problem().sentence());
        } else {
            LOG.log(Level.ERROR, "Fault inside Wadeplan", failure);
            say(Words.of("notice.fault", failure.getClass().getSimpleName()));
        }
    }
}
