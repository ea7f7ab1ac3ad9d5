package org.wadeplan.geo.io;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.crs.CoordinateSystem;
import org.wadeplan.geo.crs.StatedSystem;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;

/** What a person should know about the coordinate system of a map file. */
final class SystemNotes {

    private SystemNotes() {}

    static Problem missing(SourcePlace file, String part, CoordinateSystem round) {
        String how = file.file().toLowerCase(java.util.Locale.ROOT).endsWith(".shp")
                ? "nothing says which coordinate system the shapefile is in: there is no .prj beside it"
                : "the layer does not say which coordinate system it is in";
        return Problem.error(
                "crs-missing",
                file,
                how,
                "a layer with its coordinate system, best the round's " + round.code(),
                "ask whoever made it and name the code in round.json, \"mappings\": {\"" + part
                        + "\": {\"crs\": \"EPSG:...\"}}, or set it in the map program and save it again");
    }

    /** Says how coordinates were brought into the round's system; nothing where they are in it already. */
    static List<Problem> note(
            SourcePlace file, Optional<StatedSystem> inFile, StatedSystem used, CoordinateSystem round) {
        List<Problem> notes = new ArrayList<>();
        if (!inFile.equals(Optional.of(used))) {
            notes.add(Problem.note(
                    "crs-from-settings",
                    file,
                    "its coordinates were read as " + used.words() + ", as round.json says; the file says "
                            + inFile.map(StatedSystem::words).orElse("nothing"),
                    "",
                    "nothing if that is right"));
        }
        if (!used.code().equals(Optional.of(round.code()))) {
            notes.add(CoordinateSystem.inDegrees(used) ? inDegrees(file, used, round) : elsewhere(file, used, round));
        }
        return notes;
    }

    private static Problem inDegrees(SourcePlace file, StatedSystem used, CoordinateSystem round) {
        return Problem.note(
                "crs-in-degrees",
                file,
                "its coordinates are degrees of " + used.words()
                        + ", in which nothing can be measured; lengths and distances are measured in " + round.words(),
                "",
                "nothing");
    }

    private static Problem elsewhere(SourcePlace file, StatedSystem used, CoordinateSystem round) {
        return Problem.note(
                "crs-brought-over",
                file,
                "its coordinates are in " + used.words() + "; they were brought into " + round.words(),
                "",
                "nothing");
    }
}
