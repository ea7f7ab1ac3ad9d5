package org.wadeplan.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** The window has a program of its own; this only says how to start it where somebody came here without the launcher. */
@Command(name = "window", description = "open the window on a round (started by planner/bin/wadeplan)")
final class WindowCommand implements Callable<Integer> {

    private final Console console;

    @Parameters(arity = "0..*", hidden = true)
    private List<String> ignored = List.of();

    WindowCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        console.progress(
                "wadeplan: start the window with planner/bin/wadeplan window ROUND; this jar is the command line"
                        + " only.");
        return ExitCode.USAGE;
    }
}
