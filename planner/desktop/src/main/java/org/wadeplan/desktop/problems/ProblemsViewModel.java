package org.wadeplan.desktop.problems;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.wadeplan.desktop.session.PlanSession;
import org.wadeplan.desktop.session.Screen;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.Site;

/** Everything that was found, what each is about, and how to get to its cause. */
public final class ProblemsViewModel {

    /** Findings of the week, and of what the week needs, are best seen on the timeline. */
    private static final Set<String> SEEN_ON_WEEK = Set.of(
            "plan.json", "crew_days.csv", "people.csv", "store.csv", "certificates.csv", "tides.csv", "permits.csv");

    private final SessionModel model;
    private final ReadOnlyObjectWrapper<List<ProblemRow>> rows = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Optional<ProblemRow>> chosen = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<String>> chosenId = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper emptyWords = new ReadOnlyStringWrapper("");
    private final ObjectProperty<Optional<Severity>> only = new SimpleObjectProperty<>(Optional.empty());

    public ProblemsViewModel(SessionModel model) {
        this.model = model;
        model.sessionProperty().addListener((property, before, now) -> {
            if (!before.map(PlanSession::opened).equals(now.map(PlanSession::opened))) {
                build();
            }
        });
        only.addListener((property, before, now) -> build());
        build();
    }

    public ReadOnlyObjectProperty<List<ProblemRow>> rowsProperty() {
        return rows.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<ProblemRow>> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<String>> chosenIdProperty() {
        return chosenId.getReadOnlyProperty();
    }

    /** Shows only one kind; empty for all. */
    public ObjectProperty<Optional<Severity>> onlyProperty() {
        return only;
    }

    private void build() {
        List<Problem> problems = model.session().map(PlanSession::problems).orElse(List.of());
        List<ProblemRow> made = new ArrayList<>();
        for (int i = 0; i < problems.size(); i++) {
            Problem problem = problems.get(i);
            if (only.get().isEmpty() || only.get().get() == problem.severity()) {
                made.add(new ProblemRow("problem " + i, problem, siteOf(problem), RepairNames.in(problem)));
            }
        }
        rows.set(List.copyOf(made));
        emptyWords.set(whyEmpty());
        choose(made.stream().findFirst());
    }

    public void choose(Optional<ProblemRow> row) {
        chosen.set(row);
        chosenId.set(row.map(ProblemRow::id));
    }

    /** The site that the place names, or else the first one that the words name. */
    private Optional<String> siteOf(Problem problem) {
        List<String> sites = model.session()
                .flatMap(PlanSession::round)
                .map(ProblemsViewModel::longestFirst)
                .orElse(List.of());
        String place = problem.place().row().orElse("");
        return sites.stream().filter(place::contains).findFirst().or(() -> sites.stream()
                .filter(problem.found()::contains)
                .findFirst());
    }

    /** So that OUN-02B is not taken for OUN-02. */
    private static List<String> longestFirst(Round round) {
        return round.sites().stream()
                .map(Site::id)
                .sorted((one, other) -> Integer.compare(other.length(), one.length()))
                .toList();
    }

    public boolean canJump() {
        return chosen.get().flatMap(ProblemRow::site).isPresent();
    }

    /** Selects the site that the chosen problem is about and shows the screen where it is best seen. */
    public void jump() {
        Optional<ProblemRow> row = chosen.get();
        Optional<String> site = row.flatMap(ProblemRow::site);
        if (row.isEmpty()) {
            return;
        }
        if (site.isEmpty()) {
            model.say(Words.of("problems.noSite", row.get().problem().place()));
            return;
        }
        model.selectSite(site.get());
        model.screenProperty().set(screenFor(row.get()));
        model.say(Words.of("problems.jumped", site.get(), row.get().problem().place()));
    }

    private Screen screenFor(ProblemRow row) {
        boolean planned = model.session().flatMap(PlanSession::plan).isPresent();
        return planned && SEEN_ON_WEEK.contains(row.problem().place().file()) ? Screen.WEEK : Screen.MAP;
    }

    public void accept(String repair) {
        model.accept(repair);
    }

    /** The file's whole path and the line in it, for a person to open it. */
    public String where(ProblemRow row) {
        String place = row.problem().place().toString();
        return model.session()
                .map(now -> now.folder().resolve(row.problem().place().file()).toString())
                .map(path -> place + "\n" + path)
                .orElse(place);
    }

    /** In place of the list where it is empty. */
    public ReadOnlyStringProperty emptyWordsProperty() {
        return emptyWords.getReadOnlyProperty();
    }

    private String whyEmpty() {
        if (model.session().isEmpty()) {
            return Words.of("problems.nothingOpen");
        }
        return Words.of(only.get().isPresent() ? "problems.noneOfKind" : "problems.none");
    }
}
