package org.wadeplan.cli;

import org.wadeplan.planner.plan.Program;
import picocli.CommandLine.IVersionProvider;

/** Prints the version that stands on every page. */
final class ProgramVersion implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"wadeplan " + Program.VERSION};
    }
}
