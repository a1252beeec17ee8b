package org.marshlight.contract;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Map;

/**
 * A remark on a figure or an input: legal but unusual, or resting on an extrapolation.
 *
 * @param code stable name, {@code <package>.<name>}
 * @param text the remark in words
 * @param params the numbers and names in the text
 */
@Meaning("A remark on a figure or an input: legal but unusual, or resting on an extrapolation.")
public record Notice(
    @NotNull @Meaning("Stable name of the remark.") @Size(max = 100) String code,
    @NotNull @Meaning("The remark in words.") @Size(max = 2000) String text,
    @Meaning("The numbers and names in the text.") Map<String, Object> params) {

  /** A notice whose text stands under its code in the sentences of its package. */
  public static Notice of(String code, Object... params) {
    Map<String, Object> named = Params.of(params);
    return new Notice(code, Sentences.text(code, named), named);
  }
}
