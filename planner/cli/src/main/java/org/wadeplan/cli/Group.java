package org.wadeplan.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** A word that needs a further word: on its own it shows its help and counts as wrong use. */
abstract class Group implements Callable<Integer> {

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli fills it in before call()
    private CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getErr());
        return ExitCode.USAGE;
    }
}
