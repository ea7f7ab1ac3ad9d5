package org.wadeplan.planner.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.planner.round.Round;

/** The demo rounds of {@code demo-sites/}, read once for all tests. */
public final class DemoRound {

    private static final Map<String, Checked<Round>> READ = new ConcurrentHashMap<>();

    private DemoRound() {}

    /** The week that can be planned. */
    public static Round resolved() {
        return round("ilvermoor");
    }

    /** The same week as planted, with its troubles. */
    public static Round troubled() {
        return round("ilvermoor-troubled");
    }

    /** What reading gave, with its warnings and notes. */
    public static Checked<Round> checked(String name) {
        return READ.computeIfAbsent(name, folder -> RoundReader.read(folder(folder)));
    }

    /** The folder of a demo round, wherever the tests were started. */
    public static Path folder(String name) {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            Path folder = at.resolve("demo-sites").resolve(name);
            if (Files.isDirectory(folder)) {
                return folder;
            }
        }
        throw new IllegalStateException("No folder demo-sites/" + name + " here or above");
    }

    private static Round round(String name) {
        Checked<Round> checked = checked(name);
        return checked.value()
                .orElseThrow(() -> new IllegalStateException(name + " cannot be read:\n"
                        + checked.problems().stream().map(Problem::sentence).collect(Collectors.joining("\n"))));
    }
}
