package org.wadeplan.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import picocli.CommandLine;

/** Starts a command and ends with its exit code. */
public final class Main {

    private Main() {}

    public static void main(String[] arguments) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int code = run(out, err, Clock.systemUTC(), List.of(arguments));
        out.flush();
        err.flush();
        System.exit(code);
    }

    /** Runs one command line against the given streams and clock: what tests call. */
    static int run(PrintWriter out, PrintWriter err, Clock clock, List<String> arguments) {
        Console console = new Console(out, err, clock);
        CommandLine line = Commands.all(console);
        line.setOut(out);
        line.setErr(err);
        boolean json = arguments.contains("--json");
        line.setParameterExceptionHandler(new WrongUse(console, json));
        line.setExecutionExceptionHandler((fault, command, parsed) ->
                console.fault(fault, json, command.getCommandSpec().qualifiedName(" ")));
        line.setExitCodeExceptionMapper(fault -> ExitCode.INTERNAL_FAULT);
        return line.execute(arguments.toArray(String[]::new));
    }
}
