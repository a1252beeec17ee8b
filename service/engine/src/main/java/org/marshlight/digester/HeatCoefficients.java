package org.marshlight.digester;

import org.marshlight.evidence.Coefficient;

/** Coefficients of the tank's heat balance. */
public record HeatCoefficients(
    @Coefficient("digester.wind-shelter") double windShelter,
    @Coefficient("digester.glass-emittance") double glassEmittance,
    @Coefficient("digester.lid-emittance") double lidEmittance,
    @Coefficient("digester.glass-index") double glassIndex,
    @Coefficient("digester.glass-extinction") double glassExtinction,
    @Coefficient("digester.glass-thickness") double glassThickness,
    @Coefficient("digester.pane-gap") double paneGap,
    @Coefficient("digester.least-glass-gap") double leastGlassGap,
    @Coefficient("digester.lid-heat-capacity") double lidHeatCapacity,
    @Coefficient("digester.bare-surface-absorptance") double bareSurfaceAbsorptance,
    @Coefficient("digester.gas-space-height") double gasSpaceHeight,
    @Coefficient("digester.gas-space-emittance") double gasSpaceEmittance,
    @Coefficient("digester.wall-thickness") double wallThickness,
    @Coefficient("digester.soil-contact-resistance") double soilContactResistance,
    @Coefficient("digester.inflow-above-mains") double inflowAboveMains,
    @Coefficient("digester.toilet-inflow-above-mains") double toiletInflowAboveMains,
    @Coefficient("digester.mains-depth") double mainsDepth,
    @Coefficient("digester.stable-mixing") double stableMixing,
    @Coefficient("digester.turning-mixing") double turningMixing,
    @Coefficient("digester.first-year-ground-loss") double firstYearGroundLoss) {}
