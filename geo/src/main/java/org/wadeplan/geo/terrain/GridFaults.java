package org.wadeplan.geo.terrain;

import java.math.BigDecimal;
import java.util.Locale;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** What can be wrong with a grid of elevations, in words. */
record GridFaults(SourcePlace place) {

    Problem notAGrid(String found) {
        return error(
                "not-a-grid",
                found,
                "a grid of elevations: GeoTIFF (.tif) or ESRI ASCII grid (.asc)",
                "export the elevations again as GeoTIFF");
    }

    Problem truncated(String found) {
        return error("file-truncated", found, "a whole grid", "copy it again from where it came from");
    }

    Problem damaged() {
        return error(
                "grid-damaged",
                "the file is damaged inside, or stored in a way that is not known here",
                "a whole GeoTIFF, stored plain or with LZW, Deflate, PackBits or Zstandard",
                "copy it again from where it came from, or export the elevations again");
    }

    Problem picture(int bands) {
        return error(
                "grid-is-a-picture",
                bands >= 3
                        ? "the file has " + bands + " bands: it is a picture, not heights"
                        : "the file holds colours of a palette: it is a picture, not heights",
                "one band of heights in metres",
                "export the elevations themselves, not their shading");
    }

    Problem noPlace() {
        return error(
                "grid-not-placed",
                "the file does not say where its cells lie",
                "a GeoTIFF with a tie point and a cell size, or with a transformation",
                "export it again as GeoTIFF, with its georeference in the file itself");
    }

    Problem tooMany(long cells) {
        return error(
                "grid-too-large",
                "the round's streams need " + cells / 1_000_000 + " million cells of it",
                "at most " + GridCells.MOST_CELLS / 1_000_000 + " million cells",
                "cut it to the round's streams, or have it averaged to larger cells");
    }

    Problem allUnknown(String where) {
        return error(
                "grid-all-nodata",
                "no cell " + where + " has a value",
                "a grid with heights where the streams run",
                "check that it is the right tile, and which value stands for not known");
    }

    Problem outsideSystem(double x, double y, String system, String remedy) {
        return error(
                "grid-outside-crs",
                String.format(Locale.ROOT, "the grid's middle, %.7g, %.7g, cannot lie in %s", x, y, system),
                "coordinates of that system",
                remedy);
    }

    Problem unitsSuspected(float lowest, float highest) {
        return Problem.warning(
                "grid-units-suspected",
                place,
                String.format(
                        Locale.ROOT, "heights run from %.0f to %.0f: that is no ground in metres", lowest, highest),
                "heights in metres: the Dead Sea's shore lies at -430, the highest summit at 8,849",
                "check the unit (feet, decimetres, centimetres) and the value that stands for not known");
    }

    Problem feet(double factor) {
        return Problem.note(
                "grid-in-feet",
                place,
                String.format(
                        Locale.ROOT, "the file says that its heights are in feet; each was taken as %.7g m", factor),
                "heights in metres or with their unit",
                "nothing, if that is right");
    }

    Problem usualNoData(double value) {
        return Problem.note(
                "grid-nodata-not-stated",
                place,
                "the file does not say which value stands for not known; "
                        + new BigDecimal(Double.toString(value))
                                .stripTrailingZeros()
                                .toPlainString() + " was taken so",
                "a stated nodata value",
                "nothing, if that is right; else save the grid again with its nodata value");
    }

    Problem secondBand(int bands) {
        return Problem.note(
                "grid-several-bands",
                place,
                "the file has " + bands + " bands; the first was taken as the heights",
                "one band of heights",
                "nothing, if that is right");
    }

    private Problem error(String code, String found, String expected, String remedy) {
        return Problem.error(code, place, found, expected, remedy);
    }
}
