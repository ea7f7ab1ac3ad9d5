package org.wadeplan.planner.round;

/**
 * A depth measured along a reach, on a walk-over or a past visit.
 *
 * @param fromStartM distance upstream from the site's start along the stream, m; below zero downstream of it
 * @param depthM deepest point across the stream there, m
 */
public record DepthPoint(String site, double fromStartM, double depthM) {}
