package org.wadeplan.geo.terrain;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.crs.GridSystem;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;

/** Reads the cells that a round needs out of an ESRI ASCII grid, word by word. */
record AsciiGridFile(Path file, GridRequest request) implements GridFile {

    @Override
    public Checked<ReadGrid> read() {
        try (InputStream in = Files.newInputStream(file)) {
            WordStream words = new WordStream(in);
            Checked<AsciiGridHeader> header = AsciiGridHeader.read(words, request.faults());
            Checked<GridSystem> system =
                    request.statedSystem().orElseGet(() -> Checked.failed(GridSystem.missing(request.place())));
            if (header.value().isEmpty() || system.value().isEmpty()) {
                return Checked.<ReadGrid>failed(header.problems()).with(system.problems());
            }
            return cells(words, header.value().get(), system.value().get());
        } catch (IOException unreadable) {
            return Checked.failed(request.faults().damaged());
        }
    }

    private Checked<ReadGrid> cells(WordStream words, AsciiGridHeader header, GridSystem system) throws IOException {
        GridFrame frame = header.frame();
        GridWindow window = request.window(frame, system);
        if (window.cellCount() > GridCells.MOST_CELLS) {
            return Checked.failed(request.faults().tooMany(window.cellCount()));
        }
        float[] heights = new float[(int) window.cellCount()];
        Optional<Problem> broken = fill(heights, words, header, window);
        if (broken.isPresent()) {
            return Checked.failed(broken.get());
        }
        List<Problem> notes = new ArrayList<>();
        NoData.clear(heights, header.noData(), request.faults()).ifPresent(notes::add);
        GridCells cells = new GridCells(frame.part(window), heights);
        return Checked.of(new ReadGrid(cells, system, Optional.empty()), notes);
    }

    private Optional<Problem> fill(float[] heights, WordStream words, AsciiGridHeader header, GridWindow window)
            throws IOException {
        GridFrame frame = header.frame();
        Optional<String> word = header.firstHeight();
        long expected = frame.whole().cellCount();
        for (long cell = 0; cell < expected; cell++) {
            if (word.isEmpty()) {
                return Optional.of(request.faults()
                        .truncated("the file breaks off: it has " + cell + " heights and its header promises "
                                + frame.columns() + " × " + frame.rows() + " = " + expected));
            }
            Optional<Double> height = AsciiGridHeader.number(word.get());
            if (height.isEmpty()) {
                return Optional.of(AsciiGridHeader.noNumber(request.place(), words.line(), "a height", word.get()));
            }
            put(heights, window, (int) (cell % frame.columns()), (int) (cell / frame.columns()), height.get());
            word = words.next();
        }
        return Optional.empty();
    }

    private static void put(float[] heights, GridWindow window, int column, int row, double height) {
        int inColumn = column - window.firstColumn();
        int inRow = row - window.firstRow();
        if (inColumn >= 0 && inColumn < window.columns() && inRow >= 0 && inRow < window.rows()) {
            heights[inRow * window.columns() + inColumn] = (float) height;
        }
    }
}
