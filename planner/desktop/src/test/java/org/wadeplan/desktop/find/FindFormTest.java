package org.wadeplan.desktop.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wadeplan.desktop.session.InventedWeek;
import org.wadeplan.desktop.session.SeenPest;

class FindFormTest {

    private final FindForm form = FindForm.of(InventedWeek.round(), InventedWeek.at(1, "17:20"));
    private final Optional<FindForm.Choice> tollow =
            form.waters().stream().filter(choice -> choice.id().equals("TOL")).findFirst();
    private final Optional<FindForm.Choice> weed =
            form.pests().stream().filter(choice -> choice.id().equals("LTW")).findFirst();

    @Test
    void itBeginsWithTheMomentInTheRoundsZone() {
        assertThat(form.when()).isEqualTo("2027-09-07 17:20");
        assertThat(form.seen(tollow, weed, form.when()))
                .contains(new SeenPest("TOL", "LTW", InventedWeek.at(1, "17:20")));
    }

    @Test
    void itSaysWhatIsMissing() {
        assertThat(form.missing(Optional.empty(), weed, form.when()))
                .contains("Choose the water in which it was seen.");
        assertThat(form.missing(tollow, Optional.empty(), form.when())).contains("Choose the pest.");
        assertThat(form.missing(tollow, weed, form.when())).isEmpty();
        assertThat(form.seen(Optional.empty(), weed, form.when())).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "yesterday", "07/09/2027 17:20", "2027-09-07", "2027-02-30 17:20", "2027-09-07 25:00"})
    void aTimeThatIsNoneIsNotGuessed(String typed) {
        assertThat(form.seen(tollow, weed, typed)).isEmpty();
        assertThat(form.missing(tollow, weed, typed))
                .hasValueSatisfying(said -> assertThat(said).contains("2027-09-07 17:20"));
    }

    @Test
    void theTimeMayBeWrittenWithATInTheMiddle() {
        assertThat(form.instant(" 2027-09-07T17:20 ")).contains(InventedWeek.at(1, "17:20"));
    }
}
