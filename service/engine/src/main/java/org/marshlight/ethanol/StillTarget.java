package org.marshlight.ethanol;

import java.util.List;
import java.util.Locale;
import org.marshlight.contract.Fault;

/**
 * Whether a still reaches the strength that a plan asks of it. Plates and reflux without such a
 * strength are always legal; a strength that they cannot reach is a fault, which names the least
 * reflux and plates that can.
 */
public final class StillTarget {

  private static final String POINTER = "/fuel/still/targetStrengthPercentVol";

  private StillTarget() {}

  /**
   * The fault of a strength out of reach, or none.
   *
   * @param still the still, with all its defaults filled
   * @param estimate what it makes
   */
  public static List<Fault> faults(StillDesign still, EthanolEstimate estimate) {
    Double asked = still.targetStrengthPercentVol();
    Double made = estimate.still().productStrengthPercentVol();
    EthanolEstimate.Target target = estimate.target();
    if (asked == null || made == null || target == null || made >= asked) {
      return List.of();
    }
    String allowed =
        String.format(
            Locale.ROOT,
            "at most %.1f %% vol; or a column with a reflux ratio above %.2f and more than %.1f"
                + " theoretical plates",
            made,
            target.leastRefluxRatio(),
            target.leastPlates());
    return List.of(
        Fault.of(
            "ethanol.target-out-of-reach",
            POINTER,
            asked,
            allowed,
            "asked",
            asked,
            "made",
            made,
            "leastRefluxRatio",
            target.leastRefluxRatio(),
            "leastPlates",
            target.leastPlates()));
  }
}
