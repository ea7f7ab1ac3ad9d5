package org.wadeplan.desktop.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.wadeplan.desktop.look.Mark;
import org.wadeplan.desktop.session.InventedWeek;
import org.wadeplan.desktop.session.SessionModel;
import org.wadeplan.desktop.session.StubDesk;
import org.wadeplan.desktop.work.BackgroundWork;

class MapViewModelTest {

    private final SessionModel session =
            new SessionModel(new StubDesk(), new BackgroundWork(Runnable::run, Runnable::run));
    private final MapViewModel map = new MapViewModel(session);

    @BeforeEach
    void open() {
        map.resize(800, 600);
        session.open(InventedWeek.FOLDER);
    }

    private SiteRow row(String site) {
        return map.rowsProperty().get().stream()
                .filter(row -> row.site().equals(site))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyStreamSiteAndReachIsOnTheMap() {
        MapPicture picture = map.pictureProperty().get().orElseThrow();
        assertThat(picture.streams()).extracting(StreamShape::code).containsExactly("BRN", "HSK", "OUN", "PEL", "TOL");
        assertThat(picture.pins()).hasSize(14);
        assertThat(picture.reaches()).hasSize(14);
        assertThat(map.viewProperty().get().ground().contains(picture.extent())).isTrue();
    }

    @Test
    void theTableSaysHowEachSiteStands() {
        assertThat(row("BRN-01").mark()).isEqualTo(Mark.PLANNED);
        assertThat(row("BRN-01").days()).isEqualTo("Mon 6 Sep");
        assertThat(row("BRN-01").crews()).isEqualTo("A");
        assertThat(row("BRN-01").rule()).isEqualTo("5");
        assertThat(row("PEL-01").mark()).isEqualTo(Mark.AWAITING);
        assertThat(row("PEL-01").days()).isEqualTo("Mon 6 Sep, Tue 7 Sep");
        assertThat(row("PEL-01").state()).isEqualTo("planned, NOT AUTHORISED: permit P-PEL is pending");
        assertThat(row("OUN-02").mark()).isEqualTo(Mark.NOT_PLANNED);
        assertThat(row("OUN-02").state()).isEqualTo("not placed: consent was refused");
        assertThat(row("HSK-02").mark()).isEqualTo(Mark.UNDECIDED);
        assertThat(row("HSK-02").method()).isEqualTo("-");
        assertThat(row("OUN-02B").mark()).isEqualTo(Mark.RESERVE);
    }

    @Test
    void aClickNearAPinSelectsItsSite() {
        MapPicture.Pin pin =
                map.pictureProperty().get().orElseThrow().pin("TOL-03").orElseThrow();
        ViewBox view = map.viewProperty().get();
        map.pick(view.x(pin.at().eastM()) + 4, view.y(pin.at().northM()) - 3);
        assertThat(session.selection().site()).contains("TOL-03");
        map.pick(-500, -500);
        assertThat(map.selectedProperty().get()).isEqualTo(Optional.of("TOL-03"));
    }

    @Test
    void showingTheSelectedSiteFillsTheMapWithItsReach() {
        session.selectSite("BRN-01");
        map.fitSelected();
        // 150 m of reach in 600 pixels, with some room.
        assertThat(map.viewProperty().get().metresPerPx()).isBetween(0.15, 0.35);
    }

    @Test
    void aSelectedSiteOutOfSightIsBroughtIntoView() {
        session.selectSite("BRN-01");
        map.fitSelected();
        session.selectSite("PEL-02");
        MapPicture.Pin pin =
                map.pictureProperty().get().orElseThrow().pin("PEL-02").orElseThrow();
        assertThat(map.viewProperty()
                        .get()
                        .ground()
                        .contains(pin.at().eastM(), pin.at().northM()))
                .isTrue();
    }

    @Test
    void aMapThatShowedEverythingStillDoesAfterResizing() {
        map.resize(300, 900);
        MapPicture picture = map.pictureProperty().get().orElseThrow();
        assertThat(map.viewProperty().get().ground().contains(picture.extent())).isTrue();
        map.zoomIn();
        double near = map.viewProperty().get().metresPerPx();
        map.resize(310, 900);
        assertThat(map.viewProperty().get().metresPerPx()).isEqualTo(near);
    }

    @Test
    void coordinatesAreGivenOnTheGridAndOnTheGlobe() {
        MapPicture.Pin pin =
                map.pictureProperty().get().orElseThrow().pin("BRN-01").orElseThrow();
        ViewBox view = map.viewProperty().get();
        String words = map.coordinates(view.x(pin.at().eastM()), view.y(pin.at().northM()));
        assertThat(words).startsWith("E 503150  N 5109420").contains("° N").contains("° W");
    }

    @Test
    void withoutARoundThereIsNothingToShow() {
        session.open(java.nio.file.Path.of("broken"));
        assertThat(map.pictureProperty().get()).isEmpty();
        assertThat(map.rowsProperty().get()).isEqualTo(List.of());
        map.fitSelected();
        map.pick(10, 10);
        assertThat(map.spoken()).isEqualTo("empty");
    }
}
