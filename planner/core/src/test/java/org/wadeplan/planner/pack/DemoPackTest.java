package org.wadeplan.planner.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.planner.files.DemoRound;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.Activity;
import org.wadeplan.planner.week.CrewDay;

/** The pack of the demo week. */
class DemoPackTest {

    @TempDir
    static Path folder;

    private static Round round;
    private static RoundPlan plan;
    private static PackResult result;

    @BeforeAll
    static void writeThePack() throws Exception {
        round = DemoRound.resolved();
        plan = DemoPlan.of(round);
        result = PackWriter.write(round, plan, folder, Instant.parse("2027-09-03T16:00:00Z"));
    }

    @Test
    void printsEveryCrewDayWithEveryVisitOfIt() throws IOException {
        for (CrewDay day : plan.week().crewDays()) {
            String text = text(folder.resolve(day.date() + "_" + day.crew() + ".pdf"));
            for (Activity visit : day.visits()) {
                assertThat(text).contains(visit.site().orElseThrow());
            }
        }
        assertThat(plan.week().crewDays()).isNotEmpty();
        assertThat(result.problems()).isEmpty();
    }

    @Test
    void putsEveryCleaningIntoExactlyOnePaper() throws IOException {
        int sheets = 0;
        for (PackFile file : result.files()) {
            if (file.pages().isPresent()) {
                sheets += text(folder.resolve(file.name())).split("Clean kit set ", -1).length - 1;
            }
        }
        assertThat(sheets).isEqualTo(plan.week().decon().size()).isPositive();
    }

    @Test
    void leavesEveryPrivateCellOutOfEveryFile() throws IOException {
        List<String> cells = privateCells();
        assertThat(cells).hasSizeGreaterThan(10);
        for (PackFile file : result.files()) {
            Path path = folder.resolve(file.name());
            String content = file.name().endsWith(".pdf")
                    ? text(path)
                    : new String(Files.readAllBytes(path), StandardCharsets.UTF_8);
            assertThat(content.replaceAll("\\s+", " ")).as(file.name()).doesNotContain(cells);
        }
    }

    /**
     * Every cell of every private table but the ids in the first column, which public tables share, and but words that a
     * public table of the same round tells anyway: a bog may be named after its holder.
     */
    private static List<String> privateCells() throws IOException {
        List<String> cells = new ArrayList<>();
        for (String table : List.of("consents_private.csv", "people_private.csv")) {
            List<String> lines = Files.readAllLines(round.folder().resolve(table));
            for (String line : lines.subList(1, lines.size())) {
                String[] row = line.replace("\"", "").split("[,;]", -1);
                for (int i = 1; i < row.length; i++) {
                    String cell = row[i].strip();
                    if (!cell.isEmpty()) {
                        cells.add(cell);
                    }
                }
            }
        }
        String told = publicTables();
        return cells.stream().filter(cell -> !told.contains(cell)).toList();
    }

    private static String publicTables() throws IOException {
        StringBuilder told = new StringBuilder();
        try (Stream<Path> files = Files.list(round.folder())) {
            for (Path file : files.sorted().toList()) {
                String name = file.getFileName().toString();
                if (name.endsWith(".csv") && !name.endsWith("_private.csv")) {
                    told.append(Files.readString(file));
                }
            }
        }
        return told.toString();
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document);
        }
    }
}
