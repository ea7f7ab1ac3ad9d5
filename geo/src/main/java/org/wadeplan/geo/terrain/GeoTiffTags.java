package org.wadeplan.geo.terrain;

import it.geosolutions.imageio.plugins.tiff.TIFFField;
import it.geosolutions.imageioimpl.plugins.tiff.TIFFImageMetadata;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The tags of a GeoTIFF file's first image that say how its cells are stored and where they lie.
 *
 * <p>Sources: TIFF 6.0; OGC GeoTIFF 1.1 (19-008r4): ModelTiepoint 33922, ModelPixelScale 33550, ModelTransformation 34264,
 * GeoKeyDirectory 34735 with keys GTRasterType 1025 and VerticalUnits 4099. The nodata tag 42113 and the scale in 42112 are
 * those that GDAL writes.
 */
record GeoTiffTags(TIFFImageMetadata tags, int columns, int rows) {

    private static final int PHOTOMETRIC = 262;
    private static final int BANDS = 277;
    private static final int PREDICTOR = 317;
    private static final int FLOAT_PREDICTOR = 3;
    private static final int PIXEL_SCALE = 33550;
    private static final int TIE_POINT = 33922;
    private static final int TRANSFORMATION = 34264;
    private static final int GEO_KEYS = 34735;
    private static final int RASTER_TYPE_KEY = 1025;
    private static final int VERTICAL_UNITS_KEY = 4099;
    private static final int VERTICAL_SYSTEM_KEY = 4096;
    private static final int POINT = 2;
    private static final int PALETTE = 3;
    private static final Pattern NUMBER_ROLE =
            Pattern.compile("role=\"(scale|offset)\"[^>]*>\\s*([-+.\\deE]+)\\s*<", Pattern.CASE_INSENSITIVE);

    private static final int GDAL_METADATA = 42112;
    private static final int GDAL_NODATA = 42113;

    int bandCount() {
        return number(BANDS, 0).orElse(1);
    }

    /** The reader puts the bytes of such numbers together the wrong way round where the high byte comes first. */
    boolean hasFloatPredictor() {
        return number(PREDICTOR, 0).orElse(1) == FLOAT_PREDICTOR;
    }

    boolean isPicture() {
        return number(PHOTOMETRIC, 0).orElse(1) == PALETTE || bandCount() >= 3;
    }

    /** Empty where the file does not say where its cells lie, or says it with more points than a plain grid needs. */
    Optional<GridFrame> frame() {
        double half = isPoint() ? 0 : 0.5;
        double[] model = numbers(TRANSFORMATION);
        if (model.length >= 8) {
            return Optional.of(new GridFrame(
                            columns,
                            rows,
                            model[3] + half * (model[0] + model[1]),
                            model[7] + half * (model[4] + model[5]),
                            model[0],
                            model[4],
                            model[1],
                            model[5]))
                    .filter(GridFrame::isRegular);
        }
        double[] scale = numbers(PIXEL_SCALE);
        double[] tie = numbers(TIE_POINT);
        if (scale.length < 2 || tie.length < 6) {
            return Optional.empty();
        }
        double firstX = tie[3] + (half - tie[0]) * scale[0];
        double firstY = tie[4] - (half - tie[1]) * scale[1];
        return Optional.of(GridFrame.northUp(columns, rows, firstX, firstY, scale[0], scale[1]))
                .filter(GridFrame::isRegular);
    }

    boolean isPoint() {
        return key(RASTER_TYPE_KEY).orElse(1) == POINT;
    }

    /** Code of the system that heights are counted in. */
    OptionalInt verticalSystem() {
        return key(VERTICAL_SYSTEM_KEY);
    }

    OptionalInt verticalUnits() {
        return key(VERTICAL_UNITS_KEY);
    }

    /** The value that stands for "not known". */
    OptionalDouble noData() {
        try {
            return text(GDAL_NODATA)
                    .map(words -> OptionalDouble.of(Double.parseDouble(words.strip())))
                    .orElse(OptionalDouble.empty());
        } catch (NumberFormatException noNumber) {
            return OptionalDouble.empty();
        }
    }

    /** What stored numbers are multiplied by; 1 where the file says nothing. */
    double scale() {
        return role("scale").orElse(1);
    }

    /** What is added after that. */
    double offset() {
        return role("offset").orElse(0);
    }

    private OptionalDouble role(String role) {
        Matcher found = NUMBER_ROLE.matcher(text(GDAL_METADATA).orElse(""));
        while (found.find()) {
            if (found.group(1).equalsIgnoreCase(role)) {
                return OptionalDouble.of(Double.parseDouble(found.group(2)));
            }
        }
        return OptionalDouble.empty();
    }

    /** A key whose value stands in the directory itself: id, place, count, value, four numbers to a key. */
    private OptionalInt key(int id) {
        TIFFField keys = tags.getTIFFField(GEO_KEYS);
        for (int at = 4; keys != null && at + 3 < keys.getCount(); at += 4) {
            if (keys.getAsInt(at) == id && keys.getAsInt(at + 1) == 0) {
                return OptionalInt.of(keys.getAsInt(at + 3));
            }
        }
        return OptionalInt.empty();
    }

    private OptionalInt number(int tag, int index) {
        TIFFField field = tags.getTIFFField(tag);
        return field == null || field.getCount() <= index ? OptionalInt.empty() : OptionalInt.of(field.getAsInt(index));
    }

    private double[] numbers(int tag) {
        TIFFField field = tags.getTIFFField(tag);
        double[] numbers = new double[field == null ? 0 : field.getCount()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = field.getAsDouble(i);
        }
        return numbers;
    }

    private Optional<String> text(int tag) {
        TIFFField field = tags.getTIFFField(tag);
        return field == null || field.getCount() == 0 ? Optional.empty() : Optional.ofNullable(field.getAsString(0));
    }
}
