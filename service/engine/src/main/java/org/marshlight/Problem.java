package org.marshlight;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.safety.Caution;

/**
 * Why a request was not served (RFC 9457), with every fault found and with cautions.
 *
 * @param title the kind of problem in words, the same for every problem of a type
 */
@Meaning("Why a request was not served (RFC 9457), with every fault found.")
public record Problem(
    @NotNull @Meaning("URI reference of the kind of problem.") @Size(max = 200) String type,
    @NotNull @Meaning("The kind of problem in words.") @Size(max = 200) String title,
    @Quantity(unit = "1", min = 400, max = 599, meaning = "HTTP status.") int status,
    @NotNull @Meaning("What went wrong this time.") @Size(max = 2000) String detail,
    @NotNull @Meaning("Stable name of the kind of problem.") @Size(max = 100) String code,
    @Meaning("Every fault found.") @Size(max = 500) List<Fault> errors,
    @Meaning("What can hurt.") @Size(min = 1, max = 100) List<Caution> cautions) {

  public Problem {
    errors = List.copyOf(errors);
    cautions = Cautioned.required(cautions);
  }
}
