package org.wadeplan.planner.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.planner.round.Round;

/** The pack of a small hand-made round, written once and read back with PDFBox. */
class PackWriterTest {

    private static final Instant MADE_AT = Instant.parse("2027-09-03T16:00:00Z");
    private static final double A_MILLIMETRE_PT = 72 / 25.4;
    private static final List<String> PRIVATE_VALUES =
            List.of("Quillfeather Estate", "0555 0107 221", "gate code 4471", "0555 0199 330", "penicillin");

    @TempDir
    static Path disk;

    private static Path folder;
    private static Round round;
    private static PackResult result;

    @BeforeAll
    static void writeThePack() throws Exception {
        Path roundFolder = Files.createDirectories(disk.resolve("round"));
        Files.writeString(
                roundFolder.resolve("consents_private.csv"),
                "consent,holder,phone,note\nC1,Quillfeather Estate,0555 0107 221,gate code 4471\n");
        Files.writeString(
                roundFolder.resolve("people_private.csv"), "person,phone,note\noskar,0555 0199 330,penicillin\n");
        round = SmallRound.round(roundFolder);
        folder = disk.resolve("pack ü");
        result = write(folder);
    }

    private static PackResult write(Path to) throws DiskException {
        return PackWriter.write(round, SmallPlan.of(round), to, MADE_AT);
    }

    @Test
    void listsEveryFileWithItsSizeAndPages() throws IOException {
        assertThat(result.files())
                .extracting(PackFile::name)
                .containsExactly(
                        "round_overview.pdf",
                        "2027-09-06_A.pdf",
                        "2027-09-06_B.pdf",
                        "2027-09-07_A.pdf",
                        "tracks.gpx",
                        "reaches.gpkg",
                        "reaches.geojson",
                        "stakes.geojson",
                        "week.ics",
                        "plan.json",
                        "contents.txt");
        for (PackFile file : result.files()) {
            assertThat(Files.size(folder.resolve(file.name()))).as(file.name()).isEqualTo(file.bytes());
            assertThat(Files.readString(folder.resolve("contents.txt")))
                    .contains(file.name().equals("contents.txt") ? "Kept out" : file.name());
        }
        assertThat(filesIn(disk))
                .as("nothing temporary is left beside the pack")
                .containsExactly("pack ü", "round");
    }

    @Test
    void pressesA4PagesWithEmbeddedFontsOnly() throws IOException {
        for (Path pdf : pdfs()) {
            try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
                for (PDPage page : document.getPages()) {
                    PDRectangle box = page.getMediaBox();
                    assertThat(box.getWidth() / A_MILLIMETRE_PT).isBetween(209.5, 210.5);
                    assertThat(box.getHeight() / A_MILLIMETRE_PT).isBetween(296.5, 297.5);
                    for (COSName font : page.getResources().getFontNames()) {
                        assertThat(page.getResources().getFont(font).isEmbedded())
                                .as(pdf + " " + font)
                                .isTrue();
                    }
                }
            }
        }
    }

    @Test
    void printsRoundVersionTimeAndPageNumberOnEachPage() throws IOException {
        for (Path pdf : pdfs()) {
            List<String> pages = pages(pdf);
            for (int i = 0; i < pages.size(); i++) {
                assertThat(pages.get(i))
                        .contains("Ilvermoor stream fish round 2027")
                        .contains("plan " + SmallPlan.VERSION)
                        .contains("made 2027-09-03 16:00 Z (Atlantic/Azores)")
                        .contains("page " + (i + 1) + " of " + pages.size());
            }
        }
    }

    @Test
    void ordersACrewDayFromRunSheetToEmergencyCard() throws IOException {
        assertThat(outline("2027-09-06_A.pdf"))
                .containsExactly(
                        "Run sheet",
                        "Load list",
                        "Reach map",
                        "Visit page",
                        "Briefing",
                        "Sub-reach records",
                        "End of site",
                        "Reach map",
                        "Visit page",
                        "Briefing",
                        "Dry record",
                        "End of site",
                        "Reach map",
                        "Visit page",
                        "Briefing",
                        "Net log",
                        "End of site",
                        "Decontamination",
                        "Emergency card");
        assertThat(outline("2027-09-06_B.pdf")).contains("Spotlight record").doesNotContain("Decontamination");
        assertThat(outline("2027-09-07_A.pdf")).contains("Net log", "Decontamination");
    }

    @Test
    void keepsRunSheetMapVisitPageAndTalkToOnePageEach() throws IOException {
        List<String> pages = pages(folder.resolve("2027-09-06_A.pdf"));
        assertThat(pages.get(0)).contains("Run sheet").contains("15:15").contains("Short of fyke");
        assertThat(pages.get(1)).contains("Load list").contains("P1, P2").contains("2027-09-07");
        assertThat(pages.get(2))
                .contains("Reach map")
                .contains("BR01-000")
                .contains("BR01-150")
                .contains("Tāne");
        assertThat(pages.get(3))
                .contains("Visit page")
                .contains("by rule 5")
                .contains("µS/cm")
                .contains("m²/s")
                .contains("Ceiling 1100 V", "Test from 100 V up", "Electricity and water kill")
                .contains("Compares with 2026-09-09", "A 215, B", "J 2150");
        assertThat(pages.get(4))
                .contains("Briefing")
                .contains("NOT REVIEWED")
                .contains("Oskar")
                .contains("STOP");
    }

    @Test
    void preparesTenSubReachSheetsTwoOnAPage() throws IOException {
        List<String> sheets = pages(folder.resolve("2027-09-06_A.pdf")).stream()
                .filter(page -> page.contains("Sub-reach records"))
                .toList();
        assertThat(sheets).hasSize(5);
        assertThat(sheets.get(0))
                .contains("sub-reach A")
                .contains("sub-reach B")
                .contains("BR01-000 up to BR01-015")
                .contains("expect about 215 s");
        assertThat(sheets.get(4)).contains("sub-reach J").contains("BR01-150");
    }

    @Test
    void marksEveryPageOfAVisitThatAwaitsAPermit() throws IOException {
        for (String page : pages(folder.resolve("2027-09-06_A.pdf"))) {
            boolean ofThePendingSite = page.contains("PEL-01 · ");
            boolean ofAnotherSite = page.contains("BRN-01 · ") || page.contains("BRN-02 · ");
            if (ofThePendingSite) {
                assertThat(page).contains("NOT AUTHORISED");
            }
            if (ofAnotherSite) {
                assertThat(page).doesNotContain("NOT AUTHORISED");
            }
        }
        assertThat(pages(folder.resolve("2027-09-06_A.pdf")).get(0)).contains("Permit P-PEL is pending.");
    }

    @Test
    void saysThatAVisitHasNoBriefing() throws IOException {
        assertThat(pages(folder.resolve("2027-09-06_B.pdf")))
                .anySatisfy(page ->
                        assertThat(page).contains("no briefing was made").contains("NOT REVIEWED"));
    }

    @Test
    void putsEachCleaningIntoOneCrewsPapersWithItsEvidence() throws IOException {
        assertThat(pages(folder.resolve("2027-09-06_A.pdf")))
                .filteredOn(page -> page.contains("Decontamination"))
                .singleElement()
                .satisfies(page -> assertThat(page)
                        .contains("Clean kit set K1")
                        .contains("50\u00a0°C")
                        .contains("lattice weed")
                        .contains("soak")
                        .contains(SmallRound.SOURCE)
                        .contains("06:15 Tue 7 Sep"));
        assertThat(pages(folder.resolve("2027-09-07_A.pdf")))
                .filteredOn(page -> page.contains("Decontamination"))
                .hasSize(1);
    }

    @Test
    void showsTheOverviewWithMethodsUnplacedSitesAndFindings() throws IOException {
        assertThat(String.join("\n", pages(folder.resolve("round_overview.pdf"))))
                .contains("BRN-01", "BRN-02", "PEL-01", "PEL-02")
                .contains("rule 5;")
                .contains("rule 12;")
                .contains("Consent refused on 3 September.")
                .contains("PEL-01: a depth 0.06 m greater", "measure first")
                .contains("0123456789");
    }

    @Test
    void leavesPrivateValuesOutOfEveryFile() throws IOException {
        for (PackFile file : result.files()) {
            Path path = folder.resolve(file.name());
            String content = file.name().endsWith(".pdf")
                    ? String.join("\n", pages(path))
                    : new String(Files.readAllBytes(path), StandardCharsets.UTF_8);
            assertThat(content).as(file.name()).doesNotContain(PRIVATE_VALUES);
        }
    }

    @Test
    void givesTheSameBytesAgain() throws Exception {
        Path again = disk.resolve("round/again");
        write(again);
        for (PackFile file : result.files()) {
            assertThat(Files.readAllBytes(again.resolve(file.name())))
                    .as(file.name())
                    .isEqualTo(Files.readAllBytes(folder.resolve(file.name())));
        }
    }

    @Test
    void saysWhatTheDiskRefused() throws IOException {
        Path file = Files.writeString(disk.resolve("round/a-file"), "not a folder");
        assertThatThrownBy(() -> write(file.resolve("pack")))
                .isInstanceOfSatisfying(DiskException.class, refused -> assertThat(
                                refused.problem().sentence())
                        .contains("a-file")
                        .contains("cannot be made or written to")
                        .contains("choose a folder"));
    }

    @Test
    void namesPapersOfAnEarlierPackThatAreNoLongerPartOfThePlan() throws Exception {
        Path used = Files.createDirectories(disk.resolve("round/used"));
        Files.writeString(used.resolve("2027-09-08_A.pdf"), "an older day");
        Files.writeString(used.resolve("my notes.pdf"), "the leader's own");
        assertThat(write(used).leftOver()).containsExactly("2027-09-08_A.pdf");
        assertThat(used.resolve("my notes.pdf")).hasContent("the leader's own");
    }

    private static List<Path> pdfs() {
        return result.files().stream()
                .filter(file -> file.pages().isPresent())
                .map(file -> folder.resolve(file.name()))
                .toList();
    }

    private static List<String> filesIn(Path where) throws IOException {
        try (Stream<Path> files = Files.list(where)) {
            return files.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    private static List<String> pages(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            List<String> pages = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setSortByPosition(true);
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document));
            }
            return pages;
        }
    }

    /** Titles of the sections, without their subject. */
    private static List<String> outline(String name) throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve(name).toFile())) {
            List<String> titles = new ArrayList<>();
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                titles.add(item.getTitle().substring(item.getTitle().indexOf(" – ") + 3));
            }
            return titles;
        }
    }
}
