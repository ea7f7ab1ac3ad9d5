package org.wadeplan.geo.terrain;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** Reads a grid of elevations from a GeoTIFF or an ESRI ASCII grid, told apart by their first bytes. */
public final class ElevationFile {

    /** No ground in the open air is lower or higher than this, metres, with some to spare. */
    private static final double LOWEST_M = -500;

    private static final double HIGHEST_M = 9000;

    private ElevationFile() {}

    /**
     * Reads the part of a grid that a round needs. The file is never written to.
     *
     * @param file the grid
     * @param place how problems name it
     * @param round the round's metric system
     * @param hints what a person says about the grid
     * @param area only cells here are held, in the round's metric system; empty for the whole grid
     * @return the grid; or errors where it is no grid, cut off, not placed, without a coordinate system that can be used or
     *     without a single height
     */
    public static Checked<ElevationGrid> read(
            Path file, SourcePlace place, CoordinateSystem round, GridHints hints, Optional<Envelope> area) {
        GridRequest request = new GridRequest(place, round, hints, area);
        return form(file, request).then(GridFile::read).then(read -> checked(read, request));
    }

    private static Checked<GridFile> form(Path file, GridRequest request) {
        byte[] first;
        try (InputStream in = Files.newInputStream(file)) {
            first = in.readNBytes(4);
        } catch (IOException unreadable) {
            return Checked.failed(request.faults().notAGrid("the file cannot be opened"));
        }
        if (isTiff(first)) {
            return Checked.of(new GeoTiffFile(file, request));
        }
        String name = file.toString().toLowerCase(Locale.ROOT);
        boolean startsWithKey = first.length == 4
                && new String(first, StandardCharsets.ISO_8859_1)
                        .strip()
                        .chars()
                        .allMatch(letter -> Character.isLetter(letter) && letter < 128);
        return startsWithKey && !name.endsWith(".tif") && !name.endsWith(".tiff")
                ? Checked.of(new AsciiGridFile(file, request))
                : Checked.failed(request.faults()
                        .notAGrid("the file is not a grid that can be read: its first bytes are something else"));
    }

    /** Byte order mark, then 42, or 43 for files beyond 4 GB. Source: TIFF 6.0, section 2. */
    private static boolean isTiff(byte[] first) {
        if (first.length < 4) {
            return false;
        }
        boolean little = first[0] == 'I' && first[1] == 'I' && (first[2] == 42 || first[2] == 43) && first[3] == 0;
        boolean big = first[0] == 'M' && first[1] == 'M' && first[2] == 0 && (first[3] == 42 || first[3] == 43);
        return little || big;
    }

    private static Checked<ElevationGrid> checked(GridFile.ReadGrid read, GridRequest request) {
        GridCells cells = read.cells();
        GridFaults faults = request.faults();
        Optional<Problem> outside = PlaceInSystem.fault(read, request);
        if (outside.isPresent()) {
            return Checked.failed(outside.get());
        }
        if (cells.knownCount() == 0) {
            return Checked.failed(
                    faults.allUnknown(request.area().isPresent() ? "near the round's streams" : "of the grid"));
        }
        List<Problem> problems = new ArrayList<>();
        if (cells.lowest() < LOWEST_M || cells.highest() > HIGHEST_M) {
            problems.add(faults.unitsSuspected(cells.lowest(), cells.highest()));
        }
        double stepM = request.hints().verticalStepM().orElseGet(() -> VerticalStep.measuredM(cells));
        String datum = request.hints().datum().or(read::datum).orElse("a datum that the file does not name");
        return Checked.of(
                new ElevationGrid(cells, read.system(), PlaceInSystem.cellM(read, request), stepM, datum), problems);
    }
}
