package org.wadeplan.desktop.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.wadeplan.desktop.session.InventedWeek;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.session.StubDesk;
import org.wadeplan.desktop.work.BackgroundWork;
import org.wadeplan.planner.round.LoadTick;

class KitViewModelTest {

    private final StubDesk desk = new StubDesk();
    private final SessionModel session = new SessionModel(desk, new BackgroundWork(Runnable::run, Runnable::run));
    private final KitViewModel kit =
            new KitViewModel(session, Clock.fixed(InventedWeek.at(0, "06:30"), InventedWeek.ZONE));

    @BeforeEach
    void open() {
        session.open(InventedWeek.FOLDER);
        kit.loaderProperty().set("Imre");
    }

    private LoadRow row(String item) {
        return kit.rowsProperty().get().stream()
                .filter(row -> row.item().equals(item))
                .findFirst()
                .orElseThrow();
    }

    private void toggle(String item) {
        kit.select(row(item).id());
        kit.toggle();
    }

    private List<LoadTick> ticks() {
        return session.session().orElseThrow().work().ticks();
    }

    @Test
    void theListStandsByContainerWithALineForEachSerial() {
        assertThat(kit.chosenProperty().get()).contains(new CrewDayChoice(InventedWeek.MONDAY, "A"));
        assertThat(kit.rowsProperty().get())
                .extracting(row -> row.box() == LoadRow.Box.HEAD ? row.what() : row.item())
                .containsExactly(
                        "electrical case",
                        "E2",
                        "P1",
                        "P2",
                        "instrument case",
                        "conductivity-meter",
                        "kit set",
                        "K1",
                        "paper case",
                        "S1");
        assertThat(row("E2").validTo()).isEqualTo("2028-03-14");
        assertThat(row("E2").state()).isEqualTo("clean and dry");
        assertThat(row("S1").quantity()).isEqualTo("11 sheet");
    }

    @Test
    void whatIsShortStandsOnTopInWordsWithItsWayOut() {
        assertThat(kit.shortagesProperty().get()).singleElement().satisfies(fact -> {
            assertThat(fact.head()).isEqualTo("SHORT: conductivity meter. 2 needed, 1 there (crew A and B)");
            assertThat(fact.text()).endsWith("Way out: have M2 calibrated before Monday");
        });
        assertThat(row("conductivity-meter").tickable()).isFalse();
    }

    @Test
    void aTickIsKeptWithWhoAndWhenAndCounted() {
        assertThat(kit.progress()).isEqualTo("0 of 5 loaded");
        toggle("E2");
        assertThat(kit.progress()).isEqualTo("1 of 5 loaded");
        assertThat(ticks())
                .containsExactly(new LoadTick(
                        InventedWeek.MONDAY,
                        "A",
                        "E2",
                        InventedWeek.at(0, "06:30"),
                        "Imre",
                        Optional.empty(),
                        Optional.empty()));
        assertThat(row("E2").state()).isEqualTo("loaded 06:30 by Imre");
        assertThat(desk.asked).last().isEqualTo("keep [E2]");
        toggle("E2");
        assertThat(ticks()).isEmpty();
    }

    @Test
    void nothingIsTickedBeforeSomebodySaysWhoLoads() {
        kit.loaderProperty().set(" ");
        toggle("E2");
        assertThat(ticks()).isEmpty();
        assertThat(kit.refusedProperty().get().orElseThrow().reasons().get(0)).startsWith("Say first who loads");
        assertThat(kit.refusedProperty().get().orElseThrow().canLetGo()).isFalse();
    }

    @Test
    void aThingThatIsNotCleanIsRefusedInPlaceWithItsReason() {
        assertThat(row("P2").state()).isEqualTo("MAY NOT GO: P2 is dirty (mud in the plug)");
        toggle("P2");
        assertThat(ticks()).isEmpty();
        assertThat(kit.refusedProperty().get().orElseThrow().reasons())
                .containsExactly("P2 is dirty (mud in the plug). What to do: clean it.");
        assertThat(kit.refusedProperty().get().orElseThrow().canLetGo()).isTrue();
    }

    @Test
    void anOverrideAsksForANameAndAReasonAndIsShown() {
        toggle("P2");
        kit.overrideByProperty().set("Thandiwe");
        kit.letGo();
        assertThat(ticks()).isEmpty();
        assertThat(session.noticeProperty().get()).contains("who lets it go and why");
        kit.overrideReasonProperty().set("washed and dried at the site");
        kit.letGo();
        assertThat(kit.refusedProperty().get()).isEmpty();
        assertThat(row("P2").state())
                .isEqualTo("loaded 06:30 by Imre; LET GO by Thandiwe: washed and dried at the site");
    }

    @Test
    void undoTakesATickBackAndTheFileFollows() {
        toggle("E2");
        toggle("P1");
        session.undo();
        assertThat(kit.progress()).isEqualTo("1 of 5 loaded");
        assertThat(desk.asked).last().isEqualTo("keep [E2]");
        session.redo();
        assertThat(kit.progress()).isEqualTo("2 of 5 loaded");
        assertThat(desk.asked).last().isEqualTo("keep [E2, P1]");
    }

    @Test
    void aTickThatCannotBeWrittenIsNotShown() {
        desk.diskFull = true;
        toggle("E2");
        assertThat(kit.progress()).isEqualTo("0 of 5 loaded");
        assertThat(session.noticeProperty().get()).contains("the disk is full");
    }

    @Test
    void eachCrewKeepsItsOwnLoaderAndAnEmptyDaySaysSo() {
        kit.choose(new CrewDayChoice(InventedWeek.MONDAY, "B"));
        assertThat(kit.loaderProperty().get()).isEmpty();
        assertThat(kit.progress()).isEmpty();
        kit.choose(new CrewDayChoice(InventedWeek.MONDAY, "A"));
        assertThat(kit.loaderProperty().get()).isEqualTo("Imre");
    }

    @Test
    void withoutARoundItSaysSo() {
        KitViewModel empty = new KitViewModel(
                new SessionModel(desk, new BackgroundWork(Runnable::run, Runnable::run)), Clock.systemUTC());
        assertThat(empty.emptyWordsProperty().get()).isEqualTo("No round is open.");
        assertThat(empty.canTick()).isFalse();
    }
}
