package org.wadeplan.cli;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;
import org.wadeplan.geo.problem.Checked;
import org.wadeplan.planner.files.RoundReader;
import org.wadeplan.planner.round.Round;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The round folder and how to read it. Shared by every command that takes a round. */
final class RoundOptions {

    @Parameters(paramLabel = "ROUND", description = "the round folder")
    private Path folder = Path.of(".");

    @Option(
            names = "--accept",
            paramLabel = "REPAIR",
            description = "agree to a repair of a stream line for this run, such as reverse:OUN; may be repeated."
                    + " The file itself is never written to")
    private Set<String> accepted = new LinkedHashSet<>();

    Path folder() {
        return folder;
    }

    Checked<Round> read() {
        return RoundReader.read(folder, accepted);
    }
}
