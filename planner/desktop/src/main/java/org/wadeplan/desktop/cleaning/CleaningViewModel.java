package org.wadeplan.desktop.cleaning;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.wadeplan.desktop.look.Fact;
import org.wadeplan.desktop.session.DaySky;
import org.wadeplan.desktop.session.DayWork;
import org.wadeplan.desktop.session.FindReport;
import org.wadeplan.desktop.session.PlanSession;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.words.Times;
import org.wadeplan.desktop.words.Words;

/** What the lanes of the kit sets, the steps with their timers and the page of a find show. */
public final class CleaningViewModel {

    private static final double STEP = 1.4;
    private static final double MOST = 12;

    private final SessionModel model;
    private final Clock clock;
    private final ContactTimers timers;
    private final ReadOnlyObjectWrapper<Optional<CleaningPicture>> picture =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<String>> selected = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Instant> moment = new ReadOnlyObjectWrapper<>(Instant.EPOCH);
    private final ReadOnlyObjectWrapper<List<Fact>> facts = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<List<StepRow>> steps = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<List<Fact>> cautions = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Optional<String>> selectedSet = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<String>> selectedStep = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<SetRow>> sets = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<List<Fact>> find = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyStringWrapper emptyWords = new ReadOnlyStringWrapper("");
    private final ReadOnlyDoubleWrapper zoom = new ReadOnlyDoubleWrapper(1);
    private Optional<PlanSession> shown = Optional.empty();
    private Optional<CleaningWeek> week = Optional.empty();
    private List<Fact> mind = List.of();

    /**
     * The kit sets of whatever is open.
     *
     * @param clock gives the moment to begin with and the time of the timers
     */
    public CleaningViewModel(SessionModel model, Clock clock) {
        this.model = model;
        this.clock = clock;
        this.timers = new ContactTimers(model, clock);
        model.sessionProperty().addListener((property, before, now) -> follow(now));
        follow(model.session());
    }

    public ContactTimers timers() {
        return timers;
    }

    public ReadOnlyObjectProperty<Optional<CleaningPicture>> pictureProperty() {
        return picture.getReadOnlyProperty();
    }

    /** The selected span, by its id. */
    public ReadOnlyObjectProperty<Optional<String>> selectedProperty() {
        return selected.getReadOnlyProperty();
    }

    /** The moment chosen, at which the arrow of time stands. */
    public ReadOnlyObjectProperty<Instant> momentProperty() {
        return moment.getReadOnlyProperty();
    }

    /** Why the selected set stands as it does, in order of reading. */
    public ReadOnlyObjectProperty<List<Fact>> factsProperty() {
        return facts.getReadOnlyProperty();
    }

    /** The steps of the selected cleaning. */
    public ReadOnlyObjectProperty<List<StepRow>> stepRowsProperty() {
        return steps.getReadOnlyProperty();
    }

    /** What to write down at the selected step, what can hurt in the cleaning, and where its water goes. */
    public ReadOnlyObjectProperty<List<Fact>> cautionsProperty() {
        return cautions.getReadOnlyProperty();
    }

    /** The kit set of the selected span. */
    public ReadOnlyObjectProperty<Optional<String>> selectedSetProperty() {
        return selectedSet.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<String>> selectedStepProperty() {
        return selectedStep.getReadOnlyProperty();
    }

    /** Every kit set at the moment chosen. */
    public ReadOnlyObjectProperty<List<SetRow>> setsProperty() {
        return sets.getReadOnlyProperty();
    }

    /** What came of the last pest that was seen; empty where none was entered. */
    public ReadOnlyObjectProperty<List<Fact>> findProperty() {
        return find.getReadOnlyProperty();
    }

    /** Why there is no picture; shown in its place. */
    public ReadOnlyStringProperty emptyWordsProperty() {
        return emptyWords.getReadOnlyProperty();
    }

    /** How much wider than the window the week is drawn, from 1. */
    public ReadOnlyDoubleProperty zoomProperty() {
        return zoom.getReadOnlyProperty();
    }

    private void follow(Optional<PlanSession> now) {
        boolean other = !now.map(PlanSession::opened).equals(shown.map(PlanSession::opened));
        boolean otherFind = !find(now).equals(find(shown));
        shown = now;
        if (other || otherFind || now.isEmpty()) {
            build();
        }
        if (other) {
            moment.set(firstMoment());
            selected.set(Optional.empty());
        }
        if (!other && otherFind) {
            find(now).ifPresent(found -> moment.set(found.seen().seenAt()));
        }
        if (other || otherFind) {
            show();
        }
    }

    private static Optional<FindReport> find(Optional<PlanSession> session) {
        return session.map(PlanSession::work).flatMap(DayWork::find);
    }

    private void build() {
        emptyWords.set(Words.of(shown.isEmpty() ? "cleaning.nothingOpen" : "cleaning.noWeek"));
        week = shown.flatMap(
                now -> now.known().flatMap(round -> now.inForce().map(inForce -> CleaningWeek.of(round, inForce))));
        List<DaySky> skies = shown.map(now -> now.opened().skies()).orElse(List.of());
        picture.set(week.flatMap(it -> PictureBuilder.picture(it, skies, find(shown))));
        find.set(find(shown).map(CleaningViewModel::page).orElse(List.of()));
    }

    private static List<Fact> page(FindReport report) {
        List<Fact> page = new java.util.ArrayList<>();
        page.add(new Fact(Words.of("cleaning.find"), report.title()));
        report.sections()
                .forEach(section -> page.add(new Fact(
                        section.head(),
                        section.lines().isEmpty()
                                ? Words.of("cleaning.noLines")
                                : "• " + String.join("\n• ", section.lines()))));
        return List.copyOf(page);
    }

    /** Now, where the week is on; otherwise when the first crew loads. */
    private Instant firstMoment() {
        Instant now = clock.instant();
        return picture.get()
                .map(it -> now.isBefore(it.from()) || !now.isBefore(it.to()) ? firstStart(it.from()) : now)
                .orElse(Instant.EPOCH);
    }

    private Instant firstStart(Instant otherwise) {
        return shown.flatMap(PlanSession::inForce)
                .flatMap(week ->
                        week.week().crewDays().stream().map(day -> day.start()).min(Instant::compareTo))
                .orElse(otherwise);
    }

    private void show() {
        Optional<SetSpan> span = span();
        if (span.isEmpty()) {
            selected.set(Optional.empty());
        }
        facts.set(week.flatMap(it -> span.map(of -> SpanFacts.of(it, of, flag(of.kitSet()))))
                .orElse(List.of()));
        StepRows rows = week.flatMap(it -> span.flatMap(it::task).map(task -> StepRows.of(it, task)))
                .orElse(StepRows.NONE);
        steps.set(rows.rows());
        mind = rows.cautions();
        if (rows.rows().stream()
                .noneMatch(row -> selectedStep.get().filter(row.id()::equals).isPresent())) {
            selectedStep.set(rows.rows().stream()
                    .filter(row -> row.contactMin().isPresent())
                    .map(StepRow::id)
                    .findFirst());
        }
        cautions.set(cautionsOfStep());
        sets.set(picture.get().map(this::setRows).orElse(List.of()));
        selectedSet.set(span.map(SetSpan::kitSet));
    }

    private Optional<String> flag(String kitSet) {
        return picture.get().flatMap(it -> it.lanes().stream()
                .filter(lane -> lane.kitSet().equals(kitSet))
                .findFirst()
                .flatMap(SetLane::flagged)
                .map(FindReport.Flag::why));
    }

    private List<SetRow> setRows(CleaningPicture now) {
        return now.lanes().stream()
                .flatMap(lane -> lane.at(moment.get()).map(span -> row(now, lane, span)).stream())
                .toList();
    }

    private static SetRow row(CleaningPicture now, SetLane lane, SetSpan span) {
        return new SetRow(
                lane.kitSet(),
                span.state().mark(),
                span.state().words(),
                Times.dayClock(span.from(), now.zone()),
                Times.dayClock(span.to(), now.zone()),
                String.join(", ", span.waters()),
                lane.flagged().map(FindReport.Flag::why).orElse(""));
    }

    /** The selected span. */
    public Optional<SetSpan> span() {
        return picture.get().flatMap(it -> selected.get().flatMap(it::span));
    }

    /** Selects a span. The arrow goes to its beginning, unless it stands in it already. */
    public void select(String id) {
        picture.get().flatMap(it -> it.span(id)).ifPresent(span -> {
            selected.set(Optional.of(id));
            if (!span.holds(moment.get())) {
                moment.set(span.from());
            }
            span.site().ifPresent(model::selectSite);
            show();
        });
    }

    /** Selects the lane's span at the moment. */
    public void selectSet(String kitSet) {
        picture.get()
                .flatMap(it -> it.lanes().stream()
                        .filter(lane -> lane.kitSet().equals(kitSet))
                        .findFirst())
                .flatMap(lane -> lane.at(moment.get()))
                .filter(span -> !selected.get().equals(Optional.of(span.id())))
                .ifPresent(span -> select(span.id()));
    }

    void step(CleaningPicture.Step step) {
        picture.get().flatMap(it -> it.from(selected.get(), moment.get(), step)).ifPresent(span -> select(span.id()));
    }

    /** Puts the arrow of time somewhere inside the week. */
    public void chooseMoment(Instant at) {
        picture.get().ifPresent(it -> {
            Instant last = it.to().minus(Duration.ofMinutes(1));
            moment.set(at.isBefore(it.from()) ? it.from() : at.isAfter(last) ? last : at);
            show();
        });
    }

    /** Moves the arrow of time. */
    public void moveMoment(int minutes) {
        chooseMoment(moment.get().plus(Duration.ofMinutes(minutes)));
    }

    public void selectStep(String id) {
        selectedStep.set(Optional.of(id));
        cautions.set(cautionsOfStep());
    }

    /** What to write down at the selected step, then what can hurt in any of them. */
    private List<Fact> cautionsOfStep() {
        Stream<Fact> boxes = step()
                .filter(row -> !row.boxes().isBlank())
                .map(row -> new Fact(Words.of("cleaning.boxes", row.step()), row.boxes()))
                .stream();
        return Stream.concat(boxes, mind.stream()).toList();
    }

    Optional<StepRow> step() {
        return steps.get().stream()
                .filter(row -> selectedStep.get().filter(row.id()::equals).isPresent())
                .findFirst();
    }

    /** Whether the selected step has a contact time. */
    public boolean canTime() {
        return step().flatMap(StepRow::contactMin).isPresent();
    }

    /** Starts the contact time of the selected step, or stops it where it runs. */
    public void toggleTimer() {
        step().filter(row -> row.contactMin().isPresent()).ifPresent(row -> timers.of(row.id())
                .ifPresentOrElse(
                        timers::stop,
                        () -> timers.start(span().map(SetSpan::kitSet).orElse(""), row)));
    }

    /** Which week the lanes follow; empty where there is none. */
    public String basis() {
        return shown.flatMap(PlanSession::inForce)
                .map(week -> Words.of(week.agreed() ? "basis.agreedShort" : "basis.plannedShort"))
                .orElse("");
    }

    /** {@code Wed 16:00} */
    public String momentWords() {
        return picture.get().map(it -> Times.dayClock(moment.get(), it.zone())).orElse("");
    }

    /** For people who do not see the lanes. */
    public String spoken() {
        return span().map(span -> Words.of("cleaning.spokenSpan", momentWords(), span.spoken()))
                .orElse(Words.of("cleaning.spokenAll", momentWords()));
    }

    public void zoomIn() {
        zoom.set(Math.min(MOST, zoom.get() * STEP));
    }

    public void zoomOut() {
        zoom.set(Math.max(1, zoom.get() / STEP));
    }

    public void fitAll() {
        zoom.set(1);
    }

    /** Near enough to read the short spans round the selected one. */
    public void fitSelected() {
        zoom.set(5);
    }
}
