package org.wadeplan.cli;

import java.util.List;
import org.wadeplan.geo.problem.Problem;
import org.wadeplan.geo.problem.SourcePlace;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what was wrong with a command line, what was perhaps meant, and where the help is. */
final class WrongUse implements IParameterExceptionHandler {

    private final Console console;
    private final boolean json;

    WrongUse(Console console, boolean json) {
        this.console = console;
        this.json = json;
    }

    @Override
    public int handleParseException(ParameterException fault, String[] arguments) {
        CommandLine command = fault.getCommandLine();
        String words = command.getCommandSpec().qualifiedName(" ");
        if (json) {
            console.stopped(
                    true,
                    words,
                    Problem.error("wrong-use", SourcePlace.file(words), said(fault), "", "see " + words + " --help"));
            return ExitCode.USAGE;
        }
        console.progress("wadeplan: " + said(fault) + ".");
        List<String> meant =
                fault instanceof UnmatchedArgumentException unmatched ? unmatched.getSuggestions() : List.of();
        if (!meant.isEmpty()) {
            console.progress("Did you mean: " + String.join(" or ", meant) + "?");
        }
        if (!words.equals("wadeplan") && command.getSubcommands().isEmpty()) {
            console.progress("Use: " + command.getHelp().synopsis(0).strip());
        } else {
            console.progress(
                    "Commands: " + String.join(", ", command.getSubcommands().keySet()));
        }
        console.progress("Help: " + words + " --help");
        return ExitCode.USAGE;
    }

    private static String said(ParameterException fault) {
        if (fault instanceof UnmatchedArgumentException unmatched) {
            String first = unmatched.getUnmatched().get(0);
            String words = fault.getCommandLine().getCommandSpec().qualifiedName(" ");
            if (first.startsWith("-")) {
                return "'" + first + "' is not an option of " + words;
            }
            return fault.getCommandLine().getSubcommands().isEmpty()
                    ? "'" + first + "' is one argument too many"
                    : "'" + first + "' is not a command of " + words;
        }
        String message = String.valueOf(fault.getMessage());
        return message.endsWith(".") ? message.substring(0, message.length() - 1) : message;
    }
}
