package org.wadeplan.planner.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wadeplan.hazards.briefing.StopLine;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.hazard.VisitBriefing;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.CrewDay;

/** Every briefing of the demo rounds on paper: one side, with everything that must not be missed on it. */
class BriefingFitTest {

    private static final String FRONT = "before we go in";
    private static final String BACK = "Back of the sheet";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"ilvermoor", "ilvermoor-troubled"})
    void printsEachTalkOnOneSideWithOneBack(String name) throws Exception {
        Round round = DemoRound.checked(name).value().orElseThrow();
        RoundPlan plan = DemoPlan.of(round);
        PackWriter.write(round, plan, folder, Instant.parse("2027-09-05T18:00:00Z"));
        int fronts = 0;
        for (CrewDay day : plan.week().crewDays()) {
            List<String> pages = briefingPages(folder.resolve(day.date() + "_" + day.crew() + ".pdf"));
            assertThat(pages).allMatch(page -> page.contains(FRONT) != page.contains(BACK));
            fronts += (int) pages.stream().filter(page -> page.contains(FRONT)).count();
            assertThat(pages.stream().filter(page -> page.contains(BACK)).count())
                    .isEqualTo(pages.size() / 2);
            plan.briefings().stream()
                    .filter(visit ->
                            visit.crew().equals(day.crew()) && visit.date().equals(day.date()))
                    .forEach(visit -> assertThat(front(pages, visit))
                            .as(visit.site() + " " + visit.part())
                            .contains(mustBeInFront(visit))
                            .contains(plain("A competent person reviews this sheet"))
                            .contains(names(round, day)));
        }
        assertThat(fronts).isEqualTo(plan.briefings().size());
    }

    private static String front(List<String> pages, VisitBriefing visit) {
        return pages.stream()
                .filter(page -> page.contains(visit.site() + " " + visit.part().word() + ", ") && page.contains(FRONT))
                .map(BriefingFitTest::plain)
                .findFirst()
                .orElseThrow();
    }

    /** Stops, what is new and the name of everything deadly. */
    private static List<String> mustBeInFront(VisitBriefing visit) {
        List<String> words = new ArrayList<>(visit.briefing().newHere());
        visit.briefing().stops().stream().map(StopLine::spoken).forEach(words::add);
        visit.briefing().rise().ifPresent(rise -> words.add(rise.sentence()));
        words.addAll(visit.briefing().alsoCanKill());
        visit.briefing().hazards().stream()
                .filter(block -> block.hazard().canKill())
                .forEach(block -> words.add(block.hazard().title()));
        return words.stream().map(BriefingFitTest::plain).toList();
    }

    private static List<String> names(Round round, CrewDay day) {
        return day.people().stream()
                .map(person -> round.person(person).orElseThrow().name())
                .toList();
    }

    /** Line breaks and printed signs aside. */
    private static String plain(String words) {
        return words.replace("m²/s", "m2/s")
                .replace('×', 'x')
                .replace("ﬀ", "ff")
                .replace("ﬁ", "fi")
                .replaceAll("\\s+", "");
    }

    private static List<String> briefingPages(Path pdf) throws IOException {
        Map<Integer, String> pages = new TreeMap<>();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = stripper.getText(document);
                if (text.contains(FRONT) || text.contains(BACK)) {
                    pages.put(page, text);
                }
            }
        }
        return List.copyOf(pages.values());
    }
}
