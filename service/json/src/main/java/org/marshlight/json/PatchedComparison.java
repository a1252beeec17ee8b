package org.marshlight.json;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.loop.Plan;

/**
 * A comparison as it is sent: each variant says what it changes.
 *
 * @param outputs figures to compare
 */
@Meaning("What would be otherwise if the plan were otherwise?")
public record PatchedComparison(
    @NotNull @Meaning("The plan.") Plan plan,
    @NotNull @Size(min = 1, max = 20) @Meaning("What would be otherwise.")
        List<@NotNull Variant> variants,
    @Size(min = 1, max = 60)
        @Meaning(
            "Figures to compare: names of headlines, pointers into an estimate, annual or monthly;"
                + " the headlines of a year if not given. Verdicts are compared in any case.")
        List<@NotNull @Size(max = 400) String> outputs) {

  /**
   * One variant.
   *
   * @param patch what it changes in the plan, as a merge patch
   */
  @Meaning("One variant of the plan.")
  public record Variant(
      @NotNull @Size(min = 1, max = 200) @Meaning("What to call it.") String name,
      @NotNull
          @Meaning(
              "What it changes in the plan, as a JSON merge patch (RFC 7396): null takes a field"
                  + " away, a list takes the place of the whole list.")
          JsonNode patch) {}
}
