package org.wadeplan.cli;

import java.util.Optional;
import java.util.OptionalLong;
import org.wadeplan.planner.plan.PlanOptions;
import picocli.CommandLine.Option;

/** Seed and budget of the search for a week. Shared by every command that plans. */
final class SearchOptions {

    @Option(names = "--seed", paramLabel = "N", description = "seed of the search (default: the round's own)")
    private Optional<Long> seed = Optional.empty();

    @Option(
            names = "--iterations",
            paramLabel = "N",
            converter = Values.Iterations.class,
            description = "search budget; the same number gives the same plan (default: ${DEFAULT-VALUE})")
    private int iterations = PlanOptions.USUAL_ITERATIONS;

    PlanOptions planOptions() {
        return new PlanOptions(seed.map(OptionalLong::of).orElse(OptionalLong.empty()), iterations);
    }
}
