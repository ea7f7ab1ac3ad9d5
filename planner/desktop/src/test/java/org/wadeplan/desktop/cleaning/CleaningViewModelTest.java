package org.wadeplan.desktop.cleaning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.wadeplan.desktop.look.Fact;
import org.wadeplan.desktop.session.FindReport;
import org.wadeplan.desktop.session.InventedWeek;
import org.wadeplan.desktop.session.SeenPest;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.session.StubDesk;
import org.wadeplan.desktop.work.BackgroundWork;

class CleaningViewModelTest {

    private final StubDesk desk = new StubDesk();
    private final SessionModel session = new SessionModel(desk, new BackgroundWork(Runnable::run, Runnable::run));
    private final CleaningViewModel cleaning =
            new CleaningViewModel(session, Clock.fixed(InventedWeek.at(0, "06:30"), InventedWeek.ZONE));

    @BeforeEach
    void open() {
        session.open(InventedWeek.FOLDER);
    }

    private CleaningPicture picture() {
        return cleaning.pictureProperty().get().orElseThrow();
    }

    private SetLane lane(String set) {
        return picture().lanes().stream()
                .filter(lane -> lane.kitSet().equals(set))
                .findFirst()
                .orElseThrow();
    }

    private SetSpan span(String set, SetState state) {
        return lane(set).spans().stream()
                .filter(span -> span.state() == state)
                .findFirst()
                .orElseThrow();
    }

    private static String fact(List<Fact> facts, String head) {
        return facts.stream()
                .filter(fact -> fact.head().equals(head))
                .map(Fact::text)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyKitSetHasALaneWithoutGaps() {
        assertThat(picture().lanes())
                .extracting(SetLane::kitSet)
                .containsExactly("K1", "K2", "K3", "K4", "K5", "T1", "T2");
        for (SetLane lane : picture().lanes()) {
            Instant at = picture().from();
            for (SetSpan span : lane.spans()) {
                assertThat(span.from()).as(span.spoken()).isEqualTo(at);
                at = span.to();
            }
            assertThat(at).isEqualTo(picture().to());
        }
    }

    @Test
    void aSetGoesThroughItsStatesInOrder() {
        assertThat(lane("K1").spans())
                .extracting(SetSpan::state)
                .containsExactly(
                        SetState.CLEAN_DRY,
                        SetState.IN_USE,
                        SetState.DIRTY,
                        SetState.TREATING,
                        SetState.DRYING,
                        SetState.RELEASED);
        assertThat(lane("K2").spans()).extracting(SetSpan::state).containsExactly(SetState.CLEAN_DRY);
    }

    @Test
    void aUseNamesItsWater() {
        assertThat(span("K1", SetState.IN_USE).waters()).containsExactly("BRN");
        assertThat(span("K1", SetState.IN_USE).label()).isEqualTo("BRN in use");
        assertThat(span("K1", SetState.DIRTY).waters()).containsExactly("BRN");
    }

    @Test
    void aSetThatIsNeverCleanedStaysDirtyAndSaysThatItMayGoNowhere() {
        SetSpan last = lane("K4").spans().get(lane("K4").spans().size() - 1);
        assertThat(last.state()).isEqualTo(SetState.DIRTY);
        cleaning.select(last.id());
        assertThat(fact(cleaning.factsProperty().get(), "Cleaned next")).contains("it may go to no other water");
    }

    @Test
    void theReasonNamesTreatmentEvidenceAndRelease() {
        cleaning.select(span("K1", SetState.DRYING).id());
        List<Fact> why = cleaning.factsProperty().get();
        assertThat(fact(why, "Released")).isEqualTo("people free Mon 18:15; by plan released Tue 06:15");
        assertThat(fact(why, "Evidence behind it"))
                .isEqualTo("LTW on hard items: hot-dip-50, grade B; invented for this test");
        assertThat(fact(why, "Mind")).contains("somebody has to feel it");
    }

    @Test
    void theStepsStandByTheClockWithBathAndAmounts() {
        cleaning.select(span("K1", SetState.TREATING).id());
        assertThat(cleaning.stepRowsProperty().get())
                .extracting(StepRow::when)
                .containsExactly("17:15 – 17:35", "17:35 – 17:50", "17:50 – Tue 05:50");
        StepRow soak = cleaning.stepRowsProperty().get().get(1);
        assertThat(soak.where()).isEqualTo("hot-dip bay");
        assertThat(soak.amounts()).startsWith("50 °C; start at ");
        assertThat(soak.contactMin()).contains(15);
        assertThat(cleaning.cautionsProperty().get()).isNotEmpty();
    }

    @Test
    void theBayShowsWhoLiesInIt() {
        assertThat(picture().benches()).singleElement().satisfies(bay -> {
            assertThat(bay.label()).isEqualTo("hot-dip bay");
            assertThat(bay.turns()).extracting(BenchLane.Turn::kitSet).containsExactly("K1", "T2");
        });
    }

    @Test
    void theArrowOfTimeTellsHowAllSetsStand() {
        cleaning.chooseMoment(InventedWeek.at(0, "16:00"));
        assertThat(cleaning.momentWords()).isEqualTo("Mon 16:00");
        assertThat(cleaning.setsProperty().get())
                .extracting(SetRow::kitSet, SetRow::state)
                .contains(
                        org.assertj.core.groups.Tuple.tuple("K1", "dirty"),
                        org.assertj.core.groups.Tuple.tuple("T2", "in use"),
                        org.assertj.core.groups.Tuple.tuple("K2", "clean-dry"));
        cleaning.moveMoment(-10_000);
        assertThat(cleaning.momentProperty().get()).isEqualTo(picture().from());
    }

    @Test
    void arrowKeysGoAlongALaneAndToTheNextOne() {
        cleaning.chooseMoment(InventedWeek.at(0, "16:00"));
        cleaning.step(CleaningPicture.Step.RIGHT);
        assertThat(cleaning.span().orElseThrow().spoken()).startsWith("Kit set K1 dirty");
        cleaning.step(CleaningPicture.Step.RIGHT);
        assertThat(cleaning.span().orElseThrow().state()).isEqualTo(SetState.TREATING);
        assertThat(cleaning.momentProperty().get()).isEqualTo(InventedWeek.at(0, "17:15"));
        cleaning.step(CleaningPicture.Step.DOWN);
        assertThat(cleaning.span().orElseThrow().kitSet()).isEqualTo("K2");
    }

    @Test
    void aUseSelectsItsSiteOnEveryScreen() {
        cleaning.select(span("K1", SetState.IN_USE).id());
        assertThat(session.selection().site()).contains("BRN-01");
    }

    @Test
    void aFindFlagsSetsChangesTheirCleaningAndUndoTakesItBack() {
        SetSpan before = span("T2", SetState.TREATING);
        session.seen(new SeenPest("PEL", "LTW", InventedWeek.at(1, "09:00")));
        assertThat(lane("T2").flagged())
                .contains(new FindReport.Flag(true, "was in the Pell after the last clear visit"));
        assertThat(cleaning.momentWords()).isEqualTo("Tue 09:00");
        assertThat(lane("K1").flagged()).isEmpty();
        assertThat(span("T2", SetState.TREATING).to()).isEqualTo(before.to().plus(Duration.ofMinutes(15)));
        assertThat(cleaning.findProperty().get())
                .containsExactly(
                        new Fact("Find", "LTW was seen in PEL"),
                        new Fact("Kit sets that were exposed", "• T2, from Mon 15:25 on"),
                        new Fact("Notices due", "none"));
        session.undo();
        assertThat(lane("T2").flagged()).isEmpty();
        assertThat(span("T2", SetState.TREATING).to()).isEqualTo(before.to());
        assertThat(cleaning.findProperty().get()).isEmpty();
    }

    @Test
    void aFindOutlivesReadingTheFolderAgain() {
        session.seen(new SeenPest("PEL", "LTW", InventedWeek.at(1, "09:00")));
        session.readAgain();
        assertThat(lane("T2").flagged()).isPresent();
        assertThat(desk.asked).last().isEqualTo("trace LTW PEL");
    }

    @Test
    void withoutARoundItSaysSo() {
        CleaningViewModel empty = new CleaningViewModel(
                new SessionModel(desk, new BackgroundWork(Runnable::run, Runnable::run)), Clock.systemUTC());
        assertThat(empty.emptyWordsProperty().get()).isEqualTo("No round is open.");
        assertThat(empty.pictureProperty().get()).isEmpty();
        empty.step(CleaningPicture.Step.RIGHT);
        assertThat(empty.span()).isEmpty();
    }
}
