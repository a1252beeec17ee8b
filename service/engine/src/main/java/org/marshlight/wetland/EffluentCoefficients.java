package org.marshlight.wetland;

import org.marshlight.evidence.Coefficient;

/** What the outflow of a septic tank holds beside what a plan tells of it. */
public record EffluentCoefficients(
    @Coefficient("wetland.effluent-cod-per-volatile-solids") double codPerVolatileSolids,
    @Coefficient("wetland.effluent-carbon-per-cod") double carbonPerCod,
    @Coefficient("wetland.effluent-ammonium-share") double ammoniumShare,
    @Coefficient("wetland.effluent-fixed-solids") double fixedSolids,
    @Coefficient("wetland.effluent-inorganic-carbon") double inorganicCarbon) {}
