package org.wadeplan.planner.kit;

/**
 * Why an item cannot be loaded, and what would change that.
 *
 * @param rank 1 for the plainest remedy, upwards
 * @param found in words, starting with the item
 */
record Obstacle(int rank, String found, String remedy) {}
