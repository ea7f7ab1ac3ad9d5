package org.wadeplan.geo.io;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** The rows of a .dbf, one at a time. */
final class DbfTable implements Closeable {

    private static final byte DELETED = '*';

    private final FileWindow file;
    private final DbfHeader header;
    private final DbfText texts;
    private final SourcePlace place;
    private final List<DbfColumn> columns;
    private final Map<String, Integer> unreadable = new LinkedHashMap<>();
    private final Map<String, String> firstUnreadable = new LinkedHashMap<>();
    private int deleted;

    DbfTable(FileWindow file, DbfHeader header, DbfText texts, SourcePlace place) {
        this.file = file;
        this.header = header;
        this.texts = texts;
        this.place = place;
        this.columns = header.columns(texts);
    }

    int rowCount() {
        return header.rowCount();
    }

    List<Field> fields() {
        return columns.stream().filter(DbfColumn::isKnown).map(DbfColumn::field).toList();
    }

    /** The attributes of a row, counted from 0; empty where it is marked as deleted. */
    Optional<Map<String, Attribute>> row(int number) throws IOException {
        ByteBuffer row = file.at(header.headerBytes() + (long) number * header.rowBytes(), header.rowBytes());
        if (row.get(0) == DELETED) {
            deleted++;
            return Optional.empty();
        }
        Map<String, Attribute> attributes = new LinkedHashMap<>();
        for (DbfColumn column : columns) {
            if (column.isKnown()) {
                byte[] cell = new byte[column.width()];
                row.get(column.start(), cell);
                value(column, cell, number).ifPresent(value -> attributes.put(column.name(), value));
            }
        }
        return Optional.of(attributes);
    }

    private Optional<Attribute> value(DbfColumn column, byte[] cell, int row) {
        try {
            return column.value(cell, texts);
        } catch (DbfColumn.Unreadable other) {
            unreadable.merge(column.name(), 1, Integer::sum);
            firstUnreadable.putIfAbsent(column.name(), "\"" + other.getMessage() + "\" in record " + (row + 1));
            return Optional.empty();
        }
    }

    /** Everything that was found while reading; to be asked once all rows were read. */
    void report(Findings findings) {
        columns.stream().filter(column -> !column.isKnown()).forEach(column -> findings.add(leftOut(column)));
        unreadable.forEach((column, count) -> findings.add(Problem.warning(
                "dbf-value-unreadable",
                place.column(column),
                count + (count == 1 ? " value is" : " values are") + " not what the column holds, the first "
                        + firstUnreadable.get(column) + "; taken for not known",
                "a number with a decimal point, a day as eight digits, or T or F, as the column's kind asks",
                "correct them in the program that wrote the file")));
        if (deleted > 0) {
            findings.add(Problem.note(
                    "dbf-deleted",
                    place,
                    deleted + (deleted == 1 ? " record is" : " records are") + " marked as deleted and left out",
                    "",
                    "nothing"));
        }
        reportTexts(findings);
    }

    private void reportTexts(Findings findings) {
        if (texts.assumed()) {
            findings.add(
                    Problem.note(
                            "dbf-encoding-assumed",
                            place,
                            "nothing says how letters such as \u00e4 or \u0101 are stored; read as UTF-8 where that fits, else as"
                                    + " Windows-1252",
                            "",
                            "look at a name with such a letter; if it is wrong, put a .cpg with the right name beside the file"));
        }
        if (texts.undecodable() > 0) {
            findings.add(Problem.warning(
                    "dbf-encoding-wrong",
                    place,
                    texts.undecodable() + " texts hold bytes that stand for no letter in " + texts.charsetName(),
                    "texts stored as the .cpg or the file's header says",
                    "put a .cpg with the right name, such as UTF-8, beside the file"));
        }
    }

    private Problem leftOut(DbfColumn column) {
        return Problem.note(
                "column-left-out",
                place.column(column.name()),
                "the column is of the kind " + column.type() + ", which is not read here; it was left out",
                "the kinds C, N, F, L and D",
                "nothing, unless the column is needed");
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
