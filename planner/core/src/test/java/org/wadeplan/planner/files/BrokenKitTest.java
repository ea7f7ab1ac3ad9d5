package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.files.BrokenRound.Case;

/** Faults in the store, its certificates and the ticks of load lists. */
class BrokenKitTest {

    private static final String TICKS = "date,crew,item,ticked_at,by,override_by,override_reason\n";

    @TempDir
    Path temp;

    static Stream<Case> cases() {
        return Stream.of(
                new Case(
                        round -> round.with(
                                "store.csv", "H1,head-torch,head-torch 1,1,", "H1,head-torch,head-torch 1,-1,"),
                        "ERROR out-of-range store.csv, line 58 (H1), column quantity: \"-1\" is too low. Allowed: a number from 0 to 1000000. Do: check the value and its unit"),
                new Case(
                        round -> round.with(
                                "store.csv",
                                "N1,pole-net,pole net 1,1,each,,absorbent,clean-dry,,,,,,2.2,,",
                                "N1,pole-net,pole net 1,1,each,,absorbent,clean-dry,,,,,,-2.2,,"),
                        "ERROR out-of-range store.csv, line 19 (N1), column mass_kg: \"-2.2\" is too low. Allowed: a number from 0 to 10000 kg. Do: check the value and its unit"),
                new Case(
                        round -> round.with(
                                "certificates.csv",
                                "E2,service,2027-03-15,2028-03-14",
                                "E2,service,2028-03-15,2028-03-14"),
                        "ERROR ends-before-start certificates.csv, line 3 (E2 service), column valid_until: 2028-03-14 is before valid_from, 2028-03-15. Allowed: the same or later. Do: check both; they may be swapped"),
                new Case(
                        round -> round.whole("load_ticks.csv", TICKS + "2027-09-06,A,E9,2027-09-06T07:20:00Z,Imre,,\n"),
                        "ERROR unknown-code load_ticks.csv, line 2 (2027-09-06 A E9), column item: \"E9\" is not known. Allowed: an item of store.csv, or a kit set of kit_sets.csv. Do: add it there, or mend it here"),
                new Case(
                        round -> round.whole(
                                "load_ticks.csv", TICKS + "2027-09-06,A,E1,2027-09-06T07:20:00Z,Imre,Thandiwe,\n"),
                        "ERROR half-an-override load_ticks.csv, line 2 (2027-09-06 A E1), column override_reason: one of override_by and override_reason stands here without the other. Allowed: both where somebody let the item go, neither otherwise. Do: fill in the other, or clear both"),
                new Case(
                        round -> round.whole(
                                "load_ticks.csv", TICKS + "2027-09-06,A,E1,2027-09-06T07:20:00Z,Imre,,looks dry\n"),
                        "ERROR half-an-override load_ticks.csv, line 2 (2027-09-06 A E1), column override_by: one of override_by and override_reason stands here without the other. Allowed: both where somebody let the item go, neither otherwise. Do: fill in the other, or clear both"),
                new Case(
                        round -> round.whole("load_ticks.csv", TICKS + "2027-09-06,D,E1,2027-09-06T07:20:00Z,Imre,,\n"),
                        "ERROR unknown-code load_ticks.csv, line 2 (2027-09-06 D E1), column crew: \"D\" is not known. Allowed: a crew of crew_days.csv: A, B. Do: add it there, or mend it here"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void eachFaultGivesItsSentenceAndNoOther(Case broken) {
        assertThat(broken.fault().apply(BrokenRound.in(temp)).sentences())
                .containsExactlyElementsOf(broken.sentences());
    }
}
