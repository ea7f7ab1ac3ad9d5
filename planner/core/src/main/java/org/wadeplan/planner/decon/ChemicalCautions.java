package org.wadeplan.planner.decon;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The cautions that ship with the program, each with its source. An agent that no row names gets those that always apply;
 * that says nothing of how harmless it is, so the sheet sends people to its safety data sheet.
 */
public final class ChemicalCautions {

    private static final String FILE = "chemical_cautions.csv";
    private static final ChemicalCautions SHIPPED = read();

    private final List<ChemicalCaution> rows;

    private ChemicalCautions(List<ChemicalCaution> rows) {
        this.rows = List.copyOf(rows);
    }

    public static ChemicalCautions shipped() {
        return SHIPPED;
    }

    public List<ChemicalCaution> rows() {
        return rows;
    }

    /** Why two agents may not be used in one clean; empty where no row forbids it. */
    public Optional<String> mustNeverMeet(String agent, String other) {
        return rows.stream()
                .filter(row -> row.topic().equals("never-meet"))
                .filter(row -> row.forbids(agent, other) || row.forbids(other, agent))
                .map(ChemicalCaution::text)
                .findFirst();
    }

    /** The cautions for a clean with these agents, in table order; what must never meet from either side. */
    public List<ChemicalCaution> about(Collection<String> agents) {
        return rows.stream()
                .filter(row -> row.agents().isEmpty() || agents.stream().anyMatch(row::concerns))
                .toList();
    }

    private static ChemicalCautions read() {
        CsvSchema schema = CsvSchema.emptySchema().withHeader();
        try (InputStream in = Objects.requireNonNull(ChemicalCautions.class.getResourceAsStream(FILE), FILE);
                MappingIterator<Map<String, String>> lines = new CsvMapper()
                        .readerForMapOf(String.class)
                        .with(schema)
                        .readValues(in)) {
            return new ChemicalCautions(
                    lines.readAll().stream().map(ChemicalCautions::row).toList());
        } catch (IOException fault) {
            throw new UncheckedIOException("The shipped table " + FILE + " cannot be read", fault);
        }
    }

    private static ChemicalCaution row(Map<String, String> line) {
        return new ChemicalCaution(
                cell(line, "caution"),
                cell(line, "topic"),
                words(cell(line, "agents")),
                words(cell(line, "never_with")),
                cell(line, "text"),
                cell(line, "source"));
    }

    private static String cell(Map<String, String> line, String column) {
        return line.getOrDefault(column, "").strip();
    }

    private static List<String> words(String cell) {
        return Arrays.stream(cell.split(";", -1))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
