package org.marshlight.evidence;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * One number that is not physics.
 *
 * @param id stable id, {@code <package or catalogue>.<name>}
 */
@Meaning("One number that is not physics: central value, range, source and mark.")
public record CoefficientRow(
    @NotNull @Meaning("Stable id.") @Size(max = 200) String id,
    @NotNull @Meaning("Symbol used on the method page.") @Size(max = 60) String symbol,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Central value.")
        double value,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "About the tenth percentile.")
        double low,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "About the ninetieth percentile.")
        double high,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Least value that a plan may set.")
        double least,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Greatest value that a plan may set.")
        double most,
    @NotNull @Meaning("How it is drawn in an uncertainty study.") Distribution distribution,
    @NotNull @Meaning("UCUM code.") @Size(max = 40) String unit,
    @NotNull @Meaning("Id of the source.") @Size(max = 100) String source,
    @NotNull @Meaning("How well founded it is.") @Size(max = 40) String mark,
    @NotNull @Meaning("What it is and how it was chosen.") @Size(max = 2000) String note) {

  public CoefficientRow {
    if (!(least <= low && low <= value && value <= high && high <= most)) {
      throw new IllegalArgumentException("range out of order: " + id);
    }
  }
}
