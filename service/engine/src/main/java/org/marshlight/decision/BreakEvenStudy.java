package org.marshlight.decision;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/** Which smallest single change turns a verdict to yes. */
@Meaning("Which smallest single change turns a verdict to yes.")
public record BreakEvenStudy(
    @Meaning("The verdict as it stands; null where the plan does not have the part.") Verdict now,
    @Meaning("What each lever can do.") @Size(max = 6) List<Change> changes) {

  /** What became of a search. */
  public enum Outcome {
    /** The verdict is yes already. */
    ALREADY,
    /** This change turns it. */
    FOUND,
    /** The number that decides can be reached, but a condition or a failure holds the yes back. */
    HELD_BACK,
    /** No amount within the bounds turns it. */
    NONE,
    /** The plan has nothing that this lever could move, or does not give what moving it costs. */
    NO_LEVER
  }

  /**
   * What one lever can do.
   *
   * @param now the quantity as it stands
   * @param needed the quantity nearest to it with which the verdict is yes, or would be
   * @param low least quantity that was tried
   * @param high greatest quantity that was tried
   * @param bestAboveYes how near the number that decides came to yes; nought or more reaches it
   * @param reason in words
   */
  @Meaning("What one lever can do.")
  public record Change(
      @NotNull @Meaning("What is changed.") Lever lever,
      @NotNull @Meaning("What became of the search.") Outcome outcome,
      @NotNull @Meaning("UCUM code.") @Size(max = 20) String unit,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "The quantity as it stands; null where there is no lever.")
          Double now,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "The quantity nearest to it with which the verdict is yes, or would be if nothing"
                      + " held it back; null if none.")
          Double needed,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Least quantity that was tried; null where there is no lever.")
          Double low,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Greatest quantity that was tried; null where there is no lever.")
          Double high,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning =
                  "How near the number that decides came to yes, in its own unit; nought or more"
                      + " reaches it; null where none was worked.")
          Double bestAboveYes,
      @NotNull @Meaning("The outcome in words.") Reason reason,
      @Quantity(unit = "1", min = 0, max = 1000, meaning = "Verdicts that were worked.")
          int runs) {}
}
