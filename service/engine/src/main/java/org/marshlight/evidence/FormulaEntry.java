package org.marshlight.evidence;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/** One formula as the book shows it. */
@Meaning("One formula: its expression, source and parameters.")
public record FormulaEntry(
    @NotNull @Meaning("Stable id.") @Size(max = 100) String id,
    @NotNull @Meaning("Symbol of the result.") @Size(max = 60) String symbol,
    @NotNull @Meaning("Right-hand side as text.") @Size(max = 1000) String expression,
    @NotNull @Meaning("UCUM code of the result.") @Size(max = 40) String unit,
    @NotNull @Meaning("What the result is.") @Size(max = 1000) String meaning,
    @NotNull @Meaning("Id of the source.") @Size(max = 100) String source,
    @NotNull @Meaning("Number of the equation or place in the source.") @Size(max = 200)
        String equation,
    @Meaning("What goes in.") @Size(max = 20) List<Parameter> parameters) {

  /** One input of a formula. */
  @Meaning("One input of a formula.")
  public record Parameter(
      @NotNull @Meaning("Name under which it is sent.") @Size(max = 60) String name,
      @NotNull @Meaning("Symbol in the expression.") @Size(max = 60) String symbol,
      @NotNull @Meaning("UCUM code.") @Size(max = 40) String unit,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Least value for which the formula is defined.")
          double low,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Greatest value for which the formula is defined.")
          double high) {}
}
