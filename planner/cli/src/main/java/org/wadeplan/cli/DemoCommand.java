package org.wadeplan.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.wadeplan.geo.problem.DiskException;
import org.wadeplan.planner.files.RoundCopy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Copies the invented demo round, to start from. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description = "copy the invented demo round to a new folder, to try things on or to start from")
final class DemoCommand implements Callable<Integer> {

    private final Console console;

    @Option(names = "--troubled", description = "the same week with its troubles left in")
    private boolean troubled;

    @Parameters(paramLabel = "DIR", description = "a folder that does not exist yet")
    private Path target = Path.of("demo-round");

    DemoCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        try {
            int files = RoundCopy.copy(demoSites().resolve(troubled ? "ilvermoor-troubled" : "ilvermoor"), target);
            console.line("Copied " + files + " files of the invented demo round to " + target + ".");
            console.line("Next: wadeplan check " + Values.typed(target));
            return ExitCode.FINE;
        } catch (DiskException fault) {
            console.progress("wadeplan: " + fault.problem().sentence());
            return ExitCode.INVALID_INPUT;
        }
    }

    /** The launcher says where Wadeplan lives; without it, the current folder is taken to be the project's. */
    private static Path demoSites() {
        return Path.of(System.getProperty("wadeplan.home", "."), "demo-sites");
    }
}
