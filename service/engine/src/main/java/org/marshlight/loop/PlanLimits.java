package org.marshlight.loop;

import org.marshlight.evidence.Coefficient;

/**
 * Limits of plans that can be built at all.
 *
 * @param leastTankWidthM narrowest tank
 * @param leastRetentionDays least time that a tank must hold its inflow
 */
record PlanLimits(
    @Coefficient("loop.least-tank-width") double leastTankWidthM,
    @Coefficient("loop.least-retention") double leastRetentionDays) {}
