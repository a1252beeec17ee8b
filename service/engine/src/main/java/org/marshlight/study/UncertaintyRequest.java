package org.marshlight.study;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.loop.Plan;

/**
 * How sure are the figures of a plan? Every coefficient that the plan uses and did not set is
 * drawn, and what is stated beside.
 *
 * @param seed seed of the draws
 * @param outputs figures to follow
 * @param climate standard uncertainty of the climate
 * @param correlations uncertain numbers that go together
 */
@Meaning("How sure are the figures of a plan?")
public record UncertaintyRequest(
    @NotNull @Meaning("The plan.") Plan plan,
    @Quantity(
            unit = "1",
            min = 16,
            max = 16384,
            meaning = "How many draws.",
            usual = "study.default.draws")
        Integer draws,
    @Quantity(
            unit = "1",
            min = 0,
            max = 2147483647,
            meaning = "Seed of the draws; the same seed gives the same answer.",
            usual = "study.default.seed")
        Integer seed,
    @Size(min = 1, max = 60)
        @Meaning(
            "Figures to follow: names of headlines, pointers into an estimate, annual,"
                + " decision, monthly or verdicts; annual if not given.")
        List<@NotNull @Size(max = 400) String> outputs,
    @Size(max = 40)
        @Meaning("Numbers of the plan that are uncertain, or other ranges for coefficients.")
        List<@NotNull @Valid Varied> vary,
    @Valid @Meaning("Standard uncertainty of the climate; certain if not given.")
        ClimateSpread climate,
    @Size(max = 60) @Meaning("Uncertain numbers that go together; none if not given.")
        List<@NotNull @Valid Correlated> correlations)
    implements StudyRequest<UncertaintyStudy> {

  @Override
  public PreparedStudy<UncertaintyStudy> prepare() {
    return Uncertainty.of(Settings.of(this));
  }
}
