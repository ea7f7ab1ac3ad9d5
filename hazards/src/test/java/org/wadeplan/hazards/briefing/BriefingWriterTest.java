package org.wadeplan.hazards.briefing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.hazards.assess.AssessedHazard;
import org.wadeplan.hazards.assess.Assessor;
import org.wadeplan.hazards.assess.ExampleVisits;
import org.wadeplan.hazards.assess.Exposure;
import org.wadeplan.hazards.assess.SiteHazard;
import org.wadeplan.hazards.register.Activity;
import org.wadeplan.hazards.register.Attribute;
import org.wadeplan.hazards.register.HazardRegister;

class BriefingWriterTest {

    private static final EmergencyBlock EMERGENCY = new EmergencyBlock(
            List.of("46.0581 N 20.6580 W (WGS 84)", "E 526480 N 5101730 (UTM 27N)"),
            Optional.of("Track gate, key 2"),
            Optional.of("Ilvermoor Hospital, 35 min"),
            Optional.of("Phone works at the gate only"),
            Optional.of("112"),
            Optional.of(LocalTime.of(18, 5)),
            Optional.of(LocalTime.of(18, 50)),
            Optional.of("Pavel rings the crew, then police at 19:50"));

    private static final CrewRoles CREW = CrewRoles.of(Map.of(
            "leader",
            "Thandiwe",
            "operator",
            "Thandiwe",
            "netter",
            "Dagny",
            "bank watcher",
            "Beatriz",
            "driver",
            "Beatriz"));

    private static final Review REVIEW = new Review("Pavel", LocalDate.of(2027, 9, 3));

    static Stream<Exposure> visits() {
        return Stream.of(
                ExampleVisits.tollowOldIron(),
                ExampleVisits.brannetNets(),
                ExampleVisits.tollowOldIron().measured(Attribute.DEPTH_VELOCITY_M2S, 0.95),
                ExampleVisits.tollowOldIron()
                        .noted(SiteHazard.freeText("Leaking drum on the bank").asNew())
                        .noted(SiteHazard.of("A01", "bull in the paddock until 07:15")
                                .asNew()),
                Exposure.at("BARE", LocalDate.of(2027, 9, 7)),
                Exposure.at("ALL", LocalDate.of(2027, 9, 7)).doing(Activity.values()));
    }

    @ParameterizedTest
    @MethodSource("visits")
    void aBriefingIsShortEnoughToReadAloud(Exposure visit) {
        Briefing briefing = write(visit);
        assertThat(briefing.wordCount()).isLessThanOrEqualTo(450);
        assertThat(briefing.readAloudMin()).isLessThanOrEqualTo(4);
        assertThat(briefing.fitsOneTalk()).isTrue();
        assertThat(briefing.hazards().size()).isLessThanOrEqualTo(7);
    }

    @ParameterizedTest
    @MethodSource("visits")
    void nothingDeadlyNewOrBreachedIsHidden(Exposure visit) {
        String spoken = String.join("\n", write(visit).spoken()).toLowerCase(Locale.ROOT);
        Assessor.assess(visit, HazardRegister.shipped()).hazards().stream()
                .filter(hazard -> hazard.canKill() || hazard.newSinceLast())
                .forEach(hazard -> assertThat(spoken).contains(hazard.title().toLowerCase(Locale.ROOT)));
        Assessor.assess(visit, HazardRegister.shipped()).breaches().forEach(breach -> assertThat(spoken)
                .contains(breach.what().toLowerCase(Locale.ROOT)));
    }

    @ParameterizedTest
    @MethodSource("visits")
    void everythingAssessedIsOnTheFrontOrTheBack(Exposure visit) {
        Briefing briefing = write(visit);
        assertThat(Stream.concat(briefing.hazards().stream(), briefing.back().hazards().stream())
                        .map(block -> block.hazard()))
                .isEqualTo(Assessor.assess(visit, HazardRegister.shipped()).hazards());
        assertThat(briefing.stops().size() + briefing.back().stops().size())
                .isEqualTo(Assessor.assess(visit, HazardRegister.shipped())
                        .stopLimits()
                        .size());
    }

    @ParameterizedTest
    @MethodSource("visits")
    void noBriefingCallsAnythingSafe(Exposure visit) {
        Briefing briefing = write(visit);
        assertThat(briefing.toString()).doesNotContainPattern("(?i)\\bsafe(ly)?\\b");
        assertThat(briefing.spoken()).allSatisfy(line -> assertThat(line).doesNotContainPattern("(?i)\\bsafe"));
    }

    @Test
    void tollowOldIronIsReadInTheOrderOfWhatCanKill() {
        Briefing briefing = write(ExampleVisits.tollowOldIron());
        assertThat(briefing.hazards()).extracting(block -> block.hazard().id()).startsWith("E01", "E04", "W02");
        assertThat(briefing.spoken())
                .containsSubsequence(
                        "TOL-01, 2027-09-07: before we go in.",
                        "Reviewed by Pavel on 2027-09-03.",
                        "1. Electric shock. This can kill.",
                        "Thandiwe: Call live and dead. Power off before anyone enters, leaves or slips.",
                        "2. Metal in the bed with live current. This can kill.",
                        "Sub-reach D: old fence wire and roof iron lie in the bed.",
                        "Thandiwe: Power off before the metal. Walk past it dead.",
                        "Check in: 18:05.",
                        "Overdue: 18:50.",
                        "Anyone may stop the work. No reason needed.");
    }

    @Test
    void tollowOldIronKeepsTheChemicalsInFront() {
        assertThat(write(ExampleVisits.tollowOldIron()).hazards())
                .extracting(block -> block.hazard().id())
                .contains("M02");
    }

    @Test
    void whatIsNewIsSaidFirst() {
        Exposure visit = ExampleVisits.tollowOldIron()
                .noted(SiteHazard.of("A01", "bull in the paddock until 07:15").asNew());
        assertThat(write(visit).spoken().get(2)).isEqualTo("New: bull in the paddock until 07:15.");
    }

    @Test
    void aBreachIsReadBeforeTheHazardsAndFillsTheGoBox() {
        Briefing briefing = write(ExampleVisits.tollowOldIron().measured(Attribute.DEPTH_VELOCITY_M2S, 0.95));
        assertThat(briefing.goBox()).isEqualTo("STOP. The plan breaches a limit. Reviewed by Pavel on 2027-09-03");
        assertThat(briefing.spoken().get(2))
                .isEqualTo("STOP NOW. Stay out at depth x speed over 0.6 m2/s (standard adult)."
                        + " The plan has depth x speed 0.95 m2/s.");
    }

    @Test
    void aBreachedHazardStaysInFrontHoweverLowItRanks() {
        Exposure visit = Exposure.at("ALL", LocalDate.of(2027, 9, 7))
                .doing(Activity.values())
                .measured(Attribute.MAT_COVER_PCT, 60);
        Briefing briefing = write(visit);
        assertThat(Assessor.assess(visit, HazardRegister.shipped()).hazards().subList(0, 7))
                .extracting(AssessedHazard::id)
                .doesNotContain("B04");
        assertThat(briefing.hazards()).extracting(block -> block.hazard().id()).contains("B04");
        assertThat(briefing.fitsOneTalk()).isTrue();
    }

    @Test
    void withoutAReviewTheSheetSaysSo() {
        Briefing briefing = BriefingWriter.write(
                Assessor.assess(ExampleVisits.tollowOldIron(), HazardRegister.shipped()),
                EMERGENCY,
                CREW,
                Optional.empty());
        assertThat(briefing.goBox()).isEqualTo("NOT REVIEWED");
    }

    @Test
    void whatIsMissingInAnEmergencyIsPrintedAsNotKnown() {
        assertThat(EmergencyBlock.unknown().lines()).hasSize(8).allSatisfy(line -> assertThat(line.sentence())
                .endsWith("NOT KNOWN. Find out before you leave."));
        EmergencyBlock onePosition = new EmergencyBlock(
                List.of("46.0581 N 20.6580 W (WGS 84)"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        assertThat(onePosition.lines()).extracting(EmergencyBlock.Line::label).contains("Second form of the position");
    }

    @Test
    void rolesThatNobodyHoldsAreListed() {
        Briefing briefing = BriefingWriter.write(
                Assessor.assess(ExampleVisits.tollowOldIron(), HazardRegister.shipped()),
                EMERGENCY,
                CrewRoles.of(Map.of("leader", "Thandiwe")),
                Optional.of(REVIEW));
        assertThat(briefing.back().rolesWithoutName()).containsExactly("bank watcher", "first aider", "operator");
    }

    @Test
    void aHazardWithoutControlsAsksForOne() {
        Briefing briefing = write(ExampleVisits.tollowOldIron().noted(SiteHazard.freeText("Leaking drum on the bank")));
        assertThat(briefing.spoken()).contains("No control is written for this. Agree on one before anyone goes in.");
    }

    @Test
    void theSheetSaysWhenEverythingRestsOnPeople() {
        AssessedHazard metal =
                write(ExampleVisits.tollowOldIron()).hazards().get(1).hazard();
        assertThat(HazardBlock.of(1, metal, CREW).leaning()).isPresent();
        assertThat(HazardBlock.of(1, metal, CREW).rating())
                .isEqualTo("before controls A, in place today A, with every control done B");
    }

    private static Briefing write(Exposure visit) {
        return BriefingWriter.write(
                Assessor.assess(visit, HazardRegister.shipped()), EMERGENCY, CREW, Optional.of(REVIEW));
    }
}
