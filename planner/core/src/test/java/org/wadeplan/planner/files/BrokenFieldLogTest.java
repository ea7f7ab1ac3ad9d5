package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.files.BrokenRound.Case;

/** Faults in what people agreed and did. */
class BrokenFieldLogTest {

    private static final String AGREED = "date,crew,start,site,part,kit_sets,note\n";

    @TempDir
    Path temp;

    static Stream<Case> cases() {
        return Stream.of(
                new Case(
                        round ->
                                round.whole("agreed_week.csv", AGREED + "2027-09-06,A,2027-09-06T08:30Z,BRN-01,,K1,\n"),
                        "ERROR half-a-visit agreed_week.csv, line 2 (2027-09-06 A 2027-09-06T08:30Z), column part: one of site and part stands here without the other. Allowed: both for a visit, neither for a cleaning. Do: fill in the other, or clear both"),
                new Case(
                        round -> round.whole(
                                "agreed_week.csv", AGREED + "2027-09-06,A,2027-09-06T08:30Z,BRN-01,survey,K9,\n"),
                        "ERROR unknown-code agreed_week.csv, line 2 (2027-09-06 A 2027-09-06T08:30Z), column kit_sets: \"K9\" is not known. Allowed: a kit set of kit_sets.csv: K1, K2, K3, K4, K5, T1, T2. Do: add it there, or mend it here"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void eachFaultGivesItsSentenceAndNoOther(Case broken) {
        assertThat(broken.fault().apply(BrokenRound.in(temp)).sentences())
                .containsExactlyElementsOf(broken.sentences());
    }
}
