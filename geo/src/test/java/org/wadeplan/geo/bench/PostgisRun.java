package org.wadeplan.geo.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.EnumMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.wadeplan.geo.crs.MetricPoint;

/** All steps done by PostGIS, on the shapes of the same file and from the same places. */
final class PostgisRun {

    private static final int HEADER_WITH_BOX = 40;
    private static final int HEADER = 8;

    private final PostgisServer server;
    private final Map<Step, Double> seconds = new EnumMap<>(Step.class);
    private double loadSeconds;

    PostgisRun(PostgisServer server) {
        this.server = server;
    }

    /** Hands over the file's shapes as they are stored, faults and all, and leaves sorting them out to PostGIS. */
    void load(Path file, List<MetricPoint> places) throws IOException {
        Path rows = Files.createTempFile("bench-lines", ".tsv");
        Path points = Files.createTempFile("bench-places", ".tsv");
        try {
            writeShapes(file, rows);
            Files.write(points, () -> places.stream()
                    .<CharSequence>map(place -> place.eastM() + "\t" + place.northM())
                    .iterator());
            server.sql("CREATE UNLOGGED TABLE raw (fid bigint, geom geometry)");
            server.sql("CREATE UNLOGGED TABLE points (east double precision, north double precision)");
            loadSeconds = server.copy("raw", rows).seconds();
            server.copy("points", points);
        } finally {
            Files.delete(rows);
            Files.delete(points);
        }
        loadSeconds += server.sql("CREATE UNLOGGED TABLE lines AS SELECT row_number() OVER ()::int AS id, geom,"
                        + " ST_Length(geom) AS len FROM (SELECT (ST_Dump(geom)).geom FROM raw) parts"
                        + " WHERE ST_Length(geom) > 0 AND ST_Length(geom) < 'Infinity'")
                .seconds();
        server.sql("CREATE UNLOGGED TABLE places AS SELECT row_number() OVER ()::int AS id, ST_MakePoint(east, north)"
                + " AS geom FROM points");
        server.sql("ANALYZE");
    }

    /** One run over all steps after loading. */
    Run run() throws IOException {
        for (String table : List.of("snaps", "reaches", "meeting")) {
            server.sql("DROP TABLE IF EXISTS " + table);
        }
        server.sql("DROP INDEX IF EXISTS lines_geom");
        seconds.put(Step.LOAD, loadSeconds);
        timed(Step.INDEX, "CREATE INDEX lines_geom ON lines USING gist (geom)");
        timed(
                Step.SNAP,
                "CREATE UNLOGGED TABLE snaps AS SELECT p.id, l.id AS line, ST_Distance(p.geom, l.geom) AS d,"
                        + " ST_LineLocatePoint(l.geom, p.geom) * l.len AS at, ST_ClosestPoint(l.geom, p.geom) AS geom"
                        + " FROM places p CROSS JOIN LATERAL (SELECT id, geom, len FROM lines"
                        + " ORDER BY geom <-> p.geom LIMIT 1) l");
        String meanSnap = server.sql("SELECT avg(d) FROM snaps").text();
        timed(
                Step.CUT,
                "CREATE UNLOGGED TABLE reaches AS SELECT id AS line, k, ST_LineSubstring(geom,"
                        + " greatest(0, 1 - (k + 1) * 150 / len), 1 - k * 150 / len) AS geom"
                        + " FROM lines, generate_series(0, floor(len / 150)::int - 1) k");
        String[] stations = timed(
                        Step.CUT,
                        "SELECT count(*), avg(ST_X(at)), avg(ST_Y(at)) FROM (SELECT"
                                + " ST_LineInterpolatePoint(geom, 1 - s / 10.0) AS at FROM reaches,"
                                + " generate_series(0, 10) s) stations")
                .split("\\|", -1);
        timed(
                Step.MEET,
                "CREATE UNLOGGED TABLE meeting AS SELECT ST_MakePoint(x, y) AS geom FROM (SELECT ST_X(p) AS x,"
                        + " ST_Y(p) AS y FROM (SELECT ST_StartPoint(geom) AS p FROM lines UNION ALL"
                        + " SELECT ST_EndPoint(geom) FROM lines) ends) xy GROUP BY x, y HAVING count(*) >= 3");
        timed(Step.MEET, "CREATE INDEX ON meeting USING gist (geom)");
        server.sql("ANALYZE");
        String kept = timed(
                Step.CLEAR,
                "SELECT count(*) FROM reaches r WHERE NOT EXISTS"
                        + " (SELECT 1 FROM meeting m WHERE ST_DWithin(r.geom, m.geom, 50))");
        Run.Counts counts = new Run.Counts(
                count("lines"),
                count("reaches"),
                Long.parseLong(stations[0]),
                count("meeting"),
                Long.parseLong(kept),
                Double.parseDouble(meanSnap),
                Double.parseDouble(stations[1]),
                Double.parseDouble(stations[2]));
        Run run = new Run(counts, seconds, 0);
        seconds.clear();
        return run;
    }

    private long count(String table) throws IOException {
        return Long.parseLong(server.sql("SELECT count(*) FROM " + table).text());
    }

    private String timed(Step step, String statement) throws IOException {
        PostgisServer.Answer answer = server.sql(statement);
        seconds.merge(step, answer.seconds(), Double::sum);
        return answer.text();
    }

    /** The file's own bytes behind the header of the GeoPackage, in hexadecimal. */
    private static void writeShapes(Path file, Path rows) throws IOException {
        HexFormat hex = HexFormat.of();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file.toUri() + "?immutable=1");
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("SELECT fid, geom FROM " + InventedFile.LAYER);
                BufferedWriter out = Files.newBufferedWriter(rows)) {
            while (row.next()) {
                byte[] blob = row.getBytes(2);
                out.write(row.getLong(1) + "\t");
                if (blob == null) {
                    out.write("\\N");
                } else {
                    int start = (blob[3] & 0b10) != 0 ? HEADER_WITH_BOX : HEADER;
                    out.write(hex.formatHex(blob, start, blob.length));
                }
                out.write('\n');
            }
        } catch (SQLException refused) {
            throw new IOException(refused.getMessage(), refused);
        }
    }
}
