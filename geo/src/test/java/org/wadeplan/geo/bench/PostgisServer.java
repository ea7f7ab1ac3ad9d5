package org.wadeplan.geo.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A private PostGIS in a temporary folder, reached through a socket in that folder alone; gone when closed.
 *
 * <p>Root may not run it, so under root it runs as the user {@code postgres} that the package makes.
 */
final class PostgisServer implements AutoCloseable {

    private static final Path PACKAGES = Path.of("/usr/lib/postgresql");
    private static final Pattern MILLISECONDS = Pattern.compile("^Time: ([0-9.]+) ms.*$", Pattern.MULTILINE);

    private static final String SETTINGS = "-c listen_addresses= -c fsync=off -c synchronous_commit=off"
            + " -c full_page_writes=off -c autovacuum=off -c max_wal_size=8GB -c shared_buffers=1GB -c work_mem=256MB"
            + " -c maintenance_work_mem=512MB";

    private final Path bin;
    private final Path folder;
    private final Thread stop = new Thread(this::stopAndDelete);

    /** What a statement said, without its timing, and how long the server took. */
    record Answer(String text, double seconds) {}

    private PostgisServer(Path bin, Path folder) {
        this.bin = bin;
        this.folder = folder;
    }

    /** The programs of the newest installed PostgreSQL that has PostGIS; empty where there is none. */
    static Optional<Path> installed() {
        if (!Files.isDirectory(PACKAGES)) {
            return Optional.empty();
        }
        try (Stream<Path> versions = Files.list(PACKAGES)) {
            return versions.filter(version -> Files.exists(Path.of(
                            "/usr/share/postgresql", version.getFileName().toString(), "extension/postgis.control")))
                    .map(version -> version.resolve("bin"))
                    .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
                    .max(Comparator.naturalOrder());
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    static PostgisServer started(Path bin) throws IOException {
        PostgisServer server = new PostgisServer(bin, Files.createTempDirectory("bench-pg"));
        Runtime.getRuntime().addShutdownHook(server.stop);
        if (isRoot()) {
            run(List.of("chown", "postgres", server.folder.toString()));
        }
        String data = server.folder.resolve("data").toString();
        server.runAsOwner("initdb", "-D", data, "-U", "postgres", "-A", "trust", "-E", "UTF8", "--no-locale");
        server.runAsOwner(
                "pg_ctl", "-D", data, "-w", "-l", data + ".log", "-o", SETTINGS + " -k " + server.folder, "start");
        server.sql("CREATE EXTENSION postgis");
        return server;
    }

    String version() throws IOException {
        return "PostGIS " + sql("SELECT postgis_lib_version()").text() + ", PostgreSQL "
                + sql("SHOW server_version").text().split(" ", 2)[0];
    }

    /** Runs one statement and times it on the server's side. */
    Answer sql(String statement) throws IOException {
        return answer(List.of("-c", "\\timing on", "-c", statement));
    }

    /** Fills a table from a file of lines with tabs, {@code \N} for nothing. */
    Answer copy(String table, Path file) throws IOException {
        return answer(List.of("-c", "\\timing on", "-c", "\\copy " + table + " FROM '" + file + "'"));
    }

    private Answer answer(List<String> what) throws IOException {
        List<String> command = new ArrayList<>(
                List.of(bin.resolve("psql").toString(), "-X", "-q", "-A", "-t", "-v", "ON_ERROR_STOP=1"));
        command.addAll(List.of("-h", folder.toString(), "-U", "postgres", "-d", "postgres"));
        command.addAll(what);
        String said = run(command);
        Matcher time = MILLISECONDS.matcher(said);
        double seconds = time.find() ? Double.parseDouble(time.group(1)) / 1000 : 0;
        return new Answer(time.replaceAll("").strip(), seconds);
    }

    private String runAsOwner(String program, String... arguments) throws IOException {
        List<String> command = new ArrayList<>();
        if (isRoot()) {
            command.addAll(List.of("runuser", "-u", "postgres", "--"));
        }
        command.add(bin.resolve(program).toString());
        command.addAll(List.of(arguments));
        return run(command);
    }

    private static boolean isRoot() {
        return "root".equals(System.getProperty("user.name"));
    }

    private static String run(List<String> command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.directory(Path.of("/").toFile());
        builder.environment().put("LC_ALL", "C");
        Path said = Files.createTempFile("bench", ".out");
        try {
            // Into a file: the server that pg_ctl starts would keep a pipe open for as long as it runs.
            Process process = builder.redirectOutput(said.toFile()).start();
            int code = process.waitFor();
            String text = Files.readString(said, StandardCharsets.UTF_8);
            if (code != 0) {
                throw new IOException(String.join(" ", command) + " ended with " + code + ": " + text);
            }
            return text;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException("stopped while waiting for " + command.get(0), stopped);
        } finally {
            Files.delete(said);
        }
    }

    @Override
    public void close() {
        Runtime.getRuntime().removeShutdownHook(stop);
        stopAndDelete();
    }

    private void stopAndDelete() {
        try {
            Path data = folder.resolve("data");
            if (Files.exists(data.resolve("postmaster.pid"))) {
                runAsOwner("pg_ctl", "-D", data.toString(), "-m", "immediate", "-w", "stop");
            }
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            }
        } catch (IOException left) {
            System.err.println("bench: " + folder + " could not be cleared away: " + left.getMessage());
        }
    }
}
