package org.wadeplan.desktop.map;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Point;
import org.wadeplan.desktop.look.Fact;
import org.wadeplan.desktop.session.OpenedRound;
import org.wadeplan.desktop.session.PlanSession;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.words.Words;
import org.wadeplan.desktop.work.Job;
import org.wadeplan.planner.reach.CandidateReport;
import org.wadeplan.planner.reach.ProposedReach;
import org.wadeplan.planner.reach.RejectedStrip;

/** Candidate reaches of the open round: searched on demand, forgotten when another round is read. */
public final class CandidateViewModel {

    /** A ruled-out stretch answers to the pointer from this near, pixels. */
    private static final double NEAR_PX = 7;

    private final SessionModel session;
    private final MapViewModel map;
    private final ReadOnlyObjectWrapper<Optional<CandidateReport>> report =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<CandidateRow>> rows = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Optional<String>> chosen = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<Fact>> facts = new ReadOnlyObjectWrapper<>(List.of());
    private Optional<OpenedRound> shown = Optional.empty();

    public CandidateViewModel(SessionModel session, MapViewModel map) {
        this.session = session;
        this.map = map;
        this.shown = session.session().map(PlanSession::opened);
        session.sessionProperty().addListener((property, before, now) -> {
            Optional<OpenedRound> opened = now.map(PlanSession::opened);
            if (!opened.equals(shown)) {
                shown = opened;
                show(Optional.empty());
            }
        });
    }

    ReadOnlyObjectProperty<Optional<CandidateReport>> reportProperty() {
        return report.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<List<CandidateRow>> rowsProperty() {
        return rows.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<Optional<String>> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<List<Fact>> factsProperty() {
        return facts.getReadOnlyProperty();
    }

    /** Searches the open round; the result replaces an earlier one. Can be stopped like any long work. */
    public void search() {
        session.session().flatMap(PlanSession::round).ifPresent(round -> session.work()
                .run(new Job<>(
                        Words.of("work.searching"),
                        progress -> session.desk().candidates(round, progress),
                        found -> {
                            show(Optional.of(found));
                            session.say(notice(found));
                        },
                        session::failed)));
    }

    private static String notice(CandidateReport found) {
        return found.candidates().isEmpty()
                ? Words.of("notice.noCandidates")
                : Words.of("notice.candidates", found.candidates().size());
    }

    private void show(Optional<CandidateReport> found) {
        report.set(found);
        chosen.set(Optional.empty());
        rows.set(
                found.map(all -> all.candidates().stream().map(CandidateRow::of).toList())
                        .orElse(List.of()));
        facts.set(found.map(CandidateFacts::of).orElse(List.of()));
    }

    /** Chooses a candidate by name, shows what is known of it, and brings it into view. */
    void choose(String name) {
        candidate(name).ifPresent(candidate -> {
            chosen.set(Optional.of(name));
            facts.set(CandidateFacts.of(candidate));
            Envelope around = candidate.reach().line().getEnvelopeInternal().copy();
            around.expandBy(Math.max(around.getWidth(), around.getHeight()));
            map.show(around);
        });
    }

    private Optional<ProposedReach> candidate(String name) {
        return report.get().flatMap(all -> all.candidates().stream()
                .filter(each -> each.name().equals(name))
                .findFirst());
    }

    /** Why the stretch under a pixel is ruled out; empty where none is near. */
    Optional<String> ruledOutAt(double x, double y) {
        ViewBox view = map.viewProperty().get();
        Coordinate at = new Coordinate(view.east(x), view.north(y));
        double nearM = NEAR_PX * view.metresPerPx();
        Envelope near = new Envelope(at);
        near.expandBy(nearM);
        return report.get().stream()
                .flatMap(all -> all.rejected().stream())
                .filter(strip -> strip.line().getEnvelopeInternal().intersects(near))
                .map(strip -> new Near(strip, distanceM(strip, at)))
                .filter(each -> each.distanceM() <= nearM)
                .min(Comparator.comparingDouble(Near::distanceM))
                .map(each -> CandidateFacts.words(each.strip()));
    }

    private record Near(RejectedStrip strip, double distanceM) {}

    private static double distanceM(RejectedStrip strip, Coordinate at) {
        Point point = strip.line().getFactory().createPoint(at);
        return strip.line().distance(point);
    }
}
