package org.marshlight.decision;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;

/**
 * Whether one part of the plan is worth building.
 *
 * @param component the part
 * @param answer yes, marginal or no
 * @param reasons why, the strongest first
 * @param conditions what must be answered before it may be built
 */
@Meaning("Whether one part of the plan is worth building.")
public record Verdict(
    @NotNull @Meaning("The part.") Component component,
    @NotNull @Meaning("Yes, marginal or no.") Worth answer,
    @Meaning("Why, the strongest first.") @Size(max = 20) List<Reason> reasons,
    @Meaning("What must be answered before it may be built.") @Size(max = 20)
        List<Reason> conditions) {

  /** Parts of a plan that are judged. */
  public enum Component {
    GAS_CAPTURE,
    GLASS,
    NIGHT_INSULATION,
    BEDS,
    FUEL_ALCOHOL,
    COMPOST
  }

  /** Whether a part is worth building. */
  public enum Worth {
    YES,
    MARGINAL,
    NO
  }
}
