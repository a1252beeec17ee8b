package org.marshlight.compost;

import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Coefficient;
import org.marshlight.feed.Matter;

/** Composition and nature of an ingredient of the heap; shares are of dry mass unless said. */
@CatalogueRow("ingredients")
record Ingredient(
    @Coefficient("moisture") double moisture,
    @Coefficient("ash") double ash,
    @Coefficient("cod-per-volatile-solids") double codPerVolatileSolids,
    @Coefficient("carbon-per-volatile-solids") double carbonPerVolatileSolids,
    @Coefficient("nitrogen") double nitrogen,
    @Coefficient("ammonium-share") double ammoniumShare,
    @Coefficient("phosphorus") double phosphorus,
    @Coefficient("potassium") double potassium,
    @Coefficient("bulk-density") double bulkDensityKgM3,
    @Coefficient("degradable-share") double degradableShare,
    @Coefficient("water-holding") double waterHoldingKgKg) {

  /** An amount of it as it comes. */
  Matter matter(double freshKg) {
    double dry = freshKg * (1 - moisture);
    double organic = dry * (1 - ash);
    double nitrogenKg = dry * nitrogen;
    return new Matter(
        freshKg * moisture,
        organic,
        dry * ash,
        organic * codPerVolatileSolids,
        organic * carbonPerVolatileSolids,
        0,
        nitrogenKg * (1 - ammoniumShare),
        nitrogenKg * ammoniumShare,
        0,
        dry * phosphorus,
        dry * potassium);
  }

  /**
   * Dry mass in a cubic metre of it when it holds no more water than it can, kg/m3: water that it
   * cannot hold runs between the other materials and takes up no room of its own.
   */
  double dryBulkDensityKgM3() {
    double held = waterHoldingKgKg / (1 + waterHoldingKgKg);
    return bulkDensityKgM3 * (1 - Math.min(moisture, held));
  }

  /** Carbon in its dry mass. */
  double carbon() {
    return (1 - ash) * carbonPerVolatileSolids;
  }
}
