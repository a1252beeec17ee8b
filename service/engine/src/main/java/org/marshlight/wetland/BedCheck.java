package org.marshlight.wetland;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Sentences;
import org.marshlight.evidence.CoefficientSet;

/** Rules that join several fields of a bed; each field alone has already been found legal. */
public final class BedCheck {

  private static final double LEAST_WIDTH_M = 0.2;

  private BedCheck() {}

  /**
   * Every fault of a row of beds.
   *
   * @param beds the beds with their defaults filled
   * @param pointer where they stand in the plan
   * @param set coefficients that hold the depths of media
   */
  public static List<Fault> faults(List<BedDesign> beds, String pointer, CoefficientSet set) {
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < beds.size(); i++) {
      BedDesign bed = beds.get(i);
      String at = pointer + "/" + i;
      if (bed.kind() == BedKind.HORIZONTAL_SUBSURFACE) {
        depth(bed, at, set, faults);
      }
      if (bed.lengthM() != null && bed.areaM2() / bed.lengthM() < LEAST_WIDTH_M) {
        faults.add(
            Fault.of(
                "wetland.too-narrow",
                at + "/lengthM",
                bed.lengthM(),
                "at most " + Sentences.number(bed.areaM2() / LEAST_WIDTH_M) + " m",
                "area",
                bed.areaM2(),
                "width",
                LEAST_WIDTH_M));
      }
    }
    return faults;
  }

  private static void depth(BedDesign bed, String at, CoefficientSet set, List<Fault> faults) {
    double most = set.bind(Medium.class, bed.medium()).greatestDepthM();
    if (bed.depthM() > most) {
      faults.add(
          Fault.of(
              "wetland.deeper-than-medium",
              at + "/depthM",
              bed.depthM(),
              "at most " + Sentences.number(most) + " m",
              "medium",
              bed.medium(),
              "most",
              most));
    }
  }
}
