package org.marshlight.study;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.loop.Plan;

/**
 * How do figures change with one or two numbers of a plan?
 *
 * @param vary what is swept
 * @param outputs figures to follow
 */
@Meaning("How do figures change with one or two numbers of a plan?")
public record SweepRequest(
    @NotNull @Meaning("The plan.") Plan plan,
    @NotNull @Size(min = 1, max = 2) @Meaning("What is swept; of two, every pair of values is run.")
        List<@NotNull @Valid SweptField> vary,
    @Size(min = 1, max = 60)
        @Meaning(
            "Figures to follow: names of headlines, pointers into an estimate, annual,"
                + " decision, monthly or verdicts; annual if not given.")
        List<@NotNull @Size(max = 400) String> outputs)
    implements StudyRequest<SweepStudy> {

  @Override
  public PreparedStudy<SweepStudy> prepare() {
    return Sweep.of(this);
  }
}
