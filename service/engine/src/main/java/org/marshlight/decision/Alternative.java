package org.marshlight.decision;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Map;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Params;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.Sentences;

/**
 * What the same glass, the same money or the same wastes would give otherwise in a year.
 *
 * @param energyKWh energy that it gives: heat, electricity, or useful energy of gas
 * @param sameMoneyKWh energy that it gives for what the cover costs
 */
@Meaning("What the same glass, money or wastes would give otherwise in a year.")
public record Alternative(
    @NotNull @Meaning("Stable name.") @Size(max = 60) String code,
    @NotNull @Meaning("The comparison in words.") @Size(max = 1000) String text,
    @Quantity(
            unit = "kW.h",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning =
                "Energy that it gives in a year: heat, electricity, or useful energy of gas; null"
                    + " where it gives none or cannot be done.")
        Double energyKWh,
    @Quantity(
            unit = "kW.h",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Useful energy that the plan gives with what it would take the place of.")
        double insteadOfKWh,
    @Quantity(
            unit = "kW.h",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning =
                "Energy that it gives for what the cover costs; null where either cost is not"
                    + " given.")
        Double sameMoneyKWh,
    @Meaning("The numbers and names in the text.") Map<String, Object> params) {

  static Alternative of(
      String code, Double energyKWh, double insteadOfKWh, Double sameMoneyKWh, Object... params) {
    Map<String, Object> named = Params.of(params);
    return new Alternative(
        code, Sentences.text(code, named), energyKWh, insteadOfKWh, sameMoneyKWh, named);
  }
}
