package org.marshlight;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Notice;
import org.marshlight.safety.Caution;

/**
 * A study with all that must go with it. There is no way to build one without cautions.
 *
 * @param cautions what can hurt, with any of the plans whose figures it tells
 */
@Meaning("A study with the cautions, assumptions and notices that go with it.")
public record StudyAnswer<T extends Record>(
    @Meaning("What the study gives.") T study,
    @Meaning("What can hurt.") @Size(min = 1, max = 100) List<Caution> cautions,
    @Meaning("What was taken as given.") @Size(max = 2000) List<Assumption> assumptions,
    @Meaning("Remarks on inputs and figures.") @Size(max = 500) List<Notice> notices,
    @Meaning("Which version answered, and to what.") Meta meta) {

  public StudyAnswer {
    cautions = Cautioned.required(cautions);
    assumptions = List.copyOf(assumptions);
    notices = List.copyOf(notices);
  }
}
