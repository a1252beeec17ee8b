package org.marshlight.loop;

import org.marshlight.evidence.Coefficient;

/**
 * Limits of plans that can be built at all.
 *
 * @param leastTankWidthM narrowest tank
 * @param leastRetentionDays least time that a tank must hold its inflow
 * @param longestFillingYears longest time in which what enters must fill a tank once
 */
record PlanLimits(
    @Coefficient("loop.least-tank-width") double leastTankWidthM,
    @Coefficient("loop.least-retention") double leastRetentionDays,
    @Coefficient("loop.longest-filling") double longestFillingYears) {}
