package org.wadeplan.planner.decon.bench;

/**
 * One line of the benchmark, as it is printed.
 *
 * @param figure what was measured
 * @param goal what it should be
 * @param ours what it is
 * @param peer what the other way gives; {@code none} where there is none
 * @param ratio peer over ours; empty where there is no peer
 * @param holds whether the goal is met
 */
public record DeconFigure(String figure, String goal, String ours, String peer, String ratio, boolean holds) {}
