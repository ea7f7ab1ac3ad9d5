package org.wadeplan.planner.round;

import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/** A piece of land with the state of consent on it, in the round's metric coordinate system. */
public record Parcel(String id, Optional<String> consentStatus, Geometry area) {}
