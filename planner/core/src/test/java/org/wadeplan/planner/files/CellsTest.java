package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Single cells: what they read as, and what they are refused for. */
class CellsTest {

    private static final Range ANY = Range.of(-1e9, 1e9, "m");
    private static final Collection<String> STREAMS = List.of("BRN", "HSK", "TOL", "OUN", "PEL");

    @ParameterizedTest
    @CsvSource({"0.74,0.74", ".5,0.5", "5.,5", "+3,3", "-3.25,-3.25", "1e3,1000", "007,7"})
    void readsPlainNumbers(String text, double expected) {
        assertThat(NumberCell.decimal(text, ANY)).isEqualTo(Reading.of(expected));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1d", "1f", "0x10", "1_000", "1 000", "٣", "--1", "1e", ".", "1.2.3", "1e9999", "5 m"})
    void refusesWhatOnlyAProgramWouldTakeForANumber(String text) {
        assertThat(NumberCell.decimal(text, ANY).fault().map(Fault::code)).contains("not-a-number");
    }

    @ParameterizedTest
    @CsvSource({"0,true", "6,true", "6.0000001,false", "-0.0000001,false"})
    void aRangeHoldsBothItsEnds(String text, boolean held) {
        assertThat(NumberCell.decimal(text, Range.DEPTH_M).value().isPresent()).isEqualTo(held);
    }

    @Property
    void everyNumberInRangeReadsBackAsItself(@ForAll @DoubleRange(min = -1e9, max = 1e9) double value) {
        assertThat(NumberCell.decimal(Double.toString(value), ANY)).isEqualTo(Reading.of(value));
    }

    @Property
    void everyDayReadsBackAsItself(@ForAll @IntRange(min = 0, max = 80_000) int daysAfter1950) {
        LocalDate day = LocalDate.of(1950, 1, 1).plusDays(daysAfter1950);
        assertThat(DateCell.date(day.toString())).isEqualTo(Reading.of(day));
    }

    @Property
    void noTextWhateverMakesAReaderFail(@ForAll @StringLength(max = 30) String text) {
        assertThat(List.of(
                        NumberCell.decimal(text, ANY),
                        NumberCell.integer(text, ANY),
                        DateCell.date(text),
                        DateCell.time(text),
                        DateCell.instant(text),
                        Words.flag(text)))
                .allMatch(reading ->
                        reading.value().isPresent() != reading.fault().isPresent());
    }

    @Test
    void readsTimesAndInstants() {
        assertThat(DateCell.time("07:05")).isEqualTo(Reading.of(LocalTime.of(7, 5)));
        assertThat(DateCell.instant("2027-09-08T12:00+02:00"))
                .isEqualTo(Reading.of(Instant.parse("2027-09-08T10:00:00Z")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"24:00", "7:15", "07:60", "07:15:00", "0715"})
    void refusesOtherTimes(String text) {
        assertThat(DateCell.time(text).fault().map(Fault::code)).contains("time-form");
    }

    @Test
    void aDateThatHasOneReadingIsRefusedWithThatReading() {
        assertThat(DateCell.date("07/07/2027").fault().map(Fault::remedy)).contains("write 2027-07-07");
        assertThat(DateCell.date("31/12/2027").fault().map(Fault::remedy)).contains("write 2027-12-31");
        assertThat(DateCell.date("31/31/2027").fault().map(Fault::remedy)).contains("check the day");
    }

    @ParameterizedTest
    @CsvSource({"BNR,BRN", "brn,BRN", "BRNN,BRN", "BR,", "HSL,HSK", "XYZ,", "T,"})
    void suggestsTheNearestWordOrNone(String word, String nearest) {
        assertThat(NearestWord.of(word, STREAMS)).isEqualTo(Optional.ofNullable(nearest));
    }

    /** Worked by hand: one change each. Swapped neighbours count once (optimal string alignment). */
    @ParameterizedTest
    @CsvSource({"BNR,BRN,1", "kitten,sitting,3", "flaw,lawn,2", "same,same,0", "ca,abc,3"})
    void countsChanges(String a, String b, int changes) {
        assertThat(NearestWord.distance(a, b)).isEqualTo(changes);
        assertThat(NearestWord.distance(b, a)).isEqualTo(changes);
    }

    @ParameterizedTest
    @CsvSource({
        "0,0 m",
        "237,240 m",
        "994,990 m",
        "996,1.0 km",
        "3449,3.4 km",
        "10031,about 10 km",
        "340200,about 340 km",
        "10031000,about 10 000 km"
    })
    void saysDistancesWithoutFalsePrecision(double distanceM, String words) {
        assertThat(Distances.words(distanceM)).isEqualTo(words);
    }

    @Test
    void aWordOfAllowedOnesMayBeInAnyCaseInTurkeyToo() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertThat(Words.plain("pick", "rinse").read("PICK")).isEqualTo(Reading.of("pick"));
        } finally {
            Locale.setDefault(before);
        }
    }
}
