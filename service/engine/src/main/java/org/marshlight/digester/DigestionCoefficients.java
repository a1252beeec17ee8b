package org.marshlight.digester;

import org.marshlight.evidence.Coefficient;

/** Coefficients of what happens to matter in a tank. */
public record DigestionCoefficients(
    @Coefficient("digester.hydrolysis-activation") double hydrolysisActivation,
    @Coefficient("digester.slow-share") double slowShare,
    @Coefficient("digester.slow-rate-35") double slowRate35,
    @Coefficient("digester.acid-rate-35") double acidRate35,
    @Coefficient("digester.cold-zero") double coldZero,
    @Coefficient("digester.cold-capacity-at-10") double coldCapacityAtTen,
    @Coefficient("digester.unadapted-zero") double unadaptedZero,
    @Coefficient("digester.unadapted-capacity-at-10") double unadaptedCapacityAtTen,
    @Coefficient("digester.unadapted-capacity-at-15") double unadaptedCapacityAtFifteen,
    @Coefficient("digester.overheating-starts") double overheatingStarts,
    @Coefficient("digester.overheating-ends") double overheatingEnds,
    @Coefficient("digester.sludge-activity-35") double sludgeActivity35,
    @Coefficient("digester.liquor-activity-35") double liquorActivity35,
    @Coefficient("digester.sludge-acid-exchange") double sludgeAcidExchange,
    @Coefficient("digester.phosphorus-in-solids") double phosphorusInSolids,
    @Coefficient("digester.sludge-solids") double sludgeSolids,
    @Coefficient("digester.sludge-fill") double sludgeFill,
    @Coefficient("digester.seed-share") double seedShare,
    @Coefficient("digester.sulphate-sulphur") double sulphateSulphur,
    @Coefficient("digester.sulphate-reduced") double sulphateReduced,
    @Coefficient("digester.liquor-ph") double liquorPh,
    @Coefficient("digester.methane-fraction") double methaneFraction,
    @Coefficient("digester.oversaturation") double oversaturation,
    @Coefficient("digester.leak-share") double leakShare,
    @Coefficient("digester.bod5-of-degradable") double bod5OfAcid,
    @Coefficient("digester.suspended-share") double suspendedShare,
    @Coefficient("digester.effluent-coliforms") double effluentColiforms) {}
