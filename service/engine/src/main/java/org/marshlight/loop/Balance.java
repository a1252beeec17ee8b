package org.marshlight.loop;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * What crossed the border of the loop in a year, from the books of every process.
 *
 * @param scope border of the balance: the whole loop, or a part for energy
 * @param in what came in, photosynthesis and reaction water included
 */
@Meaning("What crossed the border of the loop in a year, from the books of every process.")
public record Balance(
    @NotNull @Meaning("What is balanced.") @Size(max = 40) String quantity,
    @NotNull @Meaning("Border of the balance.") @Size(max = 40) String scope,
    @NotNull @Meaning("UCUM code.") @Size(max = 20) String unit,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "What came in.")
        double in,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "What went out.")
        double out,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "What is held more at the year's end.")
        double stored,
    @Quantity(
            unit = "1",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "|in - out - stored| / max(in, out, 1e-12).")
        double relativeResidual) {

  /** A balance whose residual follows from its parts. */
  public static Balance of(
      String quantity, String scope, String unit, double in, double out, double stored) {
    double residual = Math.abs(in - out - stored) / Math.max(Math.max(in, out), 1e-12);
    return new Balance(quantity, scope, unit, in, out, stored, residual);
  }
}
