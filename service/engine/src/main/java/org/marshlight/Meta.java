package org.marshlight;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * Which version answered, and to what.
 *
 * @param planSha256 SHA-256 of the plan as sent, in the canonical form of RFC 8785; null where
 *     there was no document
 * @param passes passes of the chain until every returned stream stood still; null where no chain
 *     was run
 */
@Meaning("Which version answered, and to what.")
public record Meta(
    @NotNull @Meaning("Version of the engine.") @Size(max = 40) String version,
    @Meaning("SHA-256 of the plan in the canonical form of RFC 8785.") @Size(max = 64)
        String planSha256,
    @Quantity(
            unit = "1",
            min = 1,
            max = 200,
            meaning = "Passes of the chain until every returned stream stood still.")
        Integer passes) {

  /** Version of this engine. */
  public static final String VERSION = "1.0.0";

  /** Meta of an answer that rests on no plan. */
  public static final Meta WITHOUT_PLAN = new Meta(VERSION, null, null);
}
