package org.marshlight.compost;

import org.marshlight.contract.WireName;
import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Coefficient;
import org.marshlight.evidence.CoefficientSet;

/** What a way of running the heap brings with it. */
@CatalogueRow("compost-methods")
record Method(
    @Coefficient("decay-extent") double decayExtent,
    @Coefficient("nitrogen-loss-factor") double nitrogenLossFactor,
    @Coefficient("batch-share") double batchShare,
    @Coefficient("greatest-height") double greatestHeightM,
    @Coefficient("turnings") double turnings) {

  static Method of(CompostMethod method, CoefficientSet set) {
    return set.bind(Method.class, WireName.of(method));
  }
}
