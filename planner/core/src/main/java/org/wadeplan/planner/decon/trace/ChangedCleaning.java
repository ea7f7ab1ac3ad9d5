package org.wadeplan.planner.decon.trace;

import org.wadeplan.planner.week.DeconTask;

/** A cleaning as planned, and as it has to be with the pest known. */
record ChangedCleaning(DeconTask before, DeconTask after) {}
