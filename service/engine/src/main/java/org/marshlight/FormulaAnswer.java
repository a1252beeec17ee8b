package org.marshlight;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.evidence.FormulaBook;
import org.marshlight.evidence.FormulaEntry;
import org.marshlight.safety.Caution;
import org.marshlight.safety.CautionBook;

/** What a formula gives for stated inputs, with the cautions that go with every answer. */
@Meaning("What a formula gives for stated inputs.")
public record FormulaAnswer(
    @NotNull @Meaning("Id of the formula.") @Size(max = 100) String formula,
    @Meaning("What went in, by name of the parameter.") @Size(max = 20) Map<String, Double> inputs,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "What came out.")
        double value,
    @NotNull @Meaning("UCUM code of the value.") @Size(max = 40) String unit,
    @NotNull @Meaning("Id of the formula's source.") @Size(max = 100) String source,
    @Meaning("What can hurt.") @Size(min = 1, max = 100) List<Caution> cautions,
    @NotNull @Meaning("Which version answered.") Meta meta) {

  public FormulaAnswer {
    cautions = Cautioned.required(cautions);
  }

  /**
   * Works a formula.
   *
   * @param formula a formula of the book
   * @param inputs a value for each of its parameters, by name
   * @throws org.marshlight.contract.Faults if the formula does not hold for these inputs
   */
  public static FormulaAnswer of(FormulaEntry formula, Map<String, Double> inputs) {
    return new FormulaAnswer(
        formula.id(),
        inputs,
        FormulaBook.standard().evaluate(formula.id(), inputs),
        formula.unit(),
        formula.source(),
        CautionBook.standard().general(),
        Meta.WITHOUT_PLAN);
  }
}
