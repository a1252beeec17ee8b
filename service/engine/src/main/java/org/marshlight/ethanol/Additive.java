package org.marshlight.ethanol;

import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Coefficient;
import org.marshlight.feed.Matter;

/** What is bought for the mash: enzymes, malt, yeast. */
@CatalogueRow("additives")
record Additive(
    @Coefficient("moisture") double moisture,
    @Coefficient("ash") double ash,
    @Coefficient("cod-per-volatile-solids") double codPerVolatileSolids,
    @Coefficient("carbon-per-volatile-solids") double carbonPerVolatileSolids,
    @Coefficient("nitrogen") double nitrogen,
    @Coefficient("phosphorus") double phosphorus,
    @Coefficient("potassium") double potassium,
    @Coefficient("starch") double starch) {

  /** An amount of it as bought. */
  Matter matter(double freshKg) {
    double dry = freshKg * (1 - moisture);
    double volatileSolids = dry * (1 - ash);
    return new Matter(
        freshKg * moisture,
        volatileSolids,
        dry * ash,
        volatileSolids * codPerVolatileSolids,
        volatileSolids * carbonPerVolatileSolids,
        0,
        dry * nitrogen,
        0,
        0,
        dry * phosphorus,
        dry * potassium);
  }

  /** Starch in an amount of it as bought, kg. */
  double starchKg(double freshKg) {
    return freshKg * (1 - moisture) * starch;
  }
}
