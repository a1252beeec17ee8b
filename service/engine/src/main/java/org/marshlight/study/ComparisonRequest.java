package org.marshlight.study;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.loop.Plan;

/**
 * What would be otherwise if the plan were otherwise?
 *
 * @param outputs figures to compare
 */
@Meaning("What would be otherwise if the plan were otherwise?")
public record ComparisonRequest(
    @NotNull @Meaning("The plan.") Plan plan,
    @NotNull @Size(min = 1, max = 20) @Meaning("Other plans.")
        List<@NotNull @Valid VariantPlan> variants,
    @Size(min = 1, max = 60)
        @Meaning(
            "Figures to compare: names of headlines, pointers into an estimate, annual,"
                + " decision or monthly; annual and decision if not given. Verdicts are compared in"
                + " any case.")
        List<@NotNull @Size(max = 400) String> outputs)
    implements StudyRequest<ComparisonStudy> {

  @Override
  public PreparedStudy<ComparisonStudy> prepare() {
    return Comparison.of(this);
  }
}
