package org.marshlight.study;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.loop.Plan;

/**
 * How big must a part be at the least to meet stated targets?
 *
 * @param targets what must be met
 */
@Meaning("How big must a part be at the least to meet stated targets?")
public record SizingRequest(
    @NotNull @Meaning("The plan.") Plan plan,
    @NotNull @Size(min = 1, max = 2) @Meaning("What may be changed.")
        List<@NotNull @Valid Freed> free,
    @NotNull @Size(min = 1, max = 10) @Meaning("What must be met, all at once.")
        List<@NotNull @Valid Target> targets)
    implements StudyRequest<SizingStudy> {

  @Override
  public PreparedStudy<SizingStudy> prepare() {
    return Sizing.of(this);
  }
}
