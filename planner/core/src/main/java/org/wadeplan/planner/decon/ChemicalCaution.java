package org.wadeplan.planner.decon;

import java.util.List;
import java.util.Locale;

/**
 * A caution about an agent.
 *
 * @param topic never-meet, make-up, protect, dispose, electric or limits
 * @param agents words that an agent's name may hold for the caution to apply; empty where it always applies
 * @param neverWith for never-meet: words of the agents it must not touch
 * @param text what to print
 */
public record ChemicalCaution(
        String id, String topic, List<String> agents, List<String> neverWith, String text, String source) {

    boolean concerns(String agent) {
        return agents.isEmpty() || holdsOneOf(agent, agents) || holdsOneOf(agent, neverWith);
    }

    boolean forbids(String agent, String other) {
        return holdsOneOf(agent, agents) && holdsOneOf(other, neverWith);
    }

    private static boolean holdsOneOf(String agent, List<String> words) {
        String lower = agent.toLowerCase(Locale.ROOT);
        return words.stream().anyMatch(lower::contains);
    }
}
