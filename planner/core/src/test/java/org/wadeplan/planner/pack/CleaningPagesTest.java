package org.wadeplan.planner.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.pack.page.PackPages;
import org.wadeplan.planner.plan.PlanOptions;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.plan.RoundPlanner;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.CrewDay;
import org.wadeplan.planner.week.Progress;

/** The sheets of the agreed week (Ilvermoor scenario, section 4.8), as they come out of the press. */
class CleaningPagesTest {

    private static final List<String> SHEETS = new ArrayList<>();
    private static int cleanings;

    @BeforeAll
    static void press() throws IOException {
        Round round = DemoRound.troubled();
        RoundPlan plan = RoundPlanner.inForce(round, new PlanOptions(OptionalLong.empty(), 0), Progress.NONE);
        PackPages pages = new PackPages(round, plan, Instant.parse("2027-09-03T16:00:00Z"));
        for (CrewDay day : plan.week().crewDays()) {
            read(pages.crewDay(day).bytes());
        }
        cleanings = plan.week().decon().size();
    }

    private static void read(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = stripper.getText(document).replaceAll("[\\s\\u00a0]+", " ");
                if (text.contains("Decontamination kit set")) {
                    SHEETS.add(text);
                }
            }
        }
    }

    private static String sheet(String kitSet, String day) {
        return SHEETS.stream()
                .filter(text -> text.contains("kit set " + kitSet + " ·")
                        && text.substring(0, 80).contains(day))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void eachCleaningHasOnePageAndNoMore() {
        assertThat(SHEETS).hasSize(cleanings).allSatisfy(text -> assertThat(text)
                .contains("Clean kit set ")
                .contains("Tip out:")
                .contains("Let go although not clean")
                .contains("treatments.csv ")
                .contains("Round "));
    }

    @Test
    void saysWhatToWeighWhereAndWhatMustNeverMeet() {
        assertThat(sheet("T1", "Tue 7 Sep"))
                .contains("1.2 kg made up to 60 L")
                .contains("Ready by 16:25, tip out by midnight")
                .contains("oxidiser tubs, no. 2 of 2")
                .contains("20 g/L product")
                .contains("Never let bleach meet an acid, vinegar or the acidic oxidiser powder")
                .contains("at least 50 m from any water")
                .contains("NZ Ministry for Primary Industries");
    }

    @Test
    void asksForASecondPersonWhereAPestIsKnown() {
        assertThat(sheet("K4", "Tue 7 Sep"))
                .contains("ANOTHER person")
                .contains("known in TOL: GSA")
                .contains("start at 68 °C lidded, 77 °C open")
                .contains("Not out before: 07:20 Wed 8 Sep");
        assertThat(sheet("K1", "Mon 6 Sep")).doesNotContain("ANOTHER person");
    }

    @Test
    void tellsTheSecondSetOfADayThatTheBathWasUsed() {
        assertThat(sheet("K3", "Wed 8 Sep")).contains("Used for K1 from 14:35: measure it again");
        assertThat(sheet("T2", "Thu 9 Sep")).contains("Used for K5 from 09:30: heat it again");
    }

    /** Section 4.4: the snail is cleaned off by immersion only, and the sheet of its water says so. */
    @Test
    void warnsOfTheShortWay() {
        assertThat(sheet("K1", "Fri 10 Sep")).contains("Tested and NOT effective: oxidiser-spray (spray) against CSN.");
    }
}
