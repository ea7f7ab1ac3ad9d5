package org.wadeplan.planner.files;

import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wadeplan.geo.crs.LonLat;
import org.wadeplan.geo.crs.UtmZone;
import org.wadeplan.geo.io.MapFile;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.Severity;
import org.wadeplan.geo.problem.SourcePlace;

/** Where the round's coordinate system is missing or cannot be measured in, names one that suits the streams. */
final class SuitableSystem {

    private static final SourcePlace KEY = SourcePlace.part(RoundJson.FILE, "crs");

    private SuitableSystem() {}

    /** The same problems; one about the round's system says which would fit. */
    static List<Problem> suggested(List<Problem> problems, RoundFolder files) {
        boolean asked = problems.stream().anyMatch(SuitableSystem::isAboutTheSystem);
        Optional<LonLat> middle = asked ? middle(files) : Optional.empty();
        return middle.map(place -> problems.stream()
                        .map(problem -> isAboutTheSystem(problem) ? with(problem, place) : problem)
                        .toList())
                .orElse(problems);
    }

    private static boolean isAboutTheSystem(Problem problem) {
        return problem.severity() == Severity.ERROR && problem.place().equals(KEY);
    }

    private static Optional<LonLat> middle(RoundFolder files) {
        String name = files.nameOf(RoundFolder.STREAMS);
        return Files.isRegularFile(files.path(RoundFolder.STREAMS))
                ? MapFile.middle(
                        files.path(RoundFolder.STREAMS), files.query(RoundFolder.STREAMS), SourcePlace.file(name))
                : Optional.empty();
    }

    private static Problem with(Problem problem, LonLat middle) {
        return Problem.error(
                problem.code(),
                problem.place(),
                problem.found(),
                problem.expected(),
                String.format(
                        Locale.ROOT,
                        "%s; the streams lie around longitude %.1f, latitude %.1f, in %s",
                        problem.remedy(),
                        middle.lonDeg(),
                        middle.latDeg(),
                        UtmZone.at(middle).words()));
    }
}
