package org.marshlight.decision;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.loop.Plan;

/**
 * Asks which smallest single change turns a verdict to yes.
 *
 * @param plan the plan
 * @param component the part whose verdict is to be turned
 * @param bed name of the bed, where one of several beds is meant
 * @param levers what may be changed, one at a time; every one if not given
 */
@Meaning("Asks which smallest single change turns a verdict to yes.")
public record BreakEvenRequest(
    @NotNull @Valid @Meaning("The plan.") Plan plan,
    @NotNull @Meaning("The part whose verdict is to be turned.") Component component,
    @Meaning("Name of the bed, where one of several beds is meant.") @Size(max = 20) String bed,
    @Size(max = 6) @Meaning("What may be changed, one at a time; every one if not given.")
        List<@NotNull Lever> levers) {

  /** Quantities that can be changed. */
  public enum Lever {
    /** Number of people. */
    PEOPLE,
    /** Fresh mass of all feeds together, or of kitchen scraps where nothing is fed. */
    FEED,
    /** Area of the glass; its cost grows with it. */
    GLASS,
    /** Thermal resistance of walls and floor of the tank. */
    INSULATION,
    /** Price of the displaced fuel. */
    PRICE,
    /** Time that water stays in the tank, by its volume; the tank's cost is left as it is. */
    RETENTION
  }
}
