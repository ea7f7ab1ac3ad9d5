package org.wadeplan.planner.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wadeplan.planner.round.Pest;

/** How table files may be written: encodings, line ends, quotes, separators. */
class TextFormTest {

    private static final String HEADER = "pest,name,severity,note\n";

    @TempDir
    Path temp;

    private Table<Pest> read(byte[] bytes) throws IOException {
        Files.write(temp.resolve("pests.csv"), bytes);
        return Table.read(new RoundFolder(temp, Map.of()), PestTable.KIND);
    }

    private Table<Pest> read(String text) throws IOException {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> words(Table<Pest> table) {
        return table.values().stream()
                .map(pest -> pest.id() + "|" + pest.name() + "|" + pest.severity() + "|"
                        + pest.note().orElse("-"))
                .toList();
    }

    private static List<String> sentences(Table<Pest> table) {
        return table.problems().stream().map(problem -> problem.sentence()).toList();
    }

    @Test
    void aByteOrderMarkIsNoPartOfTheFirstColumn() throws IOException {
        Table<Pest> table = read("\uFEFF" + HEADER + "GSA,Grünalge,4,\n");
        assertThat(words(table)).containsExactly("GSA|Grünalge|4|-");
        assertThat(table.problems()).isEmpty();
    }

    @Test
    void lineEndsOfEverySystemAndBlankLinesAreFine() throws IOException {
        assertThat(words(read("pest,name,severity,note\r\n\r\nGSA,alga,4,\r\n,,,\r\nCSN,snail,3,x")))
                .containsExactly("GSA|alga|4|-", "CSN|snail|3|x");
        assertThat(words(read("pest,name,severity,note\rGSA,alga,4,\r"))).containsExactly("GSA|alga|4|-");
    }

    @Test
    void quotedCellsMayHoldSeparatorsQuotesAndLineBreaks() throws IOException {
        assertThat(words(read(HEADER + "GSA,\"alga, grey\",4,\"it \"\"slips\"\"\nin the hand\"\n")))
                .containsExactly("GSA|alga, grey|4|it \"slips\"\nin the hand");
    }

    @Test
    void aRowKeepsItsLineAfterBlankLinesAndLineBreaksInCells() throws IOException {
        assertThat(sentences(read(HEADER + "\nGSA,alga,4,\"one\ntwo\"\nCSN,snail,9,\n")))
                .containsExactly("pests.csv, line 5 (CSN), column severity: \"9\" is too high. Allowed: a whole number"
                        + " from 1 to 5. Do: check the value and its unit");
    }

    @Test
    void columnNamesMayBeInAnyCaseAndOrderWithSpacesAround() throws IOException {
        assertThat(words(read(" Severity , PEST,Name,note\n4,GSA,alga,\n"))).containsExactly("GSA|alga|4|-");
    }

    @Test
    void semicolonsPartCellsTooAndAreNoted() throws IOException {
        Table<Pest> table = read("pest;name;severity;note\nGSA;alga, grey;4;\n");
        assertThat(words(table)).containsExactly("GSA|alga, grey|4|-");
        assertThat(sentences(table))
                .containsExactly("pests.csv: cells are parted by semicolons, so lists inside a cell need quotes around"
                        + " them. Allowed: comma or semicolon");
    }

    @Test
    void anotherEncodingIsToldWithItsLine() throws IOException {
        assertThat(sentences(read((HEADER + "CSN,snail,3,\nGSA,Grünalge,4,\n").getBytes(StandardCharsets.ISO_8859_1))))
                .containsExactly(
                        "pests.csv, line 3: the file is not UTF-8 text: the first character that cannot be read"
                                + " is on this line. Allowed: UTF-8. Do: save it again as UTF-8 (in a spreadsheet: CSV UTF-8)");
    }

    @Test
    void textOfSixteenBitsIsNotTakenForUtf8() throws IOException {
        for (Charset charset : List.of(StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE, StandardCharsets.UTF_16)) {
            assertThat(read((HEADER + "CSN,snail,3,\n").getBytes(charset)).problems())
                    .extracting(problem -> problem.code())
                    .containsExactly("not-utf8");
        }
    }

    @Test
    void surplusCellsThatAreBlankDoNoHarm() throws IOException {
        assertThat(words(read(HEADER + "GSA,alga,4,,,\n"))).containsExactly("GSA|alga|4|-");
    }

    @Test
    void aCellOfManyThousandLettersIsRefused() throws IOException {
        assertThat(read(HEADER + "GSA,alga,4," + "x".repeat(4001) + "\n").problems())
                .extracting(problem -> problem.code())
                .containsExactly("text-too-long");
        assertThat(sentences(read(HEADER + "GSA,alga,4," + "x".repeat(4001) + "\n")))
                .containsExactly(
                        "pests.csv, line 2 (GSA), column note: the cell holds 4001 characters. Allowed: at most"
                                + " 4000 characters. Do: shorten it; a quote that is not closed can swallow the rows after it");
        assertThat(read(HEADER + "GSA,alga,4," + "x".repeat(4000) + "\n").problems())
                .isEmpty();
    }
}
