package org.marshlight.study;

import jakarta.validation.constraints.NotNull;
import org.marshlight.contract.Meaning;
import org.marshlight.decision.BuildOrderStudy;
import org.marshlight.loop.Plan;

/**
 * In which order are the parts of a plan best built within its budget?
 *
 * @param plan the plan; its {@code money.budget} and {@code money.owned} count
 */
@Meaning("In which order are the parts of a plan best built within its budget?")
public record BuildOrderRequest(
    @NotNull @Meaning("The plan; its budget and the parts that it owns count.") Plan plan)
    implements StudyRequest<BuildOrderStudy> {

  @Override
  public PreparedStudy<BuildOrderStudy> prepare() {
    return new BuildOrder(plan);
  }
}
