package org.wadeplan.desktop.problems;

import java.util.List;
import java.util.regex.Pattern;
import org.wadeplan.geo.problem.Problem;

/** Finds the repairs that a problem offers: its remedy names each as {@code --accept reverse:OUN}. */
final class RepairNames {

    private static final Pattern OFFER =
            Pattern.compile("--accept\\s+([\\p{Alnum}_-]+(?::[\\p{Alnum}_.-]*[\\p{Alnum}_-])*)");

    private RepairNames() {}

    /** In the order that the remedy names them; empty where it offers none. */
    static List<String> in(Problem problem) {
        return OFFER.matcher(problem.remedy())
                .results()
                .map(offer -> offer.group(1))
                .distinct()
                .toList();
    }
}
