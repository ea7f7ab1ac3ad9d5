package org.wadeplan.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.kit.TickObjection.Ground;
import org.wadeplan.planner.round.FieldLog;
import org.wadeplan.planner.round.LoadTick;
import org.wadeplan.planner.round.Round;

/** Ticks on the agreed week of the Ilvermoor scenario (sections 4.6 and 4.8). */
class TickCheckTest {

    private static final Round ROUND = AgreedWeekKit.ROUND;

    private static TickOutcome tick(Round round, String crew, int day, String item, String at, String... override) {
        return TickCheck.check(
                round,
                AgreedWeekKit.PLAN.week(),
                AgreedWeekKit.PLAN.kit(),
                new TickRequest(
                        crew,
                        LocalDate.of(2027, 9, day),
                        item,
                        Instant.parse(at),
                        "Imre",
                        override.length == 0
                                ? Optional.empty()
                                : Optional.of(new TickRequest.TickOverride(override[0], override[1]))));
    }

    private static List<Ground> grounds(TickOutcome outcome) {
        return outcome.fold(accepted -> List.of(), refused -> refused.objections().stream()
                .map(TickObjection::ground)
                .toList());
    }

    private static String words(TickOutcome outcome) {
        return outcome.fold(
                accepted -> "", refused -> refused.objections().get(0).words());
    }

    @Test
    void takesACleanSetThatIsOnTheList() {
        TickOutcome outcome = tick(ROUND, "B", 8, "K2", "2027-09-08T06:50:00Z");
        assertThat(outcome)
                .isEqualTo(new TickOutcome.Accepted(
                        new LoadTick(
                                LocalDate.of(2027, 9, 8),
                                "B",
                                "K2",
                                Instant.parse("2027-09-08T06:50:00Z"),
                                "Imre",
                                Optional.empty(),
                                Optional.empty()),
                        List.of(),
                        List.of()));
    }

    /** Dry 12 h after the cleaning at 15:05 to 16:05 on Thursday. */
    @Test
    void refusesASetThatIsStillDrying() {
        TickOutcome outcome = tick(ROUND, "A", 10, "K1", "2027-09-09T20:00:00Z");
        assertThat(grounds(outcome)).containsExactly(Ground.NOT_CLEAN_AND_DRY);
        assertThat(words(outcome)).contains("K1 is drying").contains("released at Fri 10 Sep 04:05");
        assertThat(grounds(tick(ROUND, "A", 10, "K1-WADER", "2027-09-09T20:00:00Z")))
                .containsExactly(Ground.NOT_CLEAN_AND_DRY);
    }

    @Test
    void saysWhatACleanSetRestsOn() {
        assertThat(tick(ROUND, "A", 10, "K1", "2027-09-10T07:20:00Z")
                        .fold(TickOutcome.Accepted::remarks, refused -> List.of("refused")))
                .containsExactly("That it is clean and dry rests on the plan: nobody recorded the cleaning of Thu 9 Sep"
                        + " 15:05.");
    }

    /** E1's service was last valid on the day before. */
    @Test
    void refusesWhatIsNotValidOnTheDay() {
        TickOutcome outcome = tick(ROUND, "A", 8, "E1", "2027-09-08T07:20:00Z");
        assertThat(grounds(outcome)).containsExactly(Ground.NOT_ON_LIST, Ground.NOT_VALID);
        assertThat(grounds(tick(ROUND, "B", 10, "V2", "2027-09-10T12:00:00Z"))).containsExactly(Ground.NOT_VALID);
    }

    @Test
    void refusesWhatIsOutOfServiceWithItsTag() {
        TickOutcome outcome = tick(ROUND, "A", 6, "N2", "2027-09-06T07:20:00Z");
        assertThat(grounds(outcome)).containsExactly(Ground.NOT_ON_LIST, Ground.OUT_OF_SERVICE);
        TickOutcome.Refused refused = (TickOutcome.Refused) outcome;
        assertThat(refused.objections().get(1).words()).isEqualTo("N2 is out of service (frame cracked)");
        assertThat(refused.overridable()).isTrue();
    }

    /** The hire unit comes on Wednesday at noon. */
    @Test
    void refusesWhatIsNotThereYet() {
        assertThat(grounds(tick(ROUND, "A", 8, "E3", "2027-09-08T07:20:00Z")))
                .containsExactly(Ground.NOT_ON_LIST, Ground.NOT_THERE);
        assertThat(grounds(tick(ROUND, "A", 8, "E3", "2027-09-08T12:00:00Z"))).containsExactly(Ground.NOT_ON_LIST);
    }

    @Test
    void saysWhatIsOnTheListInstead() {
        TickOutcome.Refused refused = (TickOutcome.Refused) tick(ROUND, "A", 8, "N1", "2027-09-08T07:20:00Z");
        assertThat(refused.objections().get(0).remedy()).isEqualTo("the list has pole net N3");
    }

    @Test
    void refusesUnknownThingsAndDaysWhateverAnybodySays() {
        TickOutcome unknown = tick(ROUND, "A", 6, "E9", "2027-09-06T07:20:00Z", "Imre", "I want it");
        assertThat(grounds(unknown)).containsExactly(Ground.UNKNOWN_ITEM);
        assertThat(((TickOutcome.Refused) unknown).overridable()).isFalse();
        assertThat(grounds(tick(ROUND, "C", 6, "E1", "2027-09-06T07:20:00Z"))).containsExactly(Ground.NO_SUCH_CREW_DAY);
    }

    /** Traps that were set on Monday are lifted on Tuesday: they cannot be loaded. */
    @Test
    void refusesTrapsThatLieInTheWater() {
        assertThat(words(tick(ROUND, "A", 7, "T1", "2027-09-07T06:20:00Z"))).contains("T1 is in the water");
    }

    @Test
    void refusesATickLongBeforeTheSetGoesOutAgain() {
        assertThat(grounds(tick(ROUND, "A", 10, "K1", "2027-09-05T18:00:00Z"))).containsExactly(Ground.USED_BEFORE);
    }

    @Test
    void refusesWhatIsTickedOnAnotherCrewAtThatTime() {
        Round ticked = ticked("B", 7, "E2");
        assertThat(grounds(tick(ticked, "A", 7, "E2", "2027-09-07T06:20:00Z"))).contains(Ground.WITH_OTHER_CREW);
        assertThat(grounds(tick(ticked, "A", 9, "E2", "2027-09-09T07:20:00Z"))).doesNotContain(Ground.WITH_OTHER_CREW);
    }

    @Test
    void refusesASecondTickOfTheSame() {
        Round ticked = ticked("A", 7, "E2");
        assertThat(grounds(tick(ticked, "A", 7, "E2", "2027-09-07T06:20:00Z"))).contains(Ground.ALREADY_TICKED);
    }

    @Test
    void recordsWhoLetItGoAndWhy() {
        TickOutcome.Accepted accepted = (TickOutcome.Accepted)
                tick(ROUND, "A", 10, "K1", "2027-09-09T20:00:00Z", "Thandiwe", "dry by hand, inside and out");
        assertThat(accepted.tick().overrideBy()).hasValue("Thandiwe");
        assertThat(accepted.tick().overrideReason()).hasValue("dry by hand, inside and out");
        assertThat(accepted.overridden()).extracting(TickObjection::ground).containsExactly(Ground.NOT_CLEAN_AND_DRY);
    }

    @Test
    void recordsNoOverrideWhereNoneWasNeeded() {
        TickOutcome.Accepted accepted =
                (TickOutcome.Accepted) tick(ROUND, "B", 8, "K2", "2027-09-08T06:50:00Z", "Thandiwe", "just in case");
        assertThat(accepted.tick().overrideBy()).isEmpty();
    }

    private static Round ticked(String crew, int day, String item) {
        FieldLog log = ROUND.log();
        return ROUND.with(new FieldLog(
                log.agreed(),
                log.baths(),
                log.cleanings(),
                List.of(new LoadTick(
                        LocalDate.of(2027, 9, day),
                        crew,
                        item,
                        Instant.parse("2027-09-07T06:00:00Z"),
                        "Imre",
                        Optional.empty(),
                        Optional.empty()))));
    }
}
