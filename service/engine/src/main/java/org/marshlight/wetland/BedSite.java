package org.marshlight.wetland;

import org.marshlight.contract.WireName;
import org.marshlight.evidence.CoefficientSet;

/**
 * One bed as built, with the numbers that hold for it.
 *
 * @param index place in the order of the flow, from nought
 * @param design the bed, with its defaults filled
 * @param rates rates of its kind
 * @param medium what fills it; null for open water
 * @param c coefficients of all beds
 */
record BedSite(
    int index, BedDesign design, BedKindRates rates, Medium medium, WetlandCoefficients c) {

  static BedSite of(int index, BedDesign design, CoefficientSet set) {
    boolean below = design.kind() == BedKind.HORIZONTAL_SUBSURFACE;
    return new BedSite(
        index,
        design,
        set.bind(BedKindRates.class, WireName.of(design.kind())),
        below ? set.bind(Medium.class, design.medium()) : null,
        set.bind(WetlandCoefficients.class));
  }

  boolean belowSurface() {
    return medium != null;
  }

  double areaM2() {
    return design.areaM2();
  }

  double porosity() {
    return medium == null ? c.openPorosity() : medium.porosity();
  }

  /** Water that the bed holds, m3. */
  double waterM3() {
    return areaM2() * design.depthM() * porosity();
  }

  double widthM() {
    return areaM2() / BedHydraulics.lengthM(design);
  }

  /** Flow that the bed passes without flooding once its pores have filled in part, m3/d. */
  double capacityM3Day() {
    return BedHydraulics.capacityM3Day(
        c.workingConductivity() * medium.conductivityMDay(),
        c.bedSlope(),
        widthM(),
        design.depthM());
  }
}
