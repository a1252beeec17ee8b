package org.marshlight.decision;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Map;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Params;
import org.marshlight.contract.Sentences;

/** One reason of a verdict, or one condition on it. */
@Meaning("One reason of a verdict, or one condition on it.")
public record Reason(
    @NotNull @Meaning("Stable name.") @Size(max = 100) String code,
    @NotNull @Meaning("The reason in words, built from its numbers.") @Size(max = 2000) String text,
    @Meaning("The numbers.") Map<String, Object> params) {

  /** A reason whose text stands under its code. */
  public static Reason of(String code, Object... params) {
    Map<String, Object> named = Params.of(params);
    return new Reason(code, Sentences.text(code, named), named);
  }
}
