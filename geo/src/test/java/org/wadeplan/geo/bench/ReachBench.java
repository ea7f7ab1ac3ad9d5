package org.wadeplan.geo.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Times reading, searching and cutting of national networks, beside PostGIS where that is installed.
 *
 * <p>Ends with 0 where every goal is reached, with 1 where one is not, with 2 where it was called wrongly.
 */
public final class ReachBench {

    private static final long SEED = 20270906;
    private static final int VERSION = 1;
    private static final int[] LARGE = {600_000, 3_000_000};

    private static final int WARM_UPS = 3;
    private static final int RUNS = 7;
    private static final int LARGE_RUNS = 3;
    private static final int PEER_RUNS = 2;

    private static final double MOST_LOAD_S = 1.5;
    private static final double MOST_WORK_S = 3;
    private static final double LEAST_RATIO = 5;
    private static final double MOST_GROWTH = 1.5;
    private static final double MOST_GB = 6;
    private static final double SAME_M = 1e-6;

    private final Path folder;
    private final FigureTable table = new FigureTable();

    private ReachBench(Path folder) {
        this.folder = folder;
    }

    /** Options: {@code --lines N} (180000), {@code --skip-large}, {@code --skip-peer}; {@code --files FOLDER} for the networks. */
    public static void main(String[] arguments) {
        int lines = 180_000;
        boolean large = true;
        boolean peer = true;
        Path folder = Path.of("target", "bench");
        for (int i = 0; i < arguments.length; i++) {
            switch (arguments[i]) {
                case "--skip-large" -> large = false;
                case "--skip-peer" -> peer = false;
                case "--lines" -> lines = number(arguments, ++i);
                case "--files" -> folder = Path.of(text(arguments, ++i));
                default -> usage("There is no option " + arguments[i]);
            }
        }
        ReachBench bench = new ReachBench(folder);
        try {
            bench.run(lines, peer, large);
        } catch (IOException disk) {
            say("the networks cannot be written to " + folder + ": " + disk.getMessage());
            System.exit(3);
        }
        System.out.println(
                "Seconds are the best of " + RUNS + " warm runs (and their median), PostGIS of " + PEER_RUNS + ".");
        System.out.print(bench.table);
        if (bench.table.fallsShort()) {
            System.exit(1);
        }
    }

    private static String text(String[] arguments, int at) {
        if (at >= arguments.length) {
            usage(arguments[at - 1] + " needs a value");
        }
        return arguments[at];
    }

    private static int number(String[] arguments, int at) {
        String text = text(arguments, at);
        if (!text.matches("[1-9][0-9]{2,7}")) {
            usage(arguments[at - 1] + " needs a number of lines from 100 to 99999999, not " + text);
        }
        return Integer.parseInt(text);
    }

    private static void usage(String fault) {
        System.err.println(
                "bench: " + fault + ". Usage: planner/bin/bench reaches [--lines N] [--skip-large] [--skip-peer]");
        System.exit(2);
    }

    private void run(int lines, boolean withPeer, boolean large) throws IOException {
        Files.createDirectories(folder);
        Path file = network(lines);
        say("running " + WARM_UPS + " times to warm up, then " + RUNS + " times");
        ours(file, WARM_UPS);
        List<Run> ours = ours(file, RUNS);
        List<Run> peers = withPeer ? peers(file) : List.of();
        if (peers.isEmpty()) {
            alone(ours);
        } else {
            compare(ours, peers);
        }
        if (large) {
            double each =
                    Run.best(ours, Run::processorSeconds) / ours.get(0).counts().lines();
            for (int more : LARGE) {
                grow(more, each);
            }
        }
        double peakGb = PeakMemory.gigabytes();
        table.goal("peak memory, GB", atMost(MOST_GB), number("%.2f", peakGb), "", "", peakGb <= MOST_GB);
    }

    private Path network(int lines) throws IOException {
        Path file = folder.resolve("network-" + VERSION + "-" + lines + "-" + SEED + ".gpkg");
        if (!Files.exists(file)) {
            say("inventing a network of about " + words(lines) + " lines in " + file);
            InventedFile.write(file, lines, SEED);
        }
        return file;
    }

    private static List<Run> ours(Path file, int times) {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            System.gc();
            runs.add(OurRun.of(file));
        }
        return runs;
    }

    /** The peer's runs; none where it is not installed or will not run. */
    private static List<Run> peers(Path file) {
        Optional<Path> installed = PostgisServer.installed();
        if (installed.isEmpty()) {
            say("PostGIS is not installed, so nothing is compared with it"
                    + " (Debian: apt-get install postgresql-15-postgis-3)");
            return List.of();
        }
        try {
            return peers(installed.get(), file);
        } catch (IOException refused) {
            say("PostGIS is installed but would not run, so nothing is compared with it: " + refused.getMessage());
            return List.of();
        }
    }

    private static List<Run> peers(Path bin, Path file) throws IOException {
        say("starting a private PostGIS; " + PEER_RUNS + " runs, some twenty seconds each");
        try (PostgisServer server = PostgisServer.started(bin)) {
            say("peer: " + server.version());
            PostgisRun peer = new PostgisRun(server);
            peer.load(file, OurRun.places(OurRun.load(file)));
            List<Run> runs = new ArrayList<>();
            for (int i = 0; i < PEER_RUNS; i++) {
                runs.add(peer.run());
            }
            return runs;
        }
    }

    private void compare(List<Run> ours, List<Run> peers) {
        Run.Counts our = ours.get(0).counts();
        Run.Counts peer = peers.get(0).counts();
        same("lines with a length", our.lines(), peer.lines());
        same("reaches of 150 m", our.reaches(), peer.reaches());
        same("stations every 15 m", our.stations(), peer.stations());
        same("confluences", our.confluences(), peer.confluences());
        same("reaches more than 50 m from them", our.kept(), peer.kept());
        same("mean distance to the nearest line, m", our.meanSnapM(), peer.meanSnapM());
        same("mean easting of the stations, m", our.meanStationEastM(), peer.meanStationEastM());
        same("mean northing of the stations, m", our.meanStationNorthM(), peer.meanStationNorthM());
        load(ours, Optional.of(peers));
        for (Step step : Step.values()) {
            if (step != Step.LOAD) {
                double ratio = Run.best(peers, run -> run.seconds(step)) / Run.best(ours, run -> run.seconds(step));
                table.figure(
                        step.words() + ", s",
                        seconds(ours, run -> run.seconds(step)),
                        Optional.of(seconds(peers, run -> run.seconds(step))),
                        times(ratio));
            }
        }
        double work = Run.best(ours, Run::workSeconds);
        double ratio = Run.best(peers, Run::workSeconds) / work;
        String both = seconds(ours, Run::workSeconds);
        table.goal("index, (a), (b), (c), s", atMost(MOST_WORK_S), both, "", "", work <= MOST_WORK_S);
        table.goal(
                "index, (a), (b), (c) beside PostGIS",
                "at least 5 x",
                both,
                seconds(peers, Run::workSeconds),
                times(ratio),
                ratio >= LEAST_RATIO);
    }

    private void alone(List<Run> ours) {
        Run.Counts our = ours.get(0).counts();
        table.notMeasured("lines with a length", "as PostGIS", words(our.lines()));
        table.notMeasured("reaches of 150 m", "as PostGIS", words(our.reaches()));
        table.notMeasured("stations every 15 m", "as PostGIS", words(our.stations()));
        table.notMeasured("confluences", "as PostGIS", words(our.confluences()));
        table.notMeasured("reaches more than 50 m from them", "as PostGIS", words(our.kept()));
        table.notMeasured("mean distance to the nearest line, m", "as PostGIS", number("%.6f", our.meanSnapM()));
        load(ours, Optional.empty());
        for (Step step : Step.values()) {
            if (step != Step.LOAD) {
                table.figure(step.words() + ", s", seconds(ours, run -> run.seconds(step)), Optional.empty(), "");
            }
        }
        double work = Run.best(ours, Run::workSeconds);
        String both = seconds(ours, Run::workSeconds);
        table.goal("index, (a), (b), (c), s", atMost(MOST_WORK_S), both, "", "", work <= MOST_WORK_S);
        table.notMeasured("index, (a), (b), (c) beside PostGIS", "at least 5 x", both);
    }

    private void load(List<Run> ours, Optional<List<Run>> peers) {
        double best = Run.best(ours, run -> run.seconds(Step.LOAD));
        table.goal(
                Step.LOAD.words() + ", s",
                atMost(MOST_LOAD_S),
                seconds(ours, run -> run.seconds(Step.LOAD)),
                peers.map(runs -> seconds(runs, run -> run.seconds(Step.LOAD))).orElse("not measured"),
                peers.map(runs -> times(Run.best(runs, run -> run.seconds(Step.LOAD)) / best))
                        .orElse(""),
                best <= MOST_LOAD_S);
    }

    /**
     * Everything once more on a larger network; each line may take no more than half as much work again. Work is the
     * processors' time, which what else runs on the machine touches least.
     */
    private void grow(int lines, double secondsEach) throws IOException {
        Path file = network(lines);
        say("running " + LARGE_RUNS + " times on it");
        List<Run> runs = ours(file, LARGE_RUNS);
        long count = runs.get(0).counts().lines();
        double growth = Run.best(runs, Run::processorSeconds) / count / secondsEach;
        table.figure(
                words(count) + " lines, load, s", seconds(runs, run -> run.seconds(Step.LOAD)), Optional.of(""), "");
        table.figure(
                words(count) + " lines, index, (a), (b), (c), s", seconds(runs, Run::workSeconds), Optional.of(""), "");
        table.goal(
                words(count) + " lines, work a line beside fewest lines",
                atMost(MOST_GROWTH) + " x",
                times(growth),
                "",
                "",
                growth <= MOST_GROWTH);
    }

    private void same(String figure, long ours, long peer) {
        table.goal(figure, "as PostGIS", words(ours), words(peer), "", ours == peer);
    }

    private void same(String figure, double ours, double peer) {
        boolean holds = Math.abs(ours - peer) <= SAME_M;
        table.goal(figure, "within 1e-6", number("%.6f", ours), number("%.6f", peer), "", holds);
    }

    private static String seconds(List<Run> runs, Run.Part part) {
        return number("%.2f", Run.best(runs, part)) + " (" + number("%.2f", Run.median(runs, part)) + ")";
    }

    private static String times(double ratio) {
        return number(ratio < 10 ? "%.2f x" : "%.0f x", ratio);
    }

    private static String atMost(double limit) {
        return "at most " + number("%.1f", limit);
    }

    private static String number(String form, double value) {
        return String.format(Locale.ROOT, form, value);
    }

    private static String words(long count) {
        return String.format(Locale.ROOT, "%,d", count);
    }

    private static void say(String what) {
        System.err.println("bench: " + what);
    }
}
