package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.files.BrokenRound.Case;

/** One row that does not fit the others in a copy of the demo round gives exactly the sentences that a person needs. */
class BrokenRowsTest {

    @TempDir
    Path temp;

    static Stream<Case> cases() {
        return Stream.of(group1(), group2(), group3(), group4(), group5(), group6(), group7(), group8())
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
                        round -> round.plus(
                                "sites.csv",
                                "BRN-01,Gelder Ford,BRN,BR1B,503150,5109420,A,,L-BRN-01,,,,,,,,,,,,,,right,CARROW,30,"),
                        "ERROR duplicate sites.csv, line 16 (BRN-01), column site: \"BRN-01\" stands on line 2 already: name Brannet Meadow there and Gelder Ford here; short_code BR01 there and BR1B here; width_m 4.2 there and blank here. Allowed: each once. Do: find out which row is right and delete or rename the other"),
                new Case(
                        round -> round.with("sites.csv", "BRN,BR02,", "BRN,br01,"),
                        "ERROR duplicate sites.csv, line 3 (BRN-02), column short_code: \"br01\" stands on line 2 already: site BRN-01 there and BRN-02 here; name Brannet Meadow there and Brannet Pools here; short_code BR01 there and br01 here. Allowed: each once. Do: find out which row is right and delete or rename the other"),
                new Case(
                        round -> round.plus(
                                "store.csv",
                                "E1,backpack-unit,backpack unit 1,1,each,,hard,clean-dry,serviced 2027-09-03,,2027-09-07T23:59:00Z,,,9.5,,,backpack-unit"),
                        "ERROR duplicate store.csv, line 90 (E1), column item: \"E1\" stands on line 2 already: available_until blank there and 2027-09-07T23:59:00Z here. Allowed: each once. Do: find out which row is right and delete or rename the other"),
                new Case(
                        round -> round.plus("certificates.csv", "E1,service,2026-09-08,2027-09-07,"),
                        "ERROR certificate-twice certificates.csv, line 17 (E1 service): E1 has two certificates \"service\" for the same time: until 2028-09-02 (line 2) and until 2027-09-07 here. Allowed: one at a time, with valid_from where one follows another. Do: find out which is right and delete the other"),
                new Case(
                        round -> round.plus(
                                "certificates.csv", "E1,service,2027-09-03,2028-09-02,serviced before the round"),
                        "ERROR certificate-twice certificates.csv, line 17 (E1 service): E1 has two certificates \"service\" for the same time: until 2028-09-02 (line 2) and until 2028-09-02 here. Allowed: one at a time, with valid_from where one follows another. Do: find out which is right and delete the other"),
                new Case(
                        round -> round.plus("travel.csv", "DEPOT,BRN-01,35,second look"),
                        "ERROR duplicate travel.csv, line 107 (DEPOT BRN-01), column from, to: \"DEPOT BRN-01\" stands on line 2 already: minutes 30 there and 35 here; source invented road log of the agency, demo only there and second look here. Allowed: each once. Do: find out which row is right and delete or rename the other"));
    }

    private static Stream<Case> group2() {
        return Stream.of(
                new Case(
                        round -> round.with("sites.csv", "Brannet Head,BRN,", "Brannet Head,BNR,"),
                        "ERROR unknown-code sites.csv, line 4 (BRN-03), column stream: \"BNR\" is not known; nearest is BRN. Allowed: a code of the stream lines: BRN, HSK, OUN, PEL, TOL. Do: write BRN if that is meant"),
                new Case(
                        round -> round.with("consents.csv", "C-BRN-01,BRN-01,", "C-BRN-01,BRN-10,"),
                        "ERROR unknown-code consents.csv, line 2 (C-BRN-01), column site: \"BRN-10\" is not known; nearest is BRN-01. Allowed: a site of sites.csv. Do: write BRN-01 if that is meant"),
                new Case(
                        round -> round.plus("travel.csv", "DEPOT,QUARRY,10,asked on the phone"),
                        "ERROR unknown-code travel.csv, line 107 (DEPOT QUARRY), column to: \"QUARRY\" is not known. Allowed: a site of sites.csv, or the depot DEPOT. Do: add it there, or mend it here"),
                new Case(
                        round -> round.with("crew_days.csv", "2027-09-06,A,imre;", "2027-09-06,A,imer;"),
                        "ERROR unknown-code crew_days.csv, line 2 (2027-09-06 A), column people: \"imer\" is not known; nearest is imre. Allowed: a person of people.csv: imre, yusra, oskar, thandiwe, dagny, beatriz, pavel. Do: write imre if that is meant"),
                new Case(
                        round -> round.with(
                                "crew_days.csv",
                                "2027-09-06,A,imre;yusra;oskar,V1",
                                "2027-09-06,A,imre;yusra;oskar,V9"),
                        "ERROR unknown-code crew_days.csv, line 2 (2027-09-06 A), column vehicle: \"V9\" is not known. Allowed: an item of the kind vehicle in store.csv: V1, V2. Do: choose one, or add it there"),
                new Case(
                        round -> round.with(
                                "crew_days.csv",
                                "2027-09-06,A,imre;yusra;oskar,V1",
                                "2027-09-06,A,imre;yusra;oskar,E1"),
                        "ERROR unknown-code crew_days.csv, line 2 (2027-09-06 A), column vehicle: \"E1\" is of the kind backpack-unit, not a vehicle. Allowed: an item of the kind vehicle in store.csv: V1, V2. Do: choose one, or add it there"));
    }

    private static Stream<Case> group3() {
        return Stream.of(
                new Case(
                        round -> round.with(
                                "crew_days.csv",
                                "2027-09-06,B,thandiwe;dagny;beatriz",
                                "2027-09-06,B,thandiwe;dagny;oskar"),
                        "ERROR person-twice crew_days.csv, line 3 (2027-09-06 B), column people: oskar is with crew A on 2027-09-06 already (line 2). Allowed: one crew a day for each person. Do: take the name out of one of the two"),
                new Case(
                        round -> round.with(
                                "crew_days.csv",
                                "2027-09-06,B,thandiwe;dagny;beatriz,V2",
                                "2027-09-06,B,thandiwe;dagny;beatriz,V1"),
                        "WARNING vehicle-twice crew_days.csv, line 3 (2027-09-06 B), column vehicle: V1 is with crew A on 2027-09-06 already (line 2). Allowed: one crew a day for each vehicle. Do: name another, or see that one crew is back before the other leaves"),
                new Case(
                        round -> round.plus("crew_days.csv", "2027-10-06,A,imre;yusra;oskar,V1,,,"),
                        "WARNING day-outside-round crew_days.csv, line 16 (2027-10-06 A), column date: 2027-10-06 is no day of the round. Allowed: a day from 2027-09-06 to 2027-09-10, or a reserve day. Do: check the date, or add it to reserveDays in round.json"),
                new Case(
                        round -> round.with("people.csv", "Yusra,netter,", "Yusra,neter,"),
                        "WARNING role-unknown people.csv, line 3 (yusra), column roles: \"neter\" is close to netter but counts for nothing as it is written. Allowed: operator, netter, or a word of your own. Do: write netter if that is meant"),
                new Case(
                        round -> round.with("store.csv", "3,pair,K1,absorbent", "3,pair,K9,absorbent"),
                        "ERROR unknown-code store.csv, line 24 (K1-WADER), column kit_set: \"K9\" is not known. Allowed: a kit set of kit_sets.csv: K1, K2, K3, K4, K5, T1, T2. Do: add it there, or mend it here"),
                new Case(
                        round -> round.plus("certificates.csv", "E9,service,,2028-01-01,"),
                        "ERROR unknown-code certificates.csv, line 17 (E9 service), column item: \"E9\" is not known. Allowed: an item of store.csv. Do: add it there, or mend it here"));
    }

    private static Stream<Case> group4() {
        return Stream.of(
                new Case(
                        round -> round.with("kit_needs.csv", "EFISH,survey,pole-net,", "EFISH,survey,pole-nett,"),
                        "WARNING unknown-code kit_needs.csv, line 4 (EFISH survey pole-nett), column kind: \"pole-nett\" is not known; nearest is pole-net. Allowed: a kind of store.csv. Do: write pole-net if that is meant"),
                new Case(
                        round -> round.with(
                                "kit_needs.csv",
                                "EFISH,survey,backpack-unit,1,crew-day,0,electrical case,true,service",
                                "EFISH,survey,backpack-unit,1,crew-day,0,electrical case,true,servise"),
                        "WARNING unknown-code kit_needs.csv, line 2 (EFISH survey backpack-unit), column certificate: \"servise\" is not known; nearest is service. Allowed: a certificate of certificates.csv: service, calibration, test, check, inspection. Do: write service if that is meant"),
                new Case(
                        round -> round.with("water_pests.csv", "BRN,GSA,free", "BRN,GAS,free"),
                        "ERROR unknown-code water_pests.csv, line 2 (BRN GAS), column pest: \"GAS\" is not known; nearest is GSA. Allowed: a pest of pests.csv: GSA, CSN, LTW, SPB, ANY. Do: write GSA if that is meant"),
                new Case(
                        round -> round.with(
                                "kit_sets.csv",
                                "K1,wading,hard;absorbent,clean-dry,,",
                                "K1,wading,hard;absorbent,dirty,BRN;HKS,"),
                        "ERROR unknown-code kit_sets.csv, line 2 (K1), column exposed_to: \"HKS\" is not known; nearest is HSK. Allowed: a water of waters.csv: BRN, HSK, TOL, OUN-U, OUN-L, PEL. Do: write HSK if that is meant"),
                new Case(
                        round -> round.with("decon_steps.csv", "chemical,oxidiser-tub", "chemical,oxidizer-tub"),
                        "ERROR unknown-code decon_steps.csv, line 4 (soak chemical), column resource: \"oxidizer-tub\" is not known; nearest is oxidiser-tub. Allowed: a resource of decon_resources.csv: hot-bay, oxidiser-tub, drying-room, freezer. Do: write oxidiser-tub if that is meant"),
                new Case(
                        round -> round.with("waters.csv", "true,PELL,", "true,PLEL,"),
                        "ERROR unknown-code waters.csv, line 7 (PEL), column tide_place: \"PLEL\" is not known; nearest is PELL. Allowed: a place of tides.csv: PELL. Do: write PELL if that is meant"));
    }

    private static Stream<Case> group5() {
        return Stream.of(
                new Case(
                        round -> round.with("sites.csv", "right,CARROW,30,steep", "right,CAROW,30,steep"),
                        "ERROR unknown-code sites.csv, line 2 (BRN-01), column care: \"CAROW\" is not known; nearest is CARROW. Allowed: a place of care of care.csv: CARROW, NORTHFOLD. Do: write CARROW if that is meant"),
                new Case(
                        round -> round.with("sites.csv", "A,OUN-02,", "A,OUN-2,"),
                        "ERROR unknown-code sites.csv, line 12 (OUN-02B), column reserve_for: \"OUN-2\" is not known; nearest is OUN-02. Allowed: a site of sites.csv. Do: write OUN-02 if that is meant"),
                new Case(
                        round -> round.with("site_hazards.csv", "pool 0.74 m deep,F", "pool 0.74 m deep,K"),
                        "ERROR unknown-code site_hazards.csv, line 4 (BRN-02), column sub_reach: \"K\" is not known. Allowed: a sub-reach letter from A to J. Do: add it there, or mend it here"),
                new Case(
                        round -> round.with("site_hazards.csv", "BRN-02,W03", "BRN-02,W99"),
                        "ERROR unknown-code site_hazards.csv, line 4 (BRN-02), column hazard: \"W99\" is not known; nearest is W09. Allowed: an id of the hazard register. Do: write W09 if that is meant"),
                new Case(
                        round -> round.with("store.csv", "E1,backpack-unit", "E 1,backpack-unit"),
                        "ERROR unknown-code certificates.csv, line 2 (E1 service), column item: \"E1\" is not known. Allowed: an item of store.csv. Do: add it there, or mend it here"),
                new Case(
                        round -> round.with("permits.csv", "P-BRN,BRN,", "P-BRN,BRM,"),
                        "ERROR unknown-code permits.csv, line 2 (P-BRN), column catchment: \"BRM\" is not known; nearest is BRN. Allowed: a code of the catchments: BRN, HSK, OUN, PEL, TOL. Do: write BRN if that is meant"));
    }

    private static Stream<Case> group6() {
        return Stream.of(
                new Case(
                        round -> round.with("sites.csv", "A,,L-BRN-01,", "A,,L-BRN-10,"),
                        "ERROR unknown-code sites.csv, line 2 (BRN-01), column parcel: \"L-BRN-10\" is not known; nearest is L-BRN-01. Allowed: a parcel of the parcels layer. Do: write L-BRN-01 if that is meant"),
                new Case(
                        round -> round.with("permits.csv", "P-TOL,TOL,EFISH;", "P-TOL,TOL,EFIHS;"),
                        "ERROR unknown-code permits.csv, line 4 (P-TOL), column methods: \"EFIHS\" is not known; nearest is EFISH. Allowed: a method of methods.csv: EFISH, EFISH_AM, TRAP, SPOT, RECORD_DRY, DEFER, REFER. Do: write EFISH if that is meant"),
                new Case(
                        round -> round.with("kit_needs.csv", "SPOT,night,spotlight", "SPOT,lift,spotlight"),
                        "ERROR part-unknown kit_needs.csv, line 92 (SPOT lift spotlight), column part: SPOT has no part \"lift\". Allowed: a part of that method in method_parts.csv. Do: mend the part here or add it there"),
                new Case(
                        round -> round.with(
                                "method_parts.csv",
                                "RECORD_DRY,dry-check,1,day,,2,0,0,0,0,30,0,1.3333,,,\"invented agency sheet, demo only\"",
                                ""),
                        "ERROR method-without-parts methods.csv, line 6 (RECORD_DRY): RECORD_DRY is a method with a visit, and method_parts.csv has no part of it. Allowed: at least one part, or the kind none. Do: add its parts there"),
                new Case(
                        round -> round.with("methods.csv", "dry-record", "none"),
                        "WARNING method-with-parts methods.csv, line 6 (RECORD_DRY): RECORD_DRY has the kind none and parts all the same; no visit will be planned. Allowed: no parts, or another kind. Do: check the kind"),
                new Case(
                        round -> round.with("method.dmn", "<text>\"EFISH_AM\"</text>", "<text>\"EFISH_MA\"</text>"),
                        "ERROR method-unknown method.dmn, rule 6, column method: the method \"EFISH_MA\", which methods.csv lacks. Allowed: EFISH, EFISH_AM, TRAP, SPOT, RECORD_DRY, DEFER, REFER. Do: correct the method here or add it to methods.csv",
                        "NOTE method-not-used methods.csv, line 3 (EFISH_AM): no rule of the decision table gives EFISH_AM. Do: delete it, or add the rule that is missing"));
    }

    private static Stream<Case> group7() {
        return Stream.of(
                new Case(
                        round -> round.plus("methods.csv", "HOOP,Hoop nets,none,invented"),
                        "NOTE method-not-used methods.csv, line 9 (HOOP): no rule of the decision table gives HOOP. Do: delete it, or add the rule that is missing"),
                new Case(
                        round -> round.with("past_visits.csv", "HSK-01,2024-09-02,EFISH,", "HSK-01,2024-09-02,SEINE,"),
                        "WARNING unknown-code past_visits.csv, line 2 (HSK-01 2024-09-02), column method: \"SEINE\" is not known. Allowed: a method of methods.csv: EFISH, EFISH_AM, TRAP, SPOT, RECORD_DRY, DEFER, REFER. Do: add it there, or mend it here"),
                new Case(
                        round -> round.with("past_visits.csv", "521631,5112881,60", "521631,5119881,60"),
                        "WARNING past-start-far past_visits.csv, line 2 (HSK-01 2024-09-02), column east_m: the visit's start lies 7.0 km from today's start of HSK-01. Allowed: at most 1.0 km. Do: check the coordinates; if the site moved, its visits cannot be compared"),
                new Case(
                        round -> round.with("waters.csv", "Lower Ounder,OUN,0,8800", "Lower Ounder,OUN,0,9000"),
                        "ERROR waters-overlap waters.csv, line 5 (OUN-U): OUN-U begins at 8800 m from the mouth of OUN, and OUN-L ends only at 9000 m. Allowed: ranges that touch at most. Do: let one end where the other begins"),
                new Case(
                        round -> round.with("waters.csv", "Brannet,BRN,0,99999,", "Brannet,BRN,3000,99999,"),
                        "ERROR site-without-water sites.csv, line 3 (BRN-02), column stream: the site lies 2370 m from the mouth of BRN, where no row of waters.csv reaches. Allowed: a water whose range holds the site. Do: widen a range, or add a water"),
                new Case(
                        round -> round.with("consents.csv", ",-20.956110,", ",-20.056110,"),
                        "ERROR gate-far consents.csv, line 2 (C-BRN-01), column gate_lon_deg: point is about 45 km from the project area. Allowed: a gate at most 5.0 km from its site. Do: check the coordinates"));
    }

    private static Stream<Case> group8() {
        return Stream.of(
                new Case(
                        round -> round.with("sites.csv", "BR01,503150,", "BR01,504150,"),
                        "ERROR site-off-stream sites.csv, line 2 (BRN-01), column stream: the site lies 1.0 km from BRN. Allowed: at most 100 m. Do: check the coordinates and the stream"),
                new Case(
                        round -> round.with("sites.csv", "BR01,503150,5109420", "BR01,5109420,503150"),
                        "ERROR place-outside-crs sites.csv, line 2 (BRN-01), column east_m: E 5109420, N 503150 lies outside the area of EPSG:32627. Allowed: a place in the area of WGS 84 / UTM zone 27N (EPSG:32627), metres, datum WGS 84. Do: swap east_m and north_m"),
                new Case(
                        round -> round.with("sites.csv", "BR01,503150,5109420", "BR01,526480,5101730"),
                        "ERROR site-off-stream sites.csv, line 2 (BRN-01), column stream: the site lies about 24 km from BRN and 0 m from TOL. Allowed: at most 100 m. Do: check the coordinates and the stream"),
                new Case(
                        round -> round.with(
                                "round.json",
                                "\"eastM\": 512400, \"northM\": 5096300",
                                "\"eastM\": 5096300, \"northM\": 512400"),
                        "ERROR place-outside-crs round.json, depot: E 5096300, N 512400 lies outside the area of EPSG:32627. Allowed: a place in the area of WGS 84 / UTM zone 27N (EPSG:32627), metres, datum WGS 84. Do: swap eastM and northM"));
    }
}
