package org.wadeplan.planner.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.round.Round;

class TravelTest {

    private final Round round = IlvermoorWeek.resolved();

    @Test
    void theTableCountsInBothDirections() {
        Travel travel = new Travel(round);

        assertThat(travel.between("DEPOT", "HSK-02").minutes()).isEqualTo(45);
        assertThat(travel.between("HSK-02", "DEPOT").minutes()).isEqualTo(45);
        assertThat(travel.between("HSK-02", "DEPOT").estimated()).isFalse();
    }

    /** BRN-03 to PEL-02: 35.2 km straight, x 1.35 at 45 km/h is 63.3 min, rounded up to 5: 65 (worked by hand). */
    @Test
    void aMissingDriveIsEstimatedAndMarked() {
        Travel travel = new Travel(RoundChange.of(round).travel(List.of()).round());

        Travel.Drive drive = travel.between("BRN-03", "PEL-02");

        assertThat(drive.minutes()).isEqualTo(65);
        assertThat(drive.estimated()).isTrue();
        assertThat(drive.words()).startsWith("BRN-03 to PEL-02: 65 min estimated, not in the travel table");
    }

    @Test
    void aDriveToTheSamePlaceTakesNothing() {
        assertThat(new Travel(round).between("BRN-03", "BRN-03").minutes()).isZero();
    }
}
