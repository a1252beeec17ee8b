package org.marshlight.study;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.loop.Plan;

/**
 * Which uncertain numbers matter for the figures of a plan?
 *
 * @param outputs figures asked about
 * @param climate standard uncertainty of the climate
 * @param points points of each of the two samples
 */
@Meaning("Which uncertain numbers matter for the figures of a plan?")
public record SensitivityRequest(
    @NotNull @Meaning("The plan.") Plan plan,
    @Size(min = 1, max = 20)
        @Meaning(
            "Figures asked about: names of headlines or pointers into an estimate; the key"
                + " headlines if not given.")
        List<@NotNull @Size(max = 400) String> outputs,
    @Size(max = 40)
        @Meaning("Numbers of the plan that are uncertain, or other ranges for coefficients.")
        List<@NotNull @Valid Varied> vary,
    @Valid @Meaning("Standard uncertainty of the climate; certain if not given.")
        ClimateSpread climate,
    @Quantity(
            unit = "1",
            min = 16,
            max = 16384,
            meaning = "Points of each of the two samples; powers of two fill the space best.",
            usual = "study.default.points")
        Integer points,
    @Quantity(
            unit = "1",
            min = 2,
            max = 50,
            meaning = "Trajectories of the screening.",
            usual = "study.default.trajectories")
        Integer trajectories,
    @Quantity(
            unit = "1",
            min = 0,
            max = 2147483647,
            meaning = "Seed of points, trajectories and intervals.",
            usual = "study.default.seed")
        Integer seed)
    implements StudyRequest<SensitivityStudy> {

  @Override
  public PreparedStudy<SensitivityStudy> prepare() {
    return Sensitivity.of(Settings.of(this));
  }
}
