package org.marshlight.study;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.decision.BreakEvenStudy;
import org.marshlight.decision.Lever;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.loop.Plan;

/** Which smallest single change turns a verdict to yes? */
@Meaning("Which smallest single change turns a verdict to yes?")
public record BreakEvenRequest(
    @NotNull @Meaning("The plan.") Plan plan,
    @NotNull @Meaning("The part whose verdict is to be turned.") Component component,
    @Meaning("Name of the bed, where one of several beds is meant.") @Size(max = 20) String bed,
    @Size(min = 1, max = 6) @Meaning("What may be changed, one at a time; every one if not given.")
        List<@NotNull Lever> levers)
    implements StudyRequest<BreakEvenStudy> {

  @Override
  public PreparedStudy<BreakEvenStudy> prepare() {
    return BreakEven.of(this);
  }
}
