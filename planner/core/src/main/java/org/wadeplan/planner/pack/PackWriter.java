package org.wadeplan.planner.pack;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.pack.calendar.WeekCalendar;
import org.wadeplan.planner.pack.page.PackPages;
import org.wadeplan.planner.pack.page.PressedPdf;
import org.wadeplan.planner.pack.track.TrackFiles;
import org.wadeplan.planner.plan.PlanJson;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;
import org.wadeplan.planner.week.CrewDay;

/**
 * Writes everything that is printed, loaded on a handheld or put into a calendar.
 *
 * <p>It is made from the round's records, which never hold the files whose names end in {@code _private}. Those are opened
 * only to keep their phones and landholders out: the finished files are read again, and one hit stops the pack. The same round, plan and time give the same bytes.
 */
public final class PackWriter {

    private static final String PLAN = "plan.json";

    private PackWriter() {}

    /**
     * Writes the pack into a folder, which is made where it is missing. Files of the same name are replaced; others stay.
     *
     * @param madeAt the time on each page
     * @return what was written; where a phone or a landholder of a private table would have gone out, nothing was, and the
     *     problems say which cell
     * @throws DiskException where the folder cannot be written to; an earlier pack in it is then as it was, or has some
     *     of its files replaced by whole newer ones where the disk failed while moving
     */
    public static PackResult write(Round round, RoundPlan plan, Path folder, Instant madeAt) throws DiskException {
        try (StagedFolder stage = StagedFolder.beside(folder)) {
            List<PackFile> files = new ArrayList<>(pages(new PackPages(round, plan, madeAt), plan, stage));
            List<Problem> problems = tracks(round, plan, stage, madeAt, files);
            long calendarBytes = stage.write("week.ics", WeekCalendar.of(round, plan, madeAt));
            files.add(new PackFile(
                    "week.ics", "visits and cleanings for a calendar (RFC 5545)", calendarBytes, OptionalInt.empty()));
            byte[] planJson = PlanJson.text(plan).getBytes(StandardCharsets.UTF_8);
            long planBytes = stage.write(PLAN, planJson);
            files.add(new PackFile(
                    PLAN, "the plan that all this was made from, as data", planBytes, OptionalInt.empty()));
            String contents = ContentsList.of(round, plan, files, problems, madeAt);
            long contentsBytes = stage.write(ContentsList.NAME, contents.getBytes(StandardCharsets.UTF_8));
            files.add(new PackFile(ContentsList.NAME, "this list", contentsBytes, OptionalInt.empty()));
            List<Problem> leaks = PrivacyGuard.check(round, files, stage.folder());
            if (!leaks.isEmpty()) {
                return new PackResult(folder, List.of(), List.of(), leaks);
            }
            Set<String> names = files.stream().map(PackFile::name).collect(Collectors.toSet());
            List<String> leftOver = leftOver(folder, names);
            stage.publish();
            return new PackResult(folder, List.copyOf(files), leftOver, problems);
        }
    }

    private static List<PackFile> pages(PackPages pages, RoundPlan plan, StagedFolder stage) throws DiskException {
        List<PackFile> files = new ArrayList<>();
        files.add(pdf(stage, "round_overview.pdf", "the week, methods, sites not visited, findings", pages.overview()));
        for (CrewDay day : plan.week().crewDays()) {
            String name = day.date() + "_" + day.crew() + ".pdf";
            files.add(pdf(stage, name, "papers of crew " + day.crew() + " on " + day.date(), pages.crewDay(day)));
        }
        return files;
    }

    private static List<Problem> tracks(
            Round round, RoundPlan plan, StagedFolder stage, Instant madeAt, List<PackFile> files)
            throws DiskException {
        TrackFiles tracks = new TrackFiles(round, plan.reaches(), madeAt);
        List<Problem> problems = tracks.writeAll(stage.folder());
        if (problems.isEmpty()) {
            files.add(stage.made(TrackFiles.GPX, "stakes and routes for a handheld (GPX 1.1)"));
        }
        files.add(stage.made(TrackFiles.GEOPACKAGE, "reaches, stakes and streams for map programs (GeoPackage)"));
        files.add(stage.made(TrackFiles.REACHES_GEOJSON, "reaches on WGS 84 (RFC 7946)"));
        files.add(stage.made(TrackFiles.STAKES_GEOJSON, "stakes on WGS 84 (RFC 7946)"));
        return problems;
    }

    private static PackFile pdf(StagedFolder stage, String name, String what, PressedPdf pdf) throws DiskException {
        long bytes = stage.write(name, pdf.bytes());
        return new PackFile(name, what, bytes, OptionalInt.of(pdf.pages()));
    }

    private static List<String> leftOver(Path folder, Set<String> names) throws DiskException {
        try (Stream<Path> there = Files.list(folder)) {
            return there.map(path -> path.getFileName().toString())
                    .filter(name -> name.matches("\\d{4}-\\d{2}-\\d{2}_.*\\.pdf") && !names.contains(name))
                    .sorted()
                    .toList();
        } catch (IOException failure) {
            throw new DiskException(folder, "the folder cannot be listed", "choose another folder", failure);
        }
    }
}
