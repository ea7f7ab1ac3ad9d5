package org.wadeplan.planner.effort;

/**
 * Packs to carry to a site.
 *
 * @param expectedShockS button seconds expected
 * @param usableSPerPack button seconds from one healthy charged pack in this water
 * @param packs whole packs, the reserve included
 * @param explanation the sum in words
 */
public record BatteryNeed(
        int expectedShockS, int usableSPerPack, double reserveFactor, int packs, String explanation) {}
