package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wadeplan.planner.files.BrokenRound.Case;

/** Faults in evidence, in what gear bears and in rules of places. */
class BrokenEvidenceTest {

    private static final String RULES = "rule,kind,value,pests,waters,month_from,month_until,valid_from,valid_until,"
            + "jurisdiction,treatment,text,source\n";
    private static final String SPRAY_ROW = "oxidiser-mist,SPB,hard,oxidiser,20,g/L product,,spray,5,0,false,B,demo";

    @TempDir
    Path temp;

    static Stream<Case> cases() {
        return Stream.of(rows(), rules(), incomplete(), gear()).flatMap(cases -> cases);
    }

    private static Stream<Case> rows() {
        return Stream.of(
                new Case(
                        round -> round.with(
                                "treatments.csv",
                                "oxidiser-bath,GSA,hard,oxidiser,20,g/L product,,soak,10,",
                                "oxidiser-bath,GSA,hard,oxidiser,20,g/L product,,soak,-10,"),
                        "ERROR out-of-range treatments.csv, line 5 (oxidiser-bath GSA hard), column contact_min: \"-10\" is too low. Allowed: a number from 0 to 100000 minutes. Do: check the value and its unit"),
                new Case(
                        round -> round.with(
                                "treatments.csv",
                                "oxidiser-bath,GSA,hard,oxidiser,",
                                "oxidiser-bath,GSB,hard,oxidiser,"),
                        "ERROR unknown-code treatments.csv, line 5 (oxidiser-bath GSB hard), column pest: \"GSB\" is not known; nearest is GSA. Allowed: a pest of pests.csv: GSA, CSN, LTW, SPB, ANY. Do: write GSA if that is meant"),
                new Case(
                        round -> round.plus(
                                "treatments.csv",
                                "oxidiser-bath,CSN,hard,oxidiser,20,g/L product,,soak,20,0,false,X,demo"),
                        "WARNING evidence-contradiction treatments.csv, line 17 (oxidiser-bath CSN hard): oxidiser-bath (soak) against CSN on hard items is supported here and refused by the row of grade X on line 55. Allowed: one answer for one treatment, pest, material and mode. Do: read both sources again; until then the refusal counts"),
                new Case(
                        round -> onlySprayed(round),
                        "WARNING spray-only treatments.csv, line 52 (oxidiser-mist SPB hard): SPB on hard items has only a spray row: oxidiser-mist. Allowed: a soak: a spray is weaker in several trials, and a known pest asks for a soak. Do: add a row of a soak with its source; until then a leg from a water that has it is refused"));
    }

    private static BrokenRound onlySprayed(BrokenRound round) {
        String rest = round.text("treatments.csv")
                .lines()
                .filter(line -> !line.contains(",SPB,hard,"))
                .reduce("", (all, line) -> all + line + "\n");
        return round.whole("treatments.csv", rest + SPRAY_ROW + "\n");
    }

    private static Stream<Case> rules() {
        return Stream.of(
                new Case(
                        round -> round.whole(
                                "decon_rules.csv",
                                RULES + "r1,drying-alone-h,48,,,,,2021-10-01,2021-09-30,NZ,,dry,demo\n"),
                        "ERROR ends-before-start decon_rules.csv, line 2 (r1), column valid_until: 2021-09-30 is before valid_from, 2021-10-01. Allowed: the same or later. Do: check both; they may be swapped"),
                new Case(
                        round -> round.whole("decon_rules.csv", RULES + "r1,drying-alone-h,48,,,13,2,,,NZ,,dry,demo\n"),
                        "ERROR out-of-range decon_rules.csv, line 2 (r1), column month_from: \"13\" is too high. Allowed: a whole number from 1 to 12. Do: check the value and its unit"),
                new Case(
                        round -> round.whole(
                                "decon_rules.csv",
                                RULES + "r1,superseded-treatment,,,,,,,,NZ,hot-dip-70,no more,demo\n"),
                        "ERROR unknown-code decon_rules.csv, line 2 (r1), column treatment: \"hot-dip-70\" is not known; nearest is hot-dip-60. Allowed: a treatment of treatments.csv: hot-dip-60, oxidiser-bath, air-dry, hot-dip-50, oxidiser-spray, freeze-15, alcohol-wipe. Do: write hot-dip-60 if that is meant"));
    }

    private static Stream<Case> incomplete() {
        return Stream.of(
                new Case(
                        round -> round.whole("decon_rules.csv", RULES + "r1,drying-alone-h,,,,,,,,NZ,,dry,demo\n"),
                        "ERROR rule-incomplete decon_rules.csv, line 2 (r1), column value: a rule of kind drying-alone-h stands here without what it asks for. Allowed: a number of hours, or of months for free-holds-months. Do: fill it in from its source, or delete the rule"),
                new Case(
                        round -> round.whole(
                                "decon_rules.csv", RULES + "r1,superseded-treatment,,,,,,,,NZ,,no more,demo\n"),
                        "ERROR rule-incomplete decon_rules.csv, line 2 (r1), column treatment: a rule of kind superseded-treatment stands here without what it asks for. Allowed: the name of the treatment that it is about. Do: fill it in from its source, or delete the rule"),
                new Case(
                        round -> round.with("round.json", "\"crs\"", "\"jurisdiction\": \"nz\", \"crs\""),
                        "WARNING jurisdiction-unused round.json, jurisdiction: no rule and no row of evidence names \"nz\"; nearest is NZ. Allowed: GB, NZ, US-UT, US-WI. Do: write NZ if that is meant"));
    }

    private static Stream<Case> gear() {
        return Stream.of(
                new Case(
                        round -> round.with("gear_classes.csv", "felt-boot,felt-soled", "felt-boots,felt-soled"),
                        "ERROR unknown-code store.csv, line 37 (K3-BOOT), column gear_class: \"felt-boot\" is not known; nearest is felt-boots. Allowed: a gear class of gear_classes.csv. Do: write felt-boots if that is meant"),
                new Case(
                        round -> round.plus("treatments.csv", "boil,CSN,hard,hot water,,,100,soak,5,0,false,A,demo"),
                        "WARNING hotter-than-gear-bears treatments.csv, line 55 (boil CSN hard), column temp_c: 100 °C is above what any item of a kit set bears. Allowed: at most 65 °C by gear_classes.csv. Do: check the temperature; \"boil\" is used on nothing as it stands"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void eachFaultGivesItsSentenceAndNoOther(Case broken) {
        assertThat(broken.fault().apply(BrokenRound.in(temp)).sentences())
                .containsExactlyElementsOf(broken.sentences());
    }

    @Test
    void withoutATableOfItsOwnAPestMustBeOneThatTheShippedEvidenceKnows() {
        BrokenRound round = BrokenRound.in(temp)
                .without("treatments.csv")
                .whole("pests.csv", "pest,name,severity,note\ndreissena-polymorfa,zebra mussel,4,\n")
                .whole(
                        "water_pests.csv",
                        "water,pest,status,as_of,source\n"
                                + Stream.of("BRN", "HSK", "TOL", "OUN-U", "OUN-L", "PEL")
                                        .map(water -> water + ",dreissena-polymorfa,unknown,2027-06-15,demo\n")
                                        .collect(Collectors.joining()))
                .whole("decon_steps.csv", "step,label,minutes,when,resource,source\nbrush,brush,20,always,,demo\n");
        assertThat(round.sentences())
                .containsExactly(
                        "ERROR unknown-code pests.csv, line 2 (dreissena-polymorfa), column pest: \"dreissena-polymorfa\" is not known; nearest is dreissena-polymorpha. Allowed: a pest of the evidence that comes with the program, because the folder has no treatments.csv. Do: write dreissena-polymorpha if that is meant");
    }

    @Test
    void whatShipsWithTheProgramHasNoProblemOfItsOwn() {
        assertThat(ShippedTables.table(TreatmentTable.KIND).problems()).isEmpty();
        assertThat(ShippedTables.table(GearClassTable.KIND).problems()).isEmpty();
        assertThat(ShippedTables.table(DeconRuleTable.KIND).problems()).isEmpty();
        assertThat(ShippedTables.pests()).hasSizeGreaterThan(20);
    }

    /** An instruction about named pests becomes rows of grade C where the table has none of that treatment. */
    @Test
    void anAgencysInstructionBecomesEvidenceOfGradeC() {
        BrokenRound round = BrokenRound.in(temp)
                .whole(
                        "decon_rules.csv",
                        RULES + "r1,agency-treatment,60,LTW,,,,2021-10-01,,NZ,oxidiser-bath,soak longer,demo\n");
        assertThat(round.read().value().orElseThrow().biosecurity().treatments())
                .filteredOn(row -> row.pest().equals("LTW") && row.id().equals("oxidiser-bath"))
                .hasSize(3)
                .allSatisfy(row -> {
                    assertThat(row.grade()).isEqualTo(org.wadeplan.planner.round.EvidenceGrade.C);
                    assertThat(row.contactMin()).isEqualTo(60);
                    assertThat(row.source()).isEqualTo("rule r1: demo");
                    assertThat(row.validity().jurisdiction()).hasValue("NZ");
                });
    }
}
