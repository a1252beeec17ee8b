package org.marshlight.safety;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Map;
import org.marshlight.contract.Meaning;

/** A warning that goes with an answer. Each says that local codes and licensed practice decide. */
@Meaning("A warning that goes with an answer; local codes and licensed practice decide.")
public record Caution(
    @NotNull @Meaning("Stable id.") @Size(max = 60) String id,
    @NotNull @Meaning("The same as the id; every coded message has one.") @Size(max = 60)
        String code,
    @NotNull @Meaning("How bad it can get.") Severity severity,
    @NotNull @Meaning("What can hurt.") @Size(max = 100) String hazard,
    @NotNull @Meaning("The warning in words.") @Size(max = 2000) String text,
    @NotNull @Meaning("What raises it.") @Size(max = 400) String raisedBy,
    @NotNull @Meaning("Id of the source of its figures.") @Size(max = 100) String source,
    @Meaning("The numbers and names in the text.") Map<String, Object> params) {

  /** The same caution with a sentence of a plan's own numbers. */
  Caution with(String sentence, Map<String, Object> numbers) {
    return new Caution(
        id, code, severity, hazard, text + " " + sentence, raisedBy, source, numbers);
  }

  /** How bad a hazard can get. */
  public enum Severity {
    /** People can die. */
    DANGER,
    /** People can be hurt or fall ill. */
    WARNING,
    /** Money, law or the environment. */
    CAUTION
  }
}
