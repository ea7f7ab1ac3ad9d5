package org.wadeplan.planner.kit;

import java.util.List;
import org.wadeplan.planner.round.KitNeed;
import org.wadeplan.planner.round.KitPurpose;
import org.wadeplan.planner.round.VisitPart;

/**
 * What one part of a visit needs.
 *
 * @param purposes kinds of kit set that go into the water, such as one for wading and one of traps
 * @param needs single items and consumables
 * @param batteryPacks packs for electrofishing; 0 for other methods
 */
public record VisitKit(String site, VisitPart part, List<KitPurpose> purposes, List<KitNeed> needs, int batteryPacks) {}
