package org.wadeplan.planner.decon.ledger;

import java.time.Instant;
import org.wadeplan.planner.round.Material;

/**
 * A pest on a material that may still be on something, because no treatment since covers it.
 *
 * @param pest id of the pest; {@code any pest} where none is on record and no generic clean was done
 * @param where the visit at which it may have got there
 */
public record OpenExposure(String water, String pest, Material material, String where, Instant since) {}
