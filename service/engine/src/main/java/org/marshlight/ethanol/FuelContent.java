package org.marshlight.ethanol;

import java.util.Optional;
import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Coefficient;
import org.marshlight.evidence.CoefficientSet;

/**
 * Heat in a kilogram of a fuel, for those items of the catalogue of fuels that are burnt by mass.
 *
 * @param netHeatingValueMJKg net heating value as burnt
 */
@CatalogueRow("fuels")
public record FuelContent(@Coefficient("net-heating-value") double netHeatingValueMJKg) {

  /** The content of a fuel, or empty where it has no mass, as electricity. */
  public static Optional<FuelContent> of(String fuel, CoefficientSet set) {
    return set.book().find("fuels." + fuel + ".net-heating-value").isPresent()
        ? Optional.of(set.bind(FuelContent.class, fuel))
        : Optional.empty();
  }
}
