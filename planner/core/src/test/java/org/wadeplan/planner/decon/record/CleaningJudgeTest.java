package org.wadeplan.planner.decon.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.round.BathRecord;
import org.wadeplan.planner.round.Material;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.TreatmentMode;

/**
 * Sheets of the agreed Ilvermoor week (section 4.8), done right and spoilt in one place each. The rows are those of the
 * round's own treatments table, the invented agency sheet of section 4.4.
 */
class CleaningJudgeTest {

    private static final BathRecord FRESH = Records.bath("2027-09-06T15:40:00Z");

    /** Monday: K1 comes from the Brannet, where only what nobody can look for counts. */
    private static Records monday() {
        return Records.soak("K1", "2027-09-06T16:10:00Z", 20);
    }

    /** Tuesday: K4 comes from the Tollow, where the grey-slick alga is known: 60 °C for 40 min. */
    private static Records tuesday() {
        return Records.dip("K4", "hot-dip-60", 60, "2027-09-07T18:10:00Z", 40);
    }

    /** Thursday: K5 comes from the Pell with the lattice weed: pick, then 50 °C for 15 min. */
    private static Records thursday() {
        return Records.dip("K5", "hot-dip-50", 50, "2027-09-09T09:30:00Z", 15);
    }

    private static CleaningJudgement only(BathRecord bath, Records record) {
        return Records.judged(bath, record).get(0);
    }

    @Test
    void acceptsWhatARowSupportsAndCreditsEachPairWithItsRow() {
        CleaningJudgement alga = only(FRESH, tuesday());
        assertThat(alga.reasons()).isEmpty();
        assertThat(alga.accepted()).isTrue();
        assertThat(alga.credits().stream()
                        .filter(credit -> credit.cover().pest().equals("GSA"))
                        .map(credit -> credit.cover().material() + " "
                                + credit.cover().treatment() + " "
                                + credit.cover().grade() + " " + credit.cover().source() + " " + credit.from()))
                .containsExactly(
                        "HARD hot-dip-60 A invented agency sheet, demo only 2027-09-07T18:50:00Z",
                        "ABSORBENT hot-dip-60 A invented agency sheet, demo only 2027-09-07T18:50:00Z");
        assertThat(only(FRESH, monday()).accepted()).isTrue();
        assertThat(only(FRESH, thursday()).accepted()).isTrue();
    }

    /** Section 4.4: the snail's oxidiser row for absorbent items does not exist, and no drying stands in for it. */
    @Test
    void creditsNothingThatNoRowSupports() {
        assertThat(only(FRESH, monday()).covers().stream().map(cover -> cover.pest() + " " + cover.material()))
                .containsExactly("GSA HARD", "CSN HARD", "SPB HARD", "ANY HARD", "ANY ABSORBENT");
    }

    record Spoilt(String name, BathRecord bath, Records record, List<String> reasons) {

        Spoilt(String name, BathRecord bath, Records record, String... reasons) {
            this(name, bath, record, List.of(reasons));
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Spoilt> spoilt() {
        return Stream.concat(spoiltBaths(), spoiltRecords());
    }

    private static Stream<Spoilt> spoiltRecords() {
        return Stream.of(
                new Spoilt(
                        "too short for the absorbent items",
                        FRESH,
                        Records.dip("K4", "hot-dip-60", 60, "2027-09-07T18:10:00Z", 30),
                        "contact of 30 min is too short for GSA on absorbent items: 40 min are asked for"),
                new Spoilt(
                        "end reading under the hold",
                        FRESH,
                        tuesday().temps(66, 58.5),
                        "the temperature at the end was 58.5 °C, and 60 °C must hold to the end"),
                new Spoilt(
                        "dry before it was out of the bath",
                        FRESH,
                        tuesday().dry("2027-09-07T10:00:00Z"),
                        "it was found dry at Tue 7 Sep 10:00, before Tue 7 Sep 18:50, when it can be dry at the soonest"),
                new Spoilt(
                        "not picked",
                        FRESH,
                        thursday().notPicked(),
                        "it was not picked over first, which LTW on hard items ask for",
                        "it was not picked over first, which LTW on absorbent items ask for"),
                new Spoilt("not rinsed", FRESH, monday().notRinsed(), "it was not rinsed, which oxidiser asks for"),
                new Spoilt(
                        "ended before it started",
                        FRESH,
                        thursday().ended("2027-09-09T09:15:00Z"),
                        "it ended at Thu 9 Sep 09:15, not after its start at Thu 9 Sep 09:30"),
                new Spoilt(
                        "treatment not in the table",
                        FRESH,
                        Records.other("K1", "vinegar", TreatmentMode.SOAK, "2027-09-06T16:10:00Z", 20),
                        "treatment vinegar is not in the round's table"),
                new Spoilt(
                        "nobody checked after a known pest",
                        FRESH,
                        tuesday().checkedBy(""),
                        "nobody checked it, and after a water with GSA known a second person does"),
                new Spoilt(
                        "checked by its own operator",
                        FRESH,
                        tuesday().checkedBy("thandiwe"),
                        "its checker is its operator, thandiwe, and after a water with GSA known a second person does"),
                new Spoilt(
                        "half an override",
                        FRESH,
                        monday().letGo("pavel", ""),
                        "an override needs both a name and a reason, and only the name is there"),
                new Spoilt(
                        "while the set is in use",
                        FRESH,
                        Records.soak("K1", "2027-09-06T09:00:00Z", 20)
                                .withoutBath()
                                .as(TreatmentMode.SOAK),
                        "the set was in BRN (BRN-01) from Mon 6 Sep 08:30 to Mon 6 Sep 13:30 by the week in force",
                        "no bath on file is named, so nothing says what its readings are of (asked: 20 g/L product)"));
    }

    private static Stream<Spoilt> spoiltBaths() {
        return Stream.of(
                new Spoilt(
                        "bath 14 days old",
                        Records.bath("2027-08-23T16:00:00Z"),
                        monday(),
                        "bath B1 was made 14 d before and was no longer to be used after Mon 30 Aug 16:00: a used bath"
                                + " ends with its day, an unused closed one after 7 d"),
                new Spoilt(
                        "bath made after the soak",
                        Records.bath("2027-09-06T16:20:00Z"),
                        monday(),
                        "bath B1 was made only at Mon 6 Sep 16:20, after Mon 6 Sep 16:10"),
                new Spoilt(
                        "bath not on file",
                        FRESH,
                        monday().in("B9"),
                        "bath B9 is not on file",
                        "no bath on file is"
                                + " named, so nothing says what its readings are of (asked: 20 g/L product)"),
                new Spoilt(
                        "weak at the end",
                        FRESH,
                        monday().strengths(OptionalDouble.of(20), OptionalDouble.of(14)),
                        "the strength at the end was 14, under 20 g/L product"),
                new Spoilt(
                        "never measured",
                        FRESH,
                        monday().strengths(OptionalDouble.empty(), OptionalDouble.empty()),
                        "the strength at the start was not measured (asked: 20 g/L product)",
                        "the strength at the end was not measured (asked: 20 g/L product)"),
                new Spoilt(
                        "another basis",
                        changed(FRESH, Optional.of("% v/v product"), OptionalDouble.empty(), Optional.empty()),
                        monday(),
                        "bath B1 is in % v/v product, and the row asks for 20 g/L product: the two cannot be compared"),
                new Spoilt(
                        "a strip read too little",
                        changed(FRESH, Optional.of("g/L product"), OptionalDouble.of(15), Optional.empty()),
                        monday(),
                        "bath B1 read 15 at Mon 6 Sep 16:00, under its target of 20 g/L product: such a bath is tipped out"),
                new Spoilt(
                        "tipped out before",
                        changed(
                                FRESH,
                                Optional.of("g/L product"),
                                OptionalDouble.empty(),
                                Optional.of(Instant.parse("2027-09-06T16:15:00Z"))),
                        monday(),
                        "bath B1 was tipped out at Mon 6 Sep 16:15, before the set came out at Mon 6 Sep 16:30"));
    }

    private static BathRecord changed(
            BathRecord bath, Optional<String> basis, OptionalDouble reading, Optional<Instant> gone) {
        Optional<Instant> readAt =
                reading.isPresent() ? Optional.of(Instant.parse("2027-09-06T16:00:00Z")) : Optional.empty();
        return new BathRecord(
                bath.id(),
                bath.resource(),
                bath.agent(),
                bath.madeAt(),
                bath.volumeL(),
                bath.strength(),
                basis,
                readAt,
                reading,
                bath.lot(),
                gone);
    }

    @ParameterizedTest
    @MethodSource("spoilt")
    void refusesWithEveryReasonAtOnceAndCreditsNothing(Spoilt spoilt) {
        CleaningJudgement judgement = only(spoilt.bath(), spoilt.record());
        assertThat(judgement.reasons()).containsExactlyElementsOf(spoilt.reasons());
        assertThat(judgement.accepted()).isFalse();
        assertThat(judgement.credits()).isEmpty();
    }

    /** Section 4.4: the oxidiser bath works on the comb snail by immersion only; the X rows say so. */
    @Test
    void refusesASprayForTheCombSnailAndNamesTheRows() {
        CleaningJudgement spray =
                only(FRESH, Records.soak("K1", "2027-09-10T16:00:00Z", 20).as(TreatmentMode.SPRAY));
        assertThat(spray.accepted()).isFalse();
        assertThat(spray.reasons())
                .contains(
                        "no row supports oxidiser-bath as spray",
                        "spray of oxidiser was tested against CSN comb snail on hard items and found not effective: row"
                                + " oxidiser-spray, grade X (invented agency sheet, demo only)",
                        "spray of oxidiser was tested against CSN comb snail on absorbent items and found not effective:"
                                + " row oxidiser-spray, grade X (invented agency sheet, demo only)");
    }

    /** A used bath ends with its day: the second soak of the next morning is refused, the second of the day is not. */
    @Test
    void aUsedBathEndsWithItsDay() {
        List<CleaningJudgement> judged = Records.judged(
                Records.bath("2027-09-08T14:20:00Z"),
                Records.soak("K1", "2027-09-08T14:35:00Z", 20).named("C1"),
                Records.soak("K3", "2027-09-08T15:35:00Z", 20).named("C2"),
                Records.soak("K4", "2027-09-09T06:00:00Z", 20).named("C3"));
        assertThat(judged.stream().map(CleaningJudgement::accepted)).containsExactly(true, true, false);
        assertThat(judged.get(2).reasons().get(0))
                .isEqualTo(
                        "bath B1 was made the day before and was no longer to be used after Thu 9 Sep 00:00: a used bath"
                                + " ends with its day, an unused closed one after 7 d");
    }

    /** The oxidiser does nothing that a row supports against the snail on absorbent items: said, and not credited. */
    @Test
    void saysWhichPairStaysOpen() {
        CleaningJudgement soak =
                only(Records.bath("2027-09-10T15:50:00Z"), Records.soak("K1", "2027-09-10T16:00:00Z", 20));
        assertThat(soak.reasons())
                .containsExactly("no row supports oxidiser-bath as soak against CSN on absorbent items");
        assertThat(soak.covers())
                .noneMatch(cover -> cover.pest().equals("CSN") && cover.material() == Material.ABSORBENT);
    }

    /** Spore-blight on absorbent items: 20 min and then 24 h from dry to the touch, not from the end of the soak. */
    @Test
    void countsDryingFromDryToTheTouch() {
        Round round = Records.round(FRESH, monday().dry("2027-09-07T04:00:00Z"));
        CleaningJudgement.Credit blight = Records.judged(round).get(0).credits().stream()
                .filter(credit ->
                        credit.cover().pest().equals("SPB") && credit.cover().material() == Material.ABSORBENT)
                .findFirst()
                .orElseThrow();
        assertThat(blight.from()).isEqualTo(Instant.parse("2027-09-08T04:00:00Z"));
    }

    @Test
    void anOverrideIsShownAndCreditsNothing() {
        CleaningJudgement judgement = only(FRESH, tuesday().temps(50, 45).letGo("pavel", "storm coming, one set left"));
        assertThat(judgement.override()).hasValue(new CleaningJudgement.LetGo("pavel", "storm coming, one set left"));
        assertThat(judgement.accepted()).isFalse();
        assertThat(judgement.credits()).isEmpty();
    }
}
