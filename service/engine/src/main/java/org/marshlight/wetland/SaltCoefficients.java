package org.marshlight.wetland;

import org.marshlight.evidence.Coefficient;

/** Salts of the water that comes to the beds; meaning and unit stand in the book. */
public record SaltCoefficients(
    @Coefficient("wetland.inflow-sodium-ratio") double sodiumRatio,
    @Coefficient("wetland.inflow-chloride") double chlorideMgL,
    @Coefficient("wetland.inflow-boron") double boronMgL) {}
