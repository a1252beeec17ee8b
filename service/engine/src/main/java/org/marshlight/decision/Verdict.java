package org.marshlight.decision;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * Whether one part of the plan is worth building.
 *
 * @param bed name of the bed, for one of several beds
 */
@Meaning("Whether one part of the plan is worth building.")
public record Verdict(
    @NotNull @Meaning("The part.") Component component,
    @Meaning("Name of the bed, for one of several beds; null otherwise.") @Size(max = 20)
        String bed,
    @NotNull @Meaning("Yes, marginal or no.") Worth answer,
    @NotNull @Meaning("What the answer rests on.") Basis basis,
    @NotNull @Meaning("The number that decides, and its thresholds.") Measure measure,
    @Meaning("Why, the strongest first.") @Size(max = 20) List<Reason> reasons,
    @Meaning("What must be answered before it may be built.") @Size(max = 20)
        List<Reason> conditions,
    @Meaning("Codes of the reasons and conditions that keep a yes back.") @Size(max = 20)
        List<String> heldBackBy,
    @NotNull @Meaning("The plan with the part less the same plan without it.")
        Difference difference) {

  /** Parts of a plan that are judged. */
  public enum Component {
    GAS_CAPTURE,
    GLASS,
    NIGHT_INSULATION,
    CO_FEEDING,
    /** All beds together. */
    BEDS,
    /** One of several beds. */
    BED,
    FUEL_ALCOHOL,
    COMPOST
  }

  /** Whether a part is worth building. */
  public enum Worth {
    YES,
    MARGINAL,
    NO
  }

  /** What a verdict rests on. */
  public enum Basis {
    ENERGY,
    /** The sign of the expected net present value over the swing of price and life. */
    MONEY,
    WATER,
    NUTRIENTS
  }

  /** The number that decides a verdict. Conditions and failures can still hold a yes back. */
  @Meaning("The number that decides; conditions and failures can still hold a yes back.")
  public record Measure(
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "The number.")
          double value,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Yes from here on.")
          double yesFrom,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Marginal from here on.")
          double marginalFrom,
      @NotNull @Meaning("UCUM code; money is in the plan's currency.") @Size(max = 40)
          String unit) {

    /** What the number alone says. */
    Worth worth() {
      return value >= yesFrom ? Worth.YES : value >= marginalFrom ? Worth.MARGINAL : Worth.NO;
    }

    /** How far the number lies above the threshold of yes. */
    double aboveYes() {
      return value - yesFrom;
    }
  }
}
