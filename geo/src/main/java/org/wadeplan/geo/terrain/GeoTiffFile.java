package org.wadeplan.geo.terrain;

import it.geosolutions.imageioimpl.plugins.tiff.TIFFImageMetadata;
import it.geosolutions.imageioimpl.plugins.tiff.TIFFImageReader;
import it.geosolutions.imageioimpl.plugins.tiff.TIFFImageReaderSpi;
import java.awt.Rectangle;
import java.awt.image.Raster;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageReadParam;
import javax.imageio.stream.FileImageInputStream;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.GridSystem;
import org.wadeplan.geo.crs.HeightSystem;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;

/** Reads the cells that a round needs out of a GeoTIFF file, a band of rows at a time. */
record GeoTiffFile(Path file, GridRequest request) implements GridFile {

    private static final int CELLS_AT_ONCE = 1 << 20;

    @Override
    public Checked<ReadGrid> read() {
        GridFaults faults = request.faults();
        try (FileImageInputStream in = new FileImageInputStream(file.toFile())) {
            long neededBytes = TiffExtent.endByte(in);
            boolean highByteFirst = in.getByteOrder() == ByteOrder.BIG_ENDIAN;
            in.seek(0);
            TIFFImageReader reader = (TIFFImageReader) new TIFFImageReaderSpi().createReaderInstance(null);
            try {
                reader.setInput(in);
                GeoTiffTags tags = new GeoTiffTags(
                        (TIFFImageMetadata) reader.getImageMetadata(0), reader.getWidth(0), reader.getHeight(0));
                Optional<Problem> unfit = highByteFirst && tags.hasFloatPredictor()
                        ? Optional.of(faults.damaged())
                        : unfit(tags, neededBytes, in.length());
                return unfit.isPresent() ? Checked.failed(unfit.get()) : placed(reader, tags);
            } finally {
                reader.dispose();
            }
        } catch (EOFException early) {
            return Checked.failed(faults.truncated("the file breaks off before it has listed its cells"));
        } catch (IOException | RuntimeException anythingInForeignBytes) {
            return Checked.failed(faults.damaged());
        }
    }

    private Optional<Problem> unfit(GeoTiffTags tags, long neededBytes, long fileBytes) {
        GridFaults faults = request.faults();
        if (tags.isPicture()) {
            return Optional.of(faults.picture(tags.bandCount()));
        }
        return neededBytes > fileBytes
                ? Optional.of(faults.truncated("the file breaks off: it has " + fileBytes
                        + " bytes and its cells reach to byte " + neededBytes))
                : Optional.empty();
    }

    private Checked<ReadGrid> placed(TIFFImageReader reader, GeoTiffTags tags) throws IOException {
        Optional<GridFrame> frame = tags.frame();
        if (frame.isEmpty()) {
            return Checked.failed(request.faults().noPlace());
        }
        CoordinateSystem round = request.round();
        Checked<GridSystem> system =
                request.statedSystem().orElseGet(() -> GridSystem.ofGeoTiff(tags.tags(), round, request.place()));
        if (system.value().isEmpty()) {
            return Checked.failed(system.problems());
        }
        GridWindow window = request.window(frame.get(), system.value().get());
        if (window.cellCount() > GridCells.MOST_CELLS) {
            return Checked.failed(request.faults().tooMany(window.cellCount()));
        }
        float[] heights = heights(reader, window);
        List<Problem> notes = new ArrayList<>(system.problems());
        NoData.clear(heights, tags.noData(), request.faults()).ifPresent(notes::add);
        if (tags.bandCount() > 1) {
            notes.add(request.faults().secondBand(tags.bandCount()));
        }
        Optional<HeightSystem> counted = HeightSystem.of(tags.verticalSystem());
        double unitM = unitM(tags, counted);
        if (unitM != 1) {
            notes.add(request.faults().feet(unitM));
        }
        GridCells metres =
                new GridCells(frame.get().part(window), heights).scaled(tags.scale() * unitM, tags.offset() * unitM);
        return Checked.of(new ReadGrid(metres, system.value().get(), counted.map(HeightSystem::name)), notes);
    }

    /** The unit's own key goes first. Codes of units: EPSG 9001 metre, 9002 foot, 9003 United States survey foot. */
    private static double unitM(GeoTiffTags tags, Optional<HeightSystem> counted) {
        return switch (tags.verticalUnits().orElse(0)) {
            case 9001 -> 1;
            case 9002 -> 0.3048;
            case 9003 -> 1200.0 / 3937;
            default -> counted.map(HeightSystem::unitM).orElse(1.0);
        };
    }

    /** Bands of whole tile rows, so that no tile is unpacked twice. */
    private static float[] heights(TIFFImageReader reader, GridWindow window) throws IOException {
        float[] heights = new float[(int) window.cellCount()];
        int tileRows = Math.max(1, reader.getTileHeight(0));
        int bandRows = Math.max(1, CELLS_AT_ONCE / window.columns() / tileRows) * tileRows;
        int end = window.firstRow() + window.rows();
        for (int row = window.firstRow(); row < end; ) {
            int next = Math.min(end, (row / bandRows + 1) * bandRows);
            ImageReadParam part = reader.getDefaultReadParam();
            part.setSourceRegion(new Rectangle(window.firstColumn(), row, window.columns(), next - row));
            Raster cells = reader.read(0, part).getRaster();
            int at = (row - window.firstRow()) * window.columns();
            copy(cells, heights, at, next - row, window.columns());
            row = next;
        }
        return heights;
    }

    private static void copy(Raster cells, float[] heights, int at, int rows, int columns) {
        float[] row = new float[columns];
        for (int i = 0; i < rows; i++) {
            cells.getSamples(cells.getMinX(), cells.getMinY() + i, columns, 1, 0, row);
            System.arraycopy(row, 0, heights, at + i * columns, columns);
        }
    }
}
