package org.wadeplan.desktop.week;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.wadeplan.desktop.look.Fact;
import org.wadeplan.desktop.session.OpenedRound;
import org.wadeplan.desktop.session.PlanSession;
import org.wadeplan.desktop.session.Selection;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.geo.problem.Severity;

/** What the timeline, its table and the explanation beside it show. */
public final class WeekViewModel {

    private static final double STEP = 1.4;
    private static final double MOST = 12;

    private final SessionModel model;
    private final ReadOnlyObjectWrapper<Optional<WeekPicture>> picture = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<WeekRow>> rows = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Optional<String>> selectedBar = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<String>> selectedSite = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<Fact>> facts = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyStringWrapper emptyWords = new ReadOnlyStringWrapper(whyEmpty(Optional.empty()));
    private final ReadOnlyDoubleWrapper zoom = new ReadOnlyDoubleWrapper(1);
    private Optional<OpenedRound> shown = Optional.empty();

    public WeekViewModel(SessionModel model) {
        this.model = model;
        model.sessionProperty().addListener((property, before, now) -> follow(now));
        follow(model.session());
    }

    public ReadOnlyObjectProperty<Optional<WeekPicture>> pictureProperty() {
        return picture.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<List<WeekRow>> rowsProperty() {
        return rows.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<String>> selectedBarProperty() {
        return selectedBar.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<String>> selectedSiteProperty() {
        return selectedSite.getReadOnlyProperty();
    }

    /** About what is selected, in order of reading. */
    public ReadOnlyObjectProperty<List<Fact>> factsProperty() {
        return facts.getReadOnlyProperty();
    }

    /** How much wider than the window the days are drawn, from 1. */
    public ReadOnlyDoubleProperty zoomProperty() {
        return zoom.getReadOnlyProperty();
    }

    private void follow(Optional<PlanSession> now) {
        Optional<OpenedRound> opened = now.map(PlanSession::opened);
        if (!opened.equals(shown)) {
            shown = opened;
            emptyWords.set(whyEmpty(now));
            picture.set(opened.flatMap(read -> read.round()
                    .flatMap(round -> read.plan().map(plan -> WeekBuilder.picture(round, plan, read.skies())))));
            rows.set(opened.flatMap(read -> read.round().flatMap(round -> read.plan()
                            .map(plan -> WeekRows.of(plan, round.header().zone()))))
                    .orElse(List.of()));
        }
        Selection selection = now.map(PlanSession::selection).orElse(Selection.NOTHING);
        facts.set(factsOf(selection));
        selectedSite.set(selection.site());
        selectedBar.set(selection.bar());
    }

    private List<Fact> factsOf(Selection selection) {
        return shown.flatMap(read -> read.round().flatMap(round -> read.plan()
                        .map(plan -> selection.bar().isPresent()
                                ? BarFacts.ofBar(round, plan, selection.bar().get())
                                : selection
                                        .site()
                                        .map(site -> BarFacts.ofSite(round, plan, site))
                                        .orElse(List.of()))))
                .orElse(List.of());
    }

    /** Why there is no timeline; shown in its place. */
    public ReadOnlyStringProperty emptyWordsProperty() {
        return emptyWords.getReadOnlyProperty();
    }

    private static String whyEmpty(Optional<PlanSession> session) {
        return session.map(now -> Words.of("week.notPlanned", Words.count("count.error", now.count(Severity.ERROR))))
                .orElse(Words.of("week.nothingOpen"));
    }

    public void select(String bar) {
        Optional<WeekBar> found = picture.get().flatMap(shownNow -> shownNow.bar(bar));
        found.ifPresent(it -> model.select(new Selection(it.site(), Optional.of(it.id()))));
    }

    void step(WeekPicture.Step step) {
        Optional<String> from = selectedBar.get().or(this::firstBarOfSite);
        picture.get().flatMap(shownNow -> shownNow.from(from, step)).ifPresent(bar -> select(bar.id()));
    }

    private Optional<String> firstBarOfSite() {
        return rows.get().stream()
                .filter(row -> selectedSite.get().filter(row.site()::equals).isPresent())
                .map(WeekRow::id)
                .findFirst();
    }

    /** The bar that the table and the timeline bring into view: the selected one, or the first of the selected site. */
    public Optional<String> focusedBar() {
        return selectedBar.get().or(this::firstBarOfSite);
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

    /** Near enough to read the short bars round the selected one. */
    public void fitSelected() {
        zoom.set(4);
    }

    /** For people who do not see the timeline. */
    public String spoken() {
        return selectedBar
                .get()
                .flatMap(id -> picture.get().flatMap(shownNow -> shownNow.bar(id)))
                .map(bar -> Words.of("week.spokenBar", bar.spoken()))
                .orElse(Words.of("week.spoken"));
    }
}
