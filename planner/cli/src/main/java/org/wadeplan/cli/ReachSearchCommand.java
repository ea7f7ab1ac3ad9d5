package org.wadeplan.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.io.WholeFile;
import org.wadeplan.geo.network.StreamLine;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.search.ClearBy;
import org.wadeplan.planner.pack.page.CandidatePages;
import org.wadeplan.planner.reach.CandidateFiles;
import org.wadeplan.planner.reach.CandidateReport;
import org.wadeplan.planner.reach.RoundSearch;
import org.wadeplan.planner.reach.SearchRequest;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.round.SearchSettings;
import org.wadeplan.planner.round.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Where else a reach could be laid, and why not elsewhere. */
@Command(
        name = "search",
        mixinStandardHelpOptions = true,
        description = "find candidate reaches along the stream lines, score them, and say why the rest holds none;"
                + " for one site, how far its start must move and which way")
final class ReachSearchCommand extends RoundCommand {

    @Option(names = "--site", paramLabel = "S", description = "judge this site's start and how far it must move")
    private Optional<String> site = Optional.empty();

    @Option(
            names = "--best",
            paramLabel = "N",
            converter = Values.Count.class,
            description = "propose at most so many reaches (default: the round's own)")
    private Optional<Integer> best = Optional.empty();

    @Option(names = "--stream", paramLabel = "CODE", description = "search this stream line only")
    private Optional<String> stream = Optional.empty();

    @Option(
            names = "--clear-by",
            paramLabel = "WAY",
            description =
                    "keep distances straight or along the stream: ${COMPLETION-CANDIDATES} (default: the round's own)")
    private Optional<ClearBy> clearBy = Optional.empty();

    @Option(names = "--rejected", description = "list every stretch that holds no reach, with every reason")
    private boolean everyRejected;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "write candidates.gpkg, .geojson, .gpx and .pdf (map and pages to print) into this folder")
    private Optional<Path> out = Optional.empty();

    ReachSearchCommand(Console console) {
        super(console);
    }

    @Override
    int run(Round round) {
        if (site.isPresent() && round.site(site.get()).isEmpty()) {
            return unknown(
                    "--site", site.get(), round.sites().stream().map(Site::id).toList());
        }
        if (stream.isPresent() && round.terrain().network().line(stream.get()).isEmpty()) {
            return unknown(
                    "--stream",
                    stream.get(),
                    round.terrain().network().lines().stream()
                            .map(StreamLine::code)
                            .toList());
        }
        SearchRequest request =
                new SearchRequest(settings(round), onlyStream(round), site, everyRejected || out.isPresent());
        CandidateReport report = RoundSearch.search(round, request, new SearchProgress(console()));
        List<Problem> problems = new ArrayList<>(report.problems());
        List<String> text = new ArrayList<>(new CandidateText(round, report).lines(everyRejected));
        if (out.isPresent()) {
            try {
                problems.addAll(write(round, report, out.get(), text));
            } catch (DiskException fault) {
                return notWritten(fault);
            }
        }
        int code = show(round, problems, report, text);
        return report.complete() && report.candidates().isEmpty() ? ExitCode.NO_FEASIBLE_PLAN : code;
    }

    private SearchSettings settings(Round round) {
        SearchSettings settings = round.header().search();
        settings = clearBy.map(settings::measured).orElse(settings);
        return best.map(settings::proposing).orElse(settings);
    }

    /** A site is looked at on its own stream, unless another was asked for. */
    private Optional<String> onlyStream(Round round) {
        return stream.or(() -> site.flatMap(round::site).map(Site::stream));
    }

    private List<Problem> write(Round round, CandidateReport report, Path folder, List<String> text)
            throws DiskException {
        if (!Files.isDirectory(folder)) {
            try {
                Files.createDirectories(folder);
            } catch (java.io.IOException refused) {
                throw new DiskException(
                        folder, "the folder could not be made", "name a folder that can be written to", refused);
            }
        }
        List<Problem> problems = new CandidateFiles(round, report, now()).writeAll(folder);
        byte[] pages = new CandidatePages(round, report, now()).press().bytes();
        WholeFile.write(folder.resolve(CandidatePages.FILE), temporary -> Files.write(temporary, pages));
        text.add("Written to " + folder + ": " + CandidateFiles.GEOPACKAGE + ", " + CandidateFiles.GEOJSON + ", "
                + CandidatePages.FILE
                + (problems.isEmpty() ? ", " + CandidateFiles.GPX : "; no " + CandidateFiles.GPX + ", see the errors"));
        return problems;
    }
}
