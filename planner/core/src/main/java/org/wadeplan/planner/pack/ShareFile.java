package org.wadeplan.planner.pack;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.wadeplan.geo.io.WholeFile;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.pack.calendar.WeekCalendar;
import org.wadeplan.planner.pack.track.TrackFiles;
import org.wadeplan.planner.plan.RoundPlan;
import org.wadeplan.planner.round.Round;

/** Writes one file of the pack alone. */
public final class ShareFile {

    private final Round round;
    private final RoundPlan plan;
    private final Instant madeAt;

    public ShareFile(Round round, RoundPlan plan, Instant madeAt) {
        this.round = round;
        this.plan = plan;
        this.madeAt = madeAt;
    }

    /**
     * Writes the file, whole or not at all.
     *
     * @return problems that kept it from being written; empty where it was
     * @throws DiskException where the disk refused
     */
    public List<Problem> write(ShareKind kind, Path file) throws DiskException {
        TrackFiles tracks = new TrackFiles(round, plan.reaches(), madeAt);
        switch (kind) {
            case GPX -> {
                return tracks.gpx(file);
            }
            case GPKG -> tracks.geoPackage(file);
            case GEOJSON -> tracks.reachesGeoJson(file);
            case ICS -> {
                byte[] calendar = WeekCalendar.of(round, plan, madeAt);
                WholeFile.write(file, temporary -> Files.write(temporary, calendar));
            }
        }
        return List.of();
    }
}
