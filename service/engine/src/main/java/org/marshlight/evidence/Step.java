package org.marshlight.evidence;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * One step of a stage's working: a formula, what went in and what came out. Sending the inputs to
 * the formula gives the same number.
 */
@Meaning("One step of a stage's working: a formula, what went in and what came out.")
public record Step(
    @NotNull @Meaning("Id of the formula.") @Size(max = 100) String formula,
    @Meaning("What went in, by name of the parameter.") Map<String, Double> inputs,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "What came out.")
        double value,
    @NotNull @Meaning("UCUM code of the value.") @Size(max = 40) String unit,
    @NotNull @Meaning("Id of the formula's source.") @Size(max = 100) String source) {

  /**
   * Works a formula of the book.
   *
   * @param formula id of the formula
   * @param inputs its arguments in the order of its parameters
   */
  public static Step of(String formula, double... inputs) {
    FormulaBook book = FormulaBook.standard();
    FormulaEntry entry =
        book.find(formula).orElseThrow(() -> new IllegalArgumentException("no formula " + formula));
    if (inputs.length != entry.parameters().size()) {
      throw new IllegalArgumentException(
          formula + " takes " + entry.parameters().size() + " inputs, not " + inputs.length);
    }
    Map<String, Double> named = new LinkedHashMap<>();
    for (int i = 0; i < inputs.length; i++) {
      named.put(entry.parameters().get(i).name(), inputs[i]);
    }
    return new Step(
        formula,
        Collections.unmodifiableMap(named),
        book.evaluate(formula, named),
        entry.unit(),
        entry.source());
  }
}
