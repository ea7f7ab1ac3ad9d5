package org.wadeplan.desktop.map;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.wadeplan.desktop.look.Fact;
import org.wadeplan.desktop.session.InventedWeek;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.session.StubDesk;
import org.wadeplan.desktop.work.BackgroundWork;
import org.wadeplan.geo.crs.MetricPoint;
import org.wadeplan.planner.reach.CandidateReport;

class CandidateViewModelTest {

    private final SessionModel session =
            new SessionModel(new StubDesk(), new BackgroundWork(Runnable::run, Runnable::run));
    private final MapViewModel map = new MapViewModel(session);
    private final CandidateViewModel candidates = new CandidateViewModel(session, map);

    @BeforeEach
    void open() {
        map.resize(800, 600);
        session.open(InventedWeek.FOLDER);
    }

    @Test
    void beforeASearchThereIsNothing() {
        assertThat(candidates.reportProperty().get()).isEmpty();
        assertThat(candidates.rowsProperty().get()).isEmpty();
        assertThat(candidates.ruledOutAt(400, 300)).isEmpty();
    }

    @Test
    void aSearchListsItsCandidatesAndSaysWhereTheStreamsWent() {
        candidates.search();

        CandidateReport report = candidates.reportProperty().get().orElseThrow();
        assertThat(candidates.rowsProperty().get())
                .extracting(CandidateRow::name)
                .containsExactlyElementsOf(
                        report.candidates().stream().map(each -> each.name()).toList())
                .startsWith("C01", "C02");
        assertThat(candidates.factsProperty().get())
                .extracting(Fact::text)
                .anyMatch(text -> text.contains("km on land without consent") && text.contains("km searched in all"));
        assertThat(session.noticeProperty().get())
                .isEqualTo(report.candidates().size() + " candidate reaches: proposals from maps, to go and look at.");
    }

    @Test
    void choosingACandidateShowsItAndWhyItScoresAsItDoes() {
        candidates.search();
        candidates.choose("C02");

        MetricPoint start = candidates
                .reportProperty()
                .get()
                .orElseThrow()
                .candidates()
                .get(1)
                .reach()
                .start()
                .at();
        assertThat(candidates.chosenProperty().get()).contains("C02");
        assertThat(map.viewProperty().get().ground().contains(start.eastM(), start.northM()))
                .isTrue();
        assertThat(map.viewProperty().get().metresPerPx()).isLessThan(2);
        assertThat(candidates.factsProperty().get())
                .extracting(Fact::head)
                .contains("Candidate", "Why this score", "Land", "Before anyone goes");
    }

    @Test
    void aRuledOutStretchUnderThePointerSaysWhy() {
        candidates.search();
        MetricPoint weir = InventedWeek.round().terrain().barriers().stream()
                .filter(barrier -> barrier.id().equals("BRN-WEIR"))
                .findFirst()
                .orElseThrow()
                .at();
        double x = map.viewProperty().get().x(weir.eastM());
        double y = map.viewProperty().get().y(weir.northM());

        assertThat(candidates.ruledOutAt(x, y).orElseThrow())
                .startsWith("BRN, ")
                .contains("m ruled out: ")
                .contains("from the weir BRN-WEIR, at least 50 m along the stream");
        assertThat(candidates.ruledOutAt(x + 300, y)).isEmpty();
    }

    @Test
    void readingARoundAgainForgetsTheCandidates() {
        candidates.search();
        session.open(InventedWeek.FOLDER.resolveSibling("broken"));

        assertThat(candidates.reportProperty().get()).isEmpty();
        assertThat(candidates.factsProperty().get()).isEmpty();
    }
}
