package org.wadeplan.geo.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/**
 * Reads a shapefile ({@code .shp} with {@code .dbf} and, where they are there, {@code .shx}, {@code .prj} and
 * {@code .cpg}) record by record, in its own coordinate system and in the plane.
 *
 * <p>A feature's id is the number of its record, counted from 1. Never writes. Sources: ESRI Shapefile Technical
 * Description, an ESRI White Paper, July 1998; dBASE III file format.
 */
public final class ShapefileReader {

    private static final int LONGEST_DEFINITION = 1 << 16;
    private static final int BOX_START = 36;

    private final ShapefileParts parts;
    private final SourcePlace place;

    /**
     * @param file the .shp
     * @param place how problems name it
     */
    public ShapefileReader(Path file, SourcePlace place) {
        this.parts = new ShapefileParts(file, place);
        this.place = place;
    }

    /** The files beside a .shp that are read with it and exist, in a fixed order. */
    public static List<Path> filesBeside(Path shp) {
        ShapefileParts parts = new ShapefileParts(shp, SourcePlace.file(shp.toString()));
        return Stream.of(".dbf", ".shx", ".prj", ".cpg")
                .flatMap(ending -> parts.beside(ending).stream())
                .toList();
    }

    /** A whole layer. */
    public Checked<FeatureLayer> read() {
        List<Feature> features = new ArrayList<>();
        FeatureSink all = new FeatureSink() {
            @Override
            public boolean begins(LayerShape shape) {
                return true;
            }

            @Override
            public void take(Feature feature) {
                features.add(feature);
            }
        };
        return each(all).map(shape -> new FeatureLayer(shape, features));
    }

    /** Hands over one feature after the other, those without a shape too. */
    Checked<LayerShape> each(FeatureSink sink) {
        Optional<Problem> unfit = FileCheck.readable(parts.shp(), place, "a shapefile (.shp)");
        if (unfit.isPresent()) {
            return Checked.failed(unfit.get());
        }
        try {
            return opened(sink);
        } catch (IOException refused) {
            return Checked.failed(Problem.error(
                    "file-unreadable",
                    place,
                    "the file, or one beside it, cannot be read to its end",
                    "a shapefile that no program is changing",
                    "close it in other programs, and check the disk it is on"));
        }
    }

    private Checked<LayerShape> opened(FeatureSink sink) throws IOException {
        FileWindow shp = new FileWindow(parts.shp());
        Optional<Path> index = parts.beside(".shx");
        Optional<FileWindow> shx = index.isPresent() ? Optional.of(new FileWindow(index.get())) : Optional.empty();
        Checked<ShpRecords> records = ShpRecords.open(shp, shx, place);
        Optional<Problem> noTable = DbfHeader.missing(parts);
        if (records.value().isEmpty() || noTable.isPresent()) {
            shp.close();
            if (shx.isPresent()) {
                shx.get().close();
            }
            return Checked.failed(records.value().isEmpty() ? records.problems() : List.of(noTable.orElseThrow()));
        }
        Path dbf = parts.beside(".dbf").orElseThrow();
        try (ShpRecords all = records.value().get();
                FileWindow table = new FileWindow(dbf)) {
            SourcePlace tablePlace = parts.placeOf(dbf);
            Checked<DbfHeader> header = DbfHeader.read(table, tablePlace);
            if (header.value().isEmpty()) {
                return Checked.failed(header.problems());
            }
            Findings findings = new Findings(place);
            DbfTable rows = new DbfTable(
                    table, header.value().get(), texts(header.value().get(), findings), tablePlace);
            return features(all, new ShpShapes(shp), rows, sink, findings);
        }
    }

    private DbfText texts(DbfHeader header, Findings findings) {
        Optional<String> named = parts.beside(".cpg").map(DbfText::nameIn).filter(name -> !name.isEmpty());
        named.filter(name -> DbfText.charset(name).isEmpty())
                .ifPresent(name -> findings.add(Problem.warning(
                        "cpg-unknown",
                        parts.placeOf(parts.beside(".cpg").orElseThrow()),
                        "\"" + name + "\" is no way of storing texts that is known here",
                        "a name such as UTF-8 or 1252",
                        "correct it, and look at a name with a letter beyond a to z")));
        return DbfText.of(named, header.language());
    }

    private Checked<LayerShape> features(
            ShpRecords records, ShpShapes shapes, DbfTable rows, FeatureSink sink, Findings findings)
            throws IOException {
        LayerShape layer = new LayerShape(
                parts.layerName(),
                system(),
                ShpType.of(records.type()).orElseThrow().kind(),
                rows.fields());
        if (!sink.begins(layer)) {
            return Checked.of(layer, findings.all());
        }
        int shapeCount = 0;
        boolean whole = false;
        while (true) {
            Checked<Optional<ShpRecords.Content>> next = records.next();
            findings.addAll(next.problems());
            whole = next.value().isPresent();
            if (next.value().flatMap(content -> content).isEmpty()) {
                break;
            }
            if (shapeCount++ < rows.rowCount()) {
                feature(records, next.value().get().get(), shapes, rows, findings)
                        .ifPresent(sink::take);
            }
        }
        if (whole && shapeCount != rows.rowCount()) {
            findings.add(countsDisagree(shapeCount, rows.rowCount()));
        }
        if (!ShpType.isInThePlane(records.type())) {
            findings.add(Problem.note(
                    "shp-heights-left-out", place, "heights and measures in it are not read", "", "nothing"));
        }
        rows.report(findings);
        return Checked.of(layer, findings.all());
    }

    private Optional<Feature> feature(
            ShpRecords records, ShpRecords.Content content, ShpShapes shapes, DbfTable rows, Findings findings)
            throws IOException {
        Optional<Map<String, Attribute>> attributes = rows.row(content.number() - 1);
        if (attributes.isEmpty()) {
            return Optional.empty();
        }
        String id = Integer.toString(content.number());
        Optional<Geometry> geometry = Optional.empty();
        try {
            geometry = shapes.read(content.offset(), content.bytes(), records.type());
        } catch (ShpShapes.Broken broken) {
            findings.add(Problem.error(
                    "geometry-unreadable",
                    place.row("record " + id),
                    "its shape " + broken.what(),
                    "a line, point or area as the shapefile description of 1998 stores it",
                    "draw or export this feature again"));
        }
        return Optional.of(new Feature(id, geometry, attributes.get()));
    }

    private Problem countsDisagree(int shapes, int rows) {
        return Problem.error(
                "shapefile-counts-disagree",
                place,
                "the .shp has " + shapes + " shapes and the .dbf " + rows
                        + " rows, so nothing says which belongs to which",
                "one row for each shape",
                "copy all files of that name again from where they came from; do not sort the .dbf by itself");
    }

    /** The box that the .shp states, and the system; empty where the file cannot be read. */
    Optional<Extent> extent() {
        try (FileWindow shp = new FileWindow(parts.shp())) {
            ByteBuffer box = shp.at(BOX_START, 4 * Double.BYTES);
            return Optional.of(new Extent(
                    new Envelope(box.getDouble(0), box.getDouble(16), box.getDouble(8), box.getDouble(24)), system()));
        } catch (IOException closed) {
            return Optional.empty();
        }
    }

    private Optional<StatedSystem> system() throws IOException {
        Optional<Path> prj = parts.beside(".prj");
        if (prj.isEmpty()) {
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(prj.get())) {
            String text = new String(in.readNBytes(LONGEST_DEFINITION), StandardCharsets.UTF_8);
            return StatedSystem.of(Optional.empty(), Optional.of(text));
        }
    }
}
