package org.wadeplan.desktop.kit;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.wadeplan.desktop.look.Fact;
import org.wadeplan.desktop.session.DayWork;
import org.wadeplan.desktop.session.FindReport;
import org.wadeplan.desktop.session.PlanSession;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.session.WeekInForce;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.planner.kit.TickObjection;
import org.wadeplan.planner.kit.TickOutcome;
import org.wadeplan.planner.kit.TickRequest;
import org.wadeplan.planner.round.LoadTick;
import org.wadeplan.planner.round.Person;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.CrewDay;

/** What a crew loads on the chosen day, what is ticked, what was refused, and who lets it go all the same. */
public final class KitViewModel {

    private final SessionModel model;
    private final Clock clock;
    private final ReadOnlyObjectWrapper<List<CrewDayChoice>> crewDays = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Optional<CrewDayChoice>> chosen = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<LoadRow>> rows = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<List<Fact>> shortages = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<List<String>> people = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Optional<String>> selected = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Refused>> refused = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper emptyWords = new ReadOnlyStringWrapper(Words.of("kit.nothingOpen"));
    private final StringProperty loader = new SimpleStringProperty("");
    private final StringProperty overrideBy = new SimpleStringProperty("");
    private final StringProperty overrideReason = new SimpleStringProperty("");
    private final Map<String, String> loaders = new TreeMap<>();
    /** What stands against each item of the chosen crew-day, as long as nothing but ticks of it changes. */
    private final Map<String, List<TickObjection>> against = new HashMap<>();

    private Optional<PlanSession> shown = Optional.empty();

    /**
     * The load lists of whatever is open.
     *
     * @param clock gives the day on which loading starts, and the time of each tick
     */
    public KitViewModel(SessionModel model, Clock clock) {
        this.model = model;
        this.clock = clock;
        model.sessionProperty().addListener((property, before, now) -> follow(now));
        follow(model.session());
    }

    public ReadOnlyObjectProperty<List<CrewDayChoice>> crewDaysProperty() {
        return crewDays.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<CrewDayChoice>> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<List<LoadRow>> rowsProperty() {
        return rows.getReadOnlyProperty();
    }

    /** What is short for the crew on the day, each with its way out. */
    public ReadOnlyObjectProperty<List<Fact>> shortagesProperty() {
        return shortages.getReadOnlyProperty();
    }

    /** Names of the crew on the day, to choose from who loads. */
    public ReadOnlyObjectProperty<List<String>> peopleProperty() {
        return people.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<String>> selectedProperty() {
        return selected.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<Refused>> refusedProperty() {
        return refused.getReadOnlyProperty();
    }

    /** Why there is no list; shown in its place. */
    public ReadOnlyStringProperty emptyWordsProperty() {
        return emptyWords.getReadOnlyProperty();
    }

    /** Who loads, as typed or chosen; each crew keeps its own while the window is open. */
    public StringProperty loaderProperty() {
        return loader;
    }

    public StringProperty overrideByProperty() {
        return overrideBy;
    }

    public StringProperty overrideReasonProperty() {
        return overrideReason;
    }

    private void follow(Optional<PlanSession> now) {
        boolean other = !now.map(PlanSession::opened).equals(shown.map(PlanSession::opened));
        boolean same = now.map(PlanSession::work).equals(shown.map(PlanSession::work));
        boolean otherFind = !find(now).equals(find(shown));
        shown = now;
        if (other || otherFind) {
            against.clear();
        }
        if (other || !same) {
            List<CrewDayChoice> days = now.flatMap(PlanSession::inForce)
                    .map(week -> week.week().crewDays().stream()
                            .map(CrewDayChoice::of)
                            .toList())
                    .orElse(List.of());
            crewDays.set(days);
            emptyWords.set(Words.of(now.isEmpty() ? "kit.nothingOpen" : "kit.noWeek"));
            refused.set(Optional.empty());
            if (chosen.get().filter(days::contains).isEmpty()) {
                chosen.set(first(days));
            }
            fill();
        }
    }

    private static Optional<FindReport> find(Optional<PlanSession> session) {
        return session.map(PlanSession::work).flatMap(DayWork::find);
    }

    /** Today's first, or the first that is still to come; the first of all where the week lies behind. */
    private Optional<CrewDayChoice> first(List<CrewDayChoice> days) {
        LocalDate today = shown.flatMap(PlanSession::round)
                .map(round ->
                        LocalDate.ofInstant(clock.instant(), round.header().zone()))
                .orElse(LocalDate.MIN);
        return days.stream()
                .filter(day -> !day.date().isBefore(today))
                .findFirst()
                .or(() -> days.stream().findFirst());
    }

    public void choose(CrewDayChoice day) {
        if (crewDays.get().contains(day) && !chosen.get().equals(Optional.of(day))) {
            chosen.get().ifPresent(before -> loaders.put(before.crew(), loader.get()));
            chosen.set(Optional.of(day));
            loader.set(loaders.getOrDefault(day.crew(), ""));
            selected.set(Optional.empty());
            refused.set(Optional.empty());
            against.clear();
            fill();
        }
    }

    private void fill() {
        Optional<Round> round = shown.flatMap(PlanSession::round);
        Optional<WeekInForce> week = shown.flatMap(PlanSession::inForce);
        if (round.isEmpty() || week.isEmpty() || chosen.get().isEmpty()) {
            rows.set(List.of());
            shortages.set(List.of());
            people.set(List.of());
            return;
        }
        CrewDayChoice day = chosen.get().get();
        people.set(names(round.get(), week.get(), day));
        shortages.set(ShortageFact.of(week.get(), day.date(), day.crew()));
        rows.set(week.get()
                .load(day.date(), day.crew())
                .map(load -> new LoadRows(
                                round.get(), load, work(), item -> against.computeIfAbsent(item, this::against))
                        .rows())
                .orElse(List.of()));
        if (row().isEmpty()) {
            selected.set(rows.get().stream()
                    .filter(LoadRow::tickable)
                    .map(LoadRow::id)
                    .findFirst());
        }
    }

    private static List<String> names(Round round, WeekInForce week, CrewDayChoice day) {
        return week.week().crewDay(day.crew(), day.date()).map(CrewDay::people).orElse(List.of()).stream()
                .map(id -> round.person(id).map(Person::name).orElse(id))
                .toList();
    }

    private DayWork work() {
        return shown.map(PlanSession::work).orElse(DayWork.NOTHING);
    }

    public void select(String id) {
        selected.set(Optional.of(id));
    }

    private Optional<LoadRow> row() {
        return selected.get()
                .flatMap(id ->
                        rows.get().stream().filter(row -> row.id().equals(id)).findFirst());
    }

    /** Whether something can be ticked now. */
    public boolean canTick() {
        return row().filter(LoadRow::tickable).isPresent();
    }

    /** Ticks the selected line, or takes its tick away. A thing that may not go is refused with its reasons. */
    public void toggle() {
        refused.set(Optional.empty());
        row().filter(LoadRow::tickable).ifPresent(row -> {
            if (row.box() == LoadRow.Box.TICKED) {
                chosen.get().ifPresent(day -> model.keep(work().without(day.date(), day.crew(), row.item())));
            } else {
                tick(row);
            }
        });
    }

    private void tick(LoadRow row) {
        if (loader.get().isBlank()) {
            refused.set(Optional.of(new Refused(row, what(row), List.of(Words.of("kit.sayWho")), false)));
            return;
        }
        overrideBy.set("");
        overrideReason.set("");
        outcome(row.item(), Optional.empty()).ifPresent(outcome -> outcome.fold(this::keep, no -> refuse(row, no)));
    }

    private boolean refuse(LoadRow row, TickOutcome.Refused no) {
        List<String> reasons = no.objections().stream()
                .map(one -> Words.of("kit.reason", one.words(), one.remedy()))
                .toList();
        refused.set(Optional.of(new Refused(row, what(row), reasons, no.overridable())));
        return false;
    }

    private static String what(LoadRow row) {
        return row.serial().isEmpty() ? row.what() : row.serial() + ", " + row.what();
    }

    private List<TickObjection> against(String item) {
        return outcome(item, Optional.empty())
                .map(outcome -> outcome.fold(yes -> List.<TickObjection>of(), TickOutcome.Refused::objections))
                .orElse(List.of());
    }

    private Optional<TickOutcome> outcome(String item, Optional<TickRequest.TickOverride> override) {
        Optional<WeekInForce> week = shown.flatMap(PlanSession::inForce);
        Optional<CrewDayChoice> day = chosen.get();
        return shown.flatMap(PlanSession::known)
                .filter(round -> week.isPresent() && day.isPresent())
                .map(round -> model.desk()
                        .check(
                                round,
                                week.get(),
                                new TickRequest(
                                        day.get().crew(),
                                        day.get().date(),
                                        item,
                                        checkedAt(week.get(), day.get()),
                                        loader.get().strip(),
                                        override)));
    }

    /** Now, while the week is on; otherwise when the crew is to load. */
    private Instant checkedAt(WeekInForce week, CrewDayChoice day) {
        Instant now = clock.instant();
        return inWeek(week, now)
                ? now
                : week.week()
                        .crewDay(day.crew(), day.date())
                        .map(CrewDay::start)
                        .orElse(now);
    }

    private boolean inWeek(WeekInForce week, Instant now) {
        return shown.flatMap(PlanSession::round)
                .map(round -> LocalDate.ofInstant(now, round.header().zone()))
                .filter(today -> week.week().crewDays().stream()
                        .anyMatch(day -> !today.isAfter(day.date().plusDays(1))))
                .filter(today -> week.week().crewDays().stream()
                        .anyMatch(day -> !today.isBefore(day.date().minusDays(1))))
                .isPresent();
    }

    /** Ticks what was refused, with the name of who lets it go and the reason. Both are needed, and both are kept. */
    public void letGo() {
        if (overrideBy.get().isBlank() || overrideReason.get().isBlank()) {
            model.say(Words.of("kit.nameAndReason"));
            return;
        }
        TickRequest.TickOverride override = new TickRequest.TickOverride(
                overrideBy.get().strip(), overrideReason.get().strip());
        refused.get().filter(Refused::canLetGo).ifPresent(it -> outcome(it.row().item(), Optional.of(override))
                .ifPresent(outcome -> outcome.fold(this::keep, no -> refuse(it.row(), no))));
    }

    /** The tick has the time at which it was made, whatever time was looked at. */
    private boolean keep(TickOutcome.Accepted accepted) {
        LoadTick tick = accepted.tick();
        LoadTick made = new LoadTick(
                tick.date(),
                tick.crew(),
                tick.item(),
                clock.instant().truncatedTo(ChronoUnit.SECONDS),
                tick.by(),
                tick.overrideBy(),
                tick.overrideReason());
        boolean kept = model.keep(work().with(made));
        if (kept) {
            refused.set(Optional.empty());
            model.say(Words.of("kit.in", tick.item(), String.join(" ", accepted.remarks()))
                    .strip());
        }
        return kept;
    }

    /** Which week the list follows, and at what time things are looked at; empty where there is none. */
    public String basis() {
        return shown.flatMap(PlanSession::inForce)
                .map(week -> Words.of(week.agreed() ? "basis.agreed" : "basis.planned")
                        + (inWeek(week, clock.instant()) ? "" : " " + Words.of("kit.outsideWeek")))
                .orElse("");
    }

    /** {@code 14 of 31 loaded}; empty where there is no list. */
    public String progress() {
        return all() == 0 ? "" : Words.of("kit.progress", ticked(), all());
    }

    /** 0 to 1. */
    public double share() {
        return all() == 0 ? 0 : (double) ticked() / all();
    }

    private long ticked() {
        return rows.get().stream()
                .filter(row -> row.box() == LoadRow.Box.TICKED)
                .count();
    }

    private long all() {
        return rows.get().stream().filter(LoadRow::tickable).count();
    }
}
