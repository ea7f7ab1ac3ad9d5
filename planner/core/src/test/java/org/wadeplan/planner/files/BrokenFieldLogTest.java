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

    private static final String BATHS = "bath,resource,agent,made_at,volume_l,strength,strength_basis,measured_at,"
            + "measured_strength,lot,discarded_at\n";
    private static final String CLEANINGS = "cleaning,kit_set,treatment,mode,bath,started_at,ended_at,temp_start_c,"
            + "temp_end_c,strength_start,strength_end,picked,rinsed,dry_at,operator,checker,override_by,override_reason,"
            + "note\n";
    private static final String GOOD_BATH = "B1,oxidiser-tub,oxidiser,2027-09-06T15:40:00Z,60,20,g/L product,,,C1,\n";

    @TempDir
    Path temp;

    static Stream<Case> cases() {
        return Stream.of(agreed(), baths(), cleanings()).flatMap(cases -> cases);
    }

    private static Case bath(String line, String sentence) {
        return new Case(round -> round.whole("baths.csv", BATHS + line + "\n"), sentence);
    }

    private static Stream<Case> baths() {
        return Stream.of(
                new Case(
                        round -> round.with(
                                "water_pests.csv",
                                "TOL,GSA,known,2026-09-12,\"invented pest survey, demo only\"\n",
                                ""),
                        "WARNING pest-status-missing water_pests.csv, TOL: no row says anything of GSA in TOL, so that kit from there is cleaned against it only on the way into a protected water. Allowed: a row for every pest of the list in every water. Do: add the row: known, suspected or free with its date, or unknown, which counts as suspected"),
                bath(
                        "B1,oxidiser-tub,oxidiser,2027-09-06T15:40:00Z,60,20,,,,,",
                        "ERROR strength-basis-missing baths.csv, line 2 (B1), column strength_basis: a strength stands here and nothing says what of: of product or of active agent. Allowed: a basis such as g/L product or mg/L active. Do: look it up in the source; the two can differ several times over"),
                bath(
                        "B1,oxidiser-tub,oxidiser,2027-09-06T15:40:00Z,60,,,2027-09-06T15:45:00Z,21,,",
                        "ERROR reading-basis-missing baths.csv, line 2 (B1), column strength_basis: a reading stands here and nothing says what of: of product or of active agent. Allowed: a basis such as g/L product or mg/L active, for strength and reading alike. Do: look at the strip's or the meter's label"),
                bath(
                        "B1,oxidiser-tub,oxidiser,2027-09-06T15:40:00Z,60,20,g/L product,2027-09-06T15:00:00Z,21,,",
                        "ERROR measured-before-made baths.csv, line 2 (B1), column measured_at: the bath was measured at 2027-09-06T15:00:00Z and made only at 2027-09-06T15:40:00Z. Allowed: a reading at or after made_at. Do: mend the earlier or the later time from the sheet"),
                bath(
                        "B1,oxidiser-tub,oxidiser,2027-09-06T15:40:00Z,60,20,g/L product,,,,2027-09-06T15:00:00Z",
                        "ERROR discarded-before-made baths.csv, line 2 (B1), column discarded_at: the bath was tipped out at 2027-09-06T15:00:00Z and made only at 2027-09-06T15:40:00Z. Allowed: a time at or after made_at. Do: mend the earlier or the later time from the sheet"),
                bath(
                        "B1,oxidiser-tub,oxidiser,2027-09-06T15:40:00Z,-60,20,g/L product,,,,",
                        "ERROR out-of-range baths.csv, line 2 (B1), column volume_l: \"-60\" is too low. Allowed: a number from 0.1 to 100000 L. Do: check the value and its unit"));
    }

    private static Case cleaning(String line, String sentence) {
        return new Case(
                round -> round.whole("baths.csv", BATHS + GOOD_BATH).whole("cleanings.csv", CLEANINGS + line + "\n"),
                sentence);
    }

    private static Stream<Case> cleanings() {
        return Stream.of(
                cleaning(
                        "C1,K1,oxidiser-bath,soak,B1,2027-09-06T16:10:00Z,2027-09-06T16:10:00Z,,,21,20,true,true,,imre,,,,",
                        "ERROR ends-before-start cleanings.csv, line 2 (C1 K1), column ended_at: the cleaning ended at 2027-09-06T16:10:00Z and started at 2027-09-06T16:10:00Z. Allowed: a time after started_at. Do: mend the one or the other from the sheet"),
                cleaning(
                        "C1,K1,oxidiser-bath,soak,B1,2027-09-06T16:10:00Z,2027-09-06T16:30:00Z,,,21,20,true,true,,imre,,pavel,,",
                        "ERROR half-an-override cleanings.csv, line 2 (C1 K1), column override_reason: an override stands here with its name alone. Allowed: both the name of who let the set go and why, or neither. Do: fill in the other, or clear both"),
                cleaning(
                        "C1,K1,oxidiser-bath,soak,B1,2027-09-06T16:10:00Z,2027-09-06T16:30:00Z,,,21,20,true,true,,imre,,,no time,",
                        "ERROR half-an-override cleanings.csv, line 2 (C1 K1), column override_by: an override stands here with its reason alone. Allowed: both the name of who let the set go and why, or neither. Do: fill in the other, or clear both"),
                cleaning(
                        "C1,K1,oxidiser-bath,soak,B1,2027-09-06T15:10:00Z,2027-09-06T15:30:00Z,,,21,20,true,true,,imre,,,,",
                        "ERROR bath-not-made-yet cleanings.csv, line 2 (C1 K1), column bath: the cleaning started at 2027-09-06T15:10:00Z in bath B1, which was made only at 2027-09-06T15:40:00Z. Allowed: a bath that was made before. Do: name the bath that it lay in, or mend the one time or the other"),
                cleaning(
                        "C1,K1,oxidiser-bath,soak,B1,2027-09-20T16:10:00Z,2027-09-20T16:30:00Z,,,21,20,true,true,,imre,,,,",
                        "WARNING bath-expired cleanings.csv, line 2 (C1 K1), column bath: bath B1 was 14 d old when the cleaning started. Allowed: at most 7 d unused and closed, and a used one only on its day. Do: clean the set again in a fresh bath: this record clears nothing"));
    }

    private static Stream<Case> agreed() {
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
