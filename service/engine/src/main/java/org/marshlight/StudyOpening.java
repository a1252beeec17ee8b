package org.marshlight;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.safety.Caution;
import org.marshlight.study.StudyCost;

/** What is known of a study before it is run. */
@Meaning("What is known of a study before it is run.")
public record StudyOpening(
    @Meaning("What it takes.") StudyCost cost,
    @Meaning("What can hurt.") @Size(min = 1, max = 100) List<Caution> cautions) {

  public StudyOpening {
    cautions = Cautioned.required(cautions);
  }
}
