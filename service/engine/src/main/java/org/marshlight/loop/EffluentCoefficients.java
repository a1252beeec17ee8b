package org.marshlight.loop;

import org.marshlight.evidence.Coefficient;

/** What is not asked of a given outflow: how its COD and nitrogen are made up. */
record EffluentCoefficients(
    @Coefficient("loop.effluent-cod-per-volatile-solids") double codPerVolatileSolids,
    @Coefficient("loop.effluent-carbon-per-cod") double carbonPerCod,
    @Coefficient("loop.effluent-ammonium-share") double ammoniumShare,
    @Coefficient("wetland.supplied-minerals") double suppliedMinerals) {}
