package org.wadeplan.desktop.problems;

import java.util.List;
import java.util.Optional;
import org.wadeplan.geo.problem.Problem;

/**
 * A line of the list.
 *
 * @param id unique in the list
 * @param site the site that the problem is about
 * @param repairs repairs that can be accepted for it
 */
public record ProblemRow(String id, Problem problem, Optional<String> site, List<String> repairs) {}
