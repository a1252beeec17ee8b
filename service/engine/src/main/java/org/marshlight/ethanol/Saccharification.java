package org.marshlight.ethanol;

import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Coefficient;

/** How readily a plant's storage organs are mashed. */
@CatalogueRow("plants")
record Saccharification(
    @Coefficient("release-enzyme") double releaseEnzyme,
    @Coefficient("release-malt") double releaseMalt,
    @Coefficient("mash-water") double mashWaterKgKg) {

  /** Share of the starch that becomes sugar. */
  double release(MashRoute route) {
    return route == MashRoute.MALT ? releaseMalt : releaseEnzyme;
  }
}
