package org.wadeplan.planner.permission;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.round.Permit;
import org.wadeplan.planner.round.Permit.PermitStatus;
import org.wadeplan.planner.round.Permit.TakeCap;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.IlvermoorWeek;
import org.wadeplan.planner.week.RoundChange;

/** On the invented demo round; what the words of its permits mean is from the invented scenario. */
class PermissionCheckTest {

    private static final LocalDate MONDAY = LocalDate.of(2027, 9, 6);

    private final Round round = IlvermoorWeek.resolved();

    private static Permission ask(Round round, String site, String method, LocalDate date) {
        return PermissionCheck.of(round, round.site(site).orElseThrow(), method, date);
    }

    private Permission withPermit(String id, UnaryOperator<Permit> change, String site, String method, LocalDate date) {
        Round changed = RoundChange.of(round)
                .permits(permit -> permit.id().equals(id) ? change.apply(permit) : permit)
                .round();
        return ask(changed, site, method, date);
    }

    private static Permit permit(Permit from, PermitStatus status, Optional<LocalDate> notified, List<String> methods) {
        return new Permit(
                from.id(),
                from.catchment(),
                methods,
                from.validFrom(),
                from.validUntil(),
                status,
                from.closedFrom(),
                from.closedUntil(),
                from.closureReason(),
                from.notifyWorkingDays(),
                notified,
                from.takeCap(),
                from.note());
    }

    @Test
    void aGrantedPermitAndAConsentAuthorise() {
        Permission permission = ask(round, "BRN-01", "EFISH", MONDAY);

        assertThat(permission.authorised()).isTrue();
        assertThat(permission.conditions()).contains("meadow gate, shut it behind you");
    }

    @Test
    void theLastDayOfAPermitCountsAndTheNextDoesNot() {
        assertThat(ask(round, "BRN-01", "EFISH", LocalDate.of(2027, 9, 14)).blocked())
                .isFalse();
        assertThat(ask(round, "BRN-01", "EFISH", LocalDate.of(2027, 9, 15)).blocks())
                .containsExactly(
                        "Permit P-BRN runs from 2027-04-01 to 2027-09-14, not on 2027-09-15.",
                        "Closed season of permit P-BRN from 2027-09-15 to 2027-11-30 (lantern lamprey spawning).");
    }

    @Test
    void aMethodThatThePermitDoesNotNameIsBlocked() {
        assertThat(ask(round, "OUN-01", "SPOT", MONDAY).blocks())
                .containsExactly(
                        "No permit covers SPOT in catchment OUN: held: P-OUN for EFISH, EFISH_AM, TRAP, RECORD_DRY.");
    }

    @Test
    void aPermitForElectrofishingCoversItsMorningVariantAndAllCoversEverything() {
        assertThat(withPermit(
                                "P-TOL",
                                from -> permit(from, from.status(), Optional.empty(), List.of("EFISH")),
                                "TOL-03",
                                "EFISH_AM",
                                MONDAY)
                        .authorised())
                .isTrue();
        assertThat(withPermit(
                                "P-TOL",
                                from -> permit(from, from.status(), Optional.empty(), List.of("all")),
                                "TOL-03",
                                "TRAP",
                                MONDAY)
                        .authorised())
                .isTrue();
    }

    @Test
    void aPendingPermitIsAwaitedAndARefusedOneBlocks() {
        UnaryOperator<Permit> pending = from -> permit(from, PermitStatus.PENDING, Optional.empty(), from.methods());
        UnaryOperator<Permit> refused = from -> permit(from, PermitStatus.REFUSED, Optional.empty(), from.methods());

        Permission awaited = withPermit("P-PEL", pending, "PEL-01", "TRAP", MONDAY);
        assertThat(awaited.awaiting()).containsExactly("Permit P-PEL is pending.");
        assertThat(awaited.blocked()).isFalse();
        assertThat(withPermit("P-PEL", refused, "PEL-01", "TRAP", MONDAY).blocks())
                .containsExactly("Permit P-PEL was refused.");
    }

    /** Invented scenario, trouble 4: two working days before Monday 6 September is Wednesday 1 September. */
    @Test
    void noticeOnWednesdayIsInTimeForMondayAndOnThursdayIsNot() {
        LocalDate wednesday = LocalDate.of(2027, 9, 1);
        UnaryOperator<Permit> inTime = from -> permit(from, from.status(), Optional.of(wednesday), from.methods());
        UnaryOperator<Permit> late =
                from -> permit(from, from.status(), Optional.of(wednesday.plusDays(1)), from.methods());

        assertThat(withPermit("P-HSK", inTime, "HSK-01", "EFISH", MONDAY).authorised())
                .isTrue();
        assertThat(withPermit("P-HSK", late, "HSK-01", "EFISH", MONDAY).blocks())
                .containsExactly("Notice under permit P-HSK was given on 2027-09-02, after 2027-09-01, the latest for"
                        + " 2027-09-06. Earliest lawful day: 2027-09-07 (public holidays not known).");
    }

    @Test
    void noticeNotYetGivenIsAwaitedWithItsDate() {
        UnaryOperator<Permit> none = from -> permit(from, from.status(), Optional.empty(), from.methods());

        assertThat(withPermit("P-HSK", none, "HSK-01", "EFISH", MONDAY).awaiting())
                .singleElement()
                .asString()
                .contains("by 2027-09-01 for a visit on 2027-09-06");
    }

    @Test
    void aTakeCapIsAConditionAndBlocksWhenItIsUsedUp() {
        assertThat(ask(round, "BRN-01", "EFISH", MONDAY).conditions())
                .contains("lantern lamprey handled this year: 17 of 25 (permit P-BRN): stop and ask at 20.");
        UnaryOperator<Permit> full = from -> new Permit(
                from.id(),
                from.catchment(),
                from.methods(),
                from.validFrom(),
                from.validUntil(),
                from.status(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                Optional.empty(),
                Optional.of(new TakeCap("lantern lamprey", 25, 25)),
                Optional.empty());
        assertThat(withPermit("P-BRN", full, "BRN-01", "EFISH", MONDAY).blocks())
                .containsExactly("lantern lamprey handled this year: 25 of 25 (permit P-BRN): the cap is used up.");
    }

    @Test
    void refusedConsentBlocksAndNoConsentMeansNobodyHasAsked() {
        assertThat(ask(round, "OUN-02", "EFISH", MONDAY).blocks()).contains("Consent C-OUN-02 for OUN-02 was refused.");
        Round nobody = RoundChange.of(round)
                .keepConsents(consent -> !consent.site().equals("BRN-01"))
                .round();
        assertThat(ask(nobody, "BRN-01", "EFISH", MONDAY).blocks())
                .containsExactly("No consent row for BRN-01: nobody has asked.");
    }

    @Test
    void accessHoursComeWithThePermission() {
        assertThat(ask(round, "TOL-03", "EFISH_AM", MONDAY).accessFrom()).contains(LocalTime.of(7, 15));
        assertThat(ask(round, "PEL-02", "SPOT", MONDAY).accessUntil()).contains(LocalTime.of(22, 0));
    }

    @Test
    void nightWorkNeedsAYesAndNoNo() {
        assertThat(ask(round, "HSK-02", "SPOT", MONDAY).blocked()).isFalse();
        assertThat(ask(round, "BRN-03", "SPOT", MONDAY).blocks()).contains("No access to BRN-03 after dark.");
    }

    /** Common practice: recording a dry site handles no fish. */
    @Test
    void recordingADrySiteNeedsConsentAndNoPermit() {
        UnaryOperator<Permit> refused = from -> permit(from, PermitStatus.REFUSED, Optional.empty(), from.methods());

        assertThat(withPermit("P-TOL", refused, "TOL-02", "RECORD_DRY", MONDAY).authorised())
                .isTrue();
    }
}
