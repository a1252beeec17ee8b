package org.marshlight.ethanol;

import java.util.Optional;
import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Coefficient;
import org.marshlight.evidence.CoefficientSet;

/**
 * Density of a fuel, for those items of the catalogue of fuels that are sold by the litre.
 *
 * @param densityKgL density at 15 Cel
 */
@CatalogueRow("fuels")
public record LiquidFuel(@Coefficient("density") double densityKgL) {

  /** The density of a fuel, or empty where it is not liquid. */
  public static Optional<LiquidFuel> of(String fuel, CoefficientSet set) {
    return set.book().find("fuels." + fuel + ".density").isPresent()
        ? Optional.of(set.bind(LiquidFuel.class, fuel))
        : Optional.empty();
  }
}
