package org.marshlight.contract;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Map;

/**
 * A remark on a figure or an input: legal but unusual, or resting on an extrapolation.
 *
 * @param code stable name, {@code <package>.<name>}
 */
@Meaning("A remark on a figure or an input: legal but unusual, or resting on an extrapolation.")
public record Notice(
    @NotNull @Meaning("Stable name of the remark.") @Size(max = 100) String code,
    @NotNull @Meaning("Whether the figures may be relied on all the same.") Severity severity,
    @NotNull @Meaning("The remark in words.") @Size(max = 2000) String text,
    @Meaning("The numbers and names in the text.") Map<String, Object> params) {

  /** What a notice means for the figures that it is about. */
  public enum Severity {
    /** Good to know. */
    REMARK,
    /** The figures that it names cannot be relied on, and no verdict may rest a yes on them. */
    SEVERE
  }

  /** A notice whose text stands under its code in the sentences of its package. */
  public static Notice of(String code, Object... params) {
    return of(Severity.REMARK, code, params);
  }

  /** A notice that figures cannot be relied on; its text is the one of its code. */
  public static Notice severe(String code, Object... params) {
    return of(Severity.SEVERE, code, params);
  }

  private static Notice of(Severity severity, String code, Object... params) {
    Map<String, Object> named = Params.of(params);
    return new Notice(code, severity, Sentences.text(code, named), named);
  }
}
