package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.files.BrokenRound.Case;

/** One broken cell in a copy of the demo round gives exactly the sentences that a person needs. */
class BrokenCellsTest {

    @TempDir
    Path temp;

    static Stream<Case> cases() {
        return Stream.of(group1(), group2(), group3(), group4(), group5(), group6())
                .flatMap(group -> group);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void eachFaultGivesItsSentenceAndNoOther(Case broken) {
        assertThat(broken.fault().apply(BrokenRound.in(temp)).sentences())
                .containsExactlyElementsOf(broken.sentences());
    }

    private static Stream<Case> group1() {
        return Stream.of(
                new Case(
                        round -> round.with("sites.csv", "6.1,flowing,0.41,0.74,", "6.1,flowing,0.41,\"0,74\","),
                        "ERROR decimal-comma sites.csv, line 3 (BRN-02), column max_depth_m: \"0,74\" has a comma; use a point: 0.74. Allowed: a number from 0 to 6 m"),
                new Case(
                        round -> round.with("sites.csv", "6.1,flowing,0.41,0.74,", "6.1,flowing,0.41,\"1,740\","),
                        "ERROR decimal-comma sites.csv, line 3 (BRN-02), column max_depth_m: \"1,740\" has a comma; use a point: 1.740, or 1740 where the comma parts thousands. Allowed: a number from 0 to 6 m"),
                new Case(
                        round -> round.with("sites.csv", "6.1,flowing,0.41,0.74,", "6.1,flowing,0.41,NaN,"),
                        "ERROR not-finite sites.csv, line 3 (BRN-02), column max_depth_m: \"NaN\" stands for no number. Allowed: a number from 0 to 6 m. Do: write the number, or leave the cell blank where it is not known"),
                new Case(
                        round -> round.with("sites.csv", "6.1,flowing,0.41,0.74,", "6.1,flowing,0.41,74 cm,"),
                        "ERROR not-a-number sites.csv, line 3 (BRN-02), column max_depth_m: \"74 cm\" is not a number. Allowed: a number from 0 to 6 m. Do: write digits with a decimal point and without a unit, or leave the cell blank where it is not known"),
                new Case(
                        round -> round.with("sites.csv", "6.1,flowing,0.41,0.74,", "6.1,flowing,0.41,74,"),
                        "ERROR out-of-range sites.csv, line 3 (BRN-02), column max_depth_m: \"74\" is too high. Allowed: a number from 0 to 6 m. Do: check the value and its unit"),
                new Case(
                        round -> round.with("sites.csv", "6.1,flowing,0.41,0.74,", "6.1,flowing,0.41,-0.74,"),
                        "ERROR out-of-range sites.csv, line 3 (BRN-02), column max_depth_m: \"-0.74\" is too low. Allowed: a number from 0 to 6 m. Do: check the value and its unit"));
    }

    private static Stream<Case> group2() {
        return Stream.of(
                new Case(
                        round -> round.with("sites.csv", "6.1,flowing,0.41,", "6.1,flooding,0.41,"),
                        "ERROR word-unknown sites.csv, line 3 (BRN-02), column wet_state: \"flooding\" is not a word known here; nearest is flowing. Allowed: dry, pools, flowing. Do: write flowing if that is meant"),
                new Case(
                        round -> round.with("sites.csv", "6.1,flowing,0.41,", "6.1,flwoing,0.41,"),
                        "ERROR word-unknown sites.csv, line 3 (BRN-02), column wet_state: \"flwoing\" is not a word known here; nearest is flowing. Allowed: dry, pools, flowing. Do: write flowing if that is meant"),
                new Case(
                        round -> round.with("sites.csv", "6.1,flowing,0.41,", "6.1,mud,0.41,"),
                        "ERROR word-unknown sites.csv, line 3 (BRN-02), column wet_state: \"mud\" is not a word known here. Allowed: dry, pools, flowing. Do: choose one of them"),
                new Case(
                        round -> round.with("sites.csv", ",15.0,true,240,true,", ",15.0,yes,240,true,"),
                        "ERROR flag-form sites.csv, line 3 (BRN-02), column night_access: \"yes\" is neither true nor false. Allowed: true, false. Do: write true"),
                new Case(
                        round -> round.with("sites.csv", "BRN,BR02,", "BRN,BRN02,"),
                        "ERROR short-code-form sites.csv, line 3 (BRN-02), column short_code: \"BRN02\" does not fit a handheld's waypoint name. Allowed: four letters or digits without accents. Do: shorten it to four"),
                new Case(
                        round -> round.with("sites.csv", "BR02,501880,", "BR02,,"),
                        "ERROR blank sites.csv, line 3 (BRN-02), column east_m: the cell is blank. Allowed: a value: this column is required. Do: fill it in"));
    }

    private static Stream<Case> group3() {
        return Stream.of(
                new Case(
                        round -> round.with("sites.csv", "BR02,501880,", "BR02,5O1880,"),
                        "ERROR not-a-number sites.csv, line 3 (BRN-02), column east_m: \"5O1880\" is not a number. Allowed: a number from -20000000 to 20000000 m. Do: write digits with a decimal point and without a unit"),
                new Case(
                        round -> round.with("sites.csv", "layby at the intake road", "layby\u0001"),
                        "ERROR control-character sites.csv, line 3 (BRN-02), column parking: the cell holds a control character that cannot be printed. Allowed: text that can be printed. Do: type the cell again"),
                new Case(
                        round -> round.with("certificates.csv", "2027-03-15,2028-03-14", "2027-03-15,07/09/2027"),
                        "ERROR date-ambiguous certificates.csv, line 3 (E2 service), column valid_until: \"07/09/2027\" can be 7 September 2027 or 9 July 2027. Allowed: a date as year-month-day, such as 2027-09-07. Do: write 2027-09-07 or 2027-07-09, whichever is meant"),
                new Case(
                        round -> round.with("certificates.csv", "2027-03-15,2028-03-14", "2027-03-15,15/03/2028"),
                        "ERROR date-form certificates.csv, line 3 (E2 service), column valid_until: \"15/03/2028\" is not a date in ISO form. Allowed: a date as year-month-day, such as 2027-09-07. Do: write 2028-03-15"),
                new Case(
                        round -> round.with("certificates.csv", "2027-03-15,2028-03-14", "2027-03-15,2028-02-30"),
                        "ERROR date-impossible certificates.csv, line 3 (E2 service), column valid_until: \"2028-02-30\" is no day of the calendar. Allowed: a date as year-month-day, such as 2027-09-07. Do: check the day"),
                new Case(
                        round -> round.with("certificates.csv", "2027-03-15,2028-03-14", "2027-03-15,March 2028"),
                        "ERROR date-form certificates.csv, line 3 (E2 service), column valid_until: \"March 2028\" is not a date in ISO form. Allowed: a date as year-month-day, such as 2027-09-07. Do: write it so"));
    }

    private static Stream<Case> group4() {
        return Stream.of(
                new Case(
                        round -> round.with("certificates.csv", "2027-03-15,2028-03-14", "2027-03-15,0028-03-14"),
                        "ERROR date-impossible certificates.csv, line 3 (E2 service), column valid_until: \"0028-03-14\" has an unlikely year. Allowed: a date as year-month-day, such as 2027-09-07. Do: check the year"),
                new Case(
                        round -> round.with("certificates.csv", "2027-03-15,2028-03-14", "2028-03-15,2028-03-14"),
                        "ERROR ends-before-start certificates.csv, line 3 (E2 service), column valid_until: 2028-03-14 is before valid_from, 2028-03-15. Allowed: the same or later. Do: check both; they may be swapped"),
                new Case(
                        round -> round.with("consents.csv", "07:15,", "7:15,"),
                        "ERROR time-form consents.csv, line 9 (C-TOL-03), column access_from: \"7:15\" is not a time of day as HH:MM. Allowed: a time of day from 00:00 to 23:59. Do: write 07:15"),
                new Case(
                        round -> round.with("consents.csv", "07:15,", "07.15,"),
                        "ERROR time-form consents.csv, line 9 (C-TOL-03), column access_from: \"07.15\" is not a time of day as HH:MM. Allowed: a time of day from 00:00 to 23:59. Do: write hours, a colon and minutes"),
                new Case(
                        round -> round.with("consents.csv", ",-20.956110,", ",,"),
                        "ERROR point-half consents.csv, line 2 (C-BRN-01), column gate_lon_deg: only one of the two coordinates is there. Allowed: gate_lon_deg and gate_lat_deg together, or neither. Do: fill in the other, or clear both"),
                new Case(
                        round -> round.with("consents.csv", ",-20.956110,", ",-200.956110,"),
                        "ERROR out-of-range consents.csv, line 2 (C-BRN-01), column gate_lon_deg: \"-200.956110\" is too low. Allowed: a number from -180 to 180 degrees. Do: check the value and its unit"));
    }

    private static Stream<Case> group5() {
        return Stream.of(
                new Case(
                        round -> round.with("tides.csv", "2027-09-06T03:55:00Z", "2027-09-06 03:55"),
                        "ERROR offset-missing tides.csv, line 2 (PELL), column low_water: \"2027-09-06 03:55\" lacks its offset from UTC. Allowed: a date and time with its offset from UTC, such as 2027-09-08T12:00+00:00. Do: add the offset that holds there on that day, such as +00:00 or +01:00"),
                new Case(
                        round -> round.with("tides.csv", "2027-09-06T03:55:00Z", "Monday at four"),
                        "ERROR instant-form tides.csv, line 2 (PELL), column low_water: \"Monday at four\" is not a date and time in ISO form. Allowed: a date and time with its offset from UTC, such as 2027-09-08T12:00+00:00. Do: write the date, a T, the time and the offset"),
                new Case(
                        round -> round.with("travel.csv", "DEPOT,BRN-01,30,", "DEPOT,BRN-01,30.5,"),
                        "ERROR not-whole travel.csv, line 2 (DEPOT BRN-01), column minutes: \"30.5\" is not a whole number. Allowed: a whole number from 0 to 1440 minutes. Do: round it"),
                new Case(
                        round -> round.with("kit_needs.csv", "EFISH,survey,hand-net,2", "EFISH,survey,hand-net,-2"),
                        "ERROR out-of-range kit_needs.csv, line 5 (EFISH survey hand-net), column quantity: \"-2\" is too low. Allowed: a number from 0 to 1000000. Do: check the value and its unit"),
                new Case(
                        round -> round.with(
                                "past_visits.csv", "521631,5112881,60,4.0,24,215,", "521631,5112881,60,4.0,,215,"),
                        "WARNING settings-incomplete past_visits.csv, line 2 (HSK-01 2024-09-02): some of the unit's settings are known and some are not, so they count as not known. Allowed: frequency_hz, pulse_width_ms, duty_pct and voltage_v together, or none. Do: look them up in the field sheet"),
                new Case(
                        round -> round.with("permits.csv", "2027-09-15,2027-11-30,", "2027-09-15,,"),
                        "ERROR closure-half permits.csv, line 2 (P-BRN), column closed_from: the closed season has only one of its two days. Allowed: closed_from and closed_until together, or neither. Do: add the other day"));
    }

    private static Stream<Case> group6() {
        return Stream.of(
                new Case(
                        round -> round.with("permits.csv", "lantern lamprey,25,17,", "lantern lamprey,25,,"),
                        "ERROR take-cap-half permits.csv, line 2 (P-BRN), column take_cap: the cap on handling is not whole. Allowed: take_species, take_cap and take_used together, or none. Do: fill in what is missing; write 0 where none were handled yet"),
                new Case(
                        round -> round.with("waters.csv", "Brannet,BRN,0,99999,", "Brannet,BRN,99999,0,"),
                        "ERROR range-reversed waters.csv, line 2 (BRN), column from_mouth_max_m: the upper end lies below the lower end. Allowed: more than from_mouth_min_m. Do: swap the two"),
                new Case(
                        round -> round.with("waters.csv", "true,PELL,", "true,,"),
                        "ERROR tide-place-missing waters.csv, line 7 (PEL), column tide_place: the water is tidal and no tide place is named. Allowed: a place of tides.csv. Do: name it: without it nobody knows when the water can be waded"),
                new Case(
                        round -> round.with(
                                "treatments.csv",
                                "oxidiser-bath,GSA,hard,oxidiser,20,g/L product,",
                                "oxidiser-bath,GSA,hard,oxidiser,20,,"),
                        "ERROR strength-basis-missing treatments.csv, line 5 (oxidiser-bath GSA hard), column strength_basis: a strength stands here and nothing says what of: of product or of active agent. Allowed: a basis such as g/L product or mg/L active. Do: look it up in the source; the two can differ several times over"),
                new Case(
                        round -> round.with(
                                "kit_sets.csv", "K3,wading,hard;absorbent;felt", "K3,wading,hard;absorbent;felz"),
                        "ERROR word-unknown kit_sets.csv, line 4 (K3), column materials: \"felz\" is not a word known here; nearest is felt. Allowed: hard, absorbent, felt. Do: write felt if that is meant"));
    }
}
