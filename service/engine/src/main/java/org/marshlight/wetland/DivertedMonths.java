package org.marshlight.wetland;

import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;

/** In which months a valve sends the flow past the beds. */
final class DivertedMonths {

  private DivertedMonths() {}

  /** Months that are diverted whatever the beds do: named ones, and those with frost. */
  static boolean[] given(DiversionDesign diversion, BedSite bed, SiteClimate climate) {
    boolean[] diverted = new boolean[Months.COUNT];
    if (diversion == null) {
      return diverted;
    }
    for (int month = 0; month < Months.COUNT; month++) {
      boolean named = diversion.months() != null && diversion.months().contains(month + 1);
      boolean frost =
          Boolean.TRUE.equals(diversion.inFrost())
              && climate.airC()[month] < bed.c().frostAirTemperature();
      diverted[month] = named || frost;
    }
    return diverted;
  }

  /** Adds months that show themselves only when the beds are run; says whether there are any. */
  static boolean more(
      DiversionDesign diversion,
      BedChain<?> chain,
      UseFitness fitness,
      SizingCoefficients sizing,
      boolean[] diverted) {
    if (diversion == null) {
      return false;
    }
    Outflow outflow = Outflow.of(chain);
    boolean more = false;
    for (int month = 0; month < Months.COUNT; month++) {
      boolean clogged =
          Boolean.TRUE.equals(diversion.whenClogged()) && clogged(chain, month, sizing);
      boolean over =
          Boolean.TRUE.equals(diversion.whenOverLimit())
              && fitness.worst(outflow, month) == WetlandEstimate.UseAnswer.UNFIT;
      if ((clogged || over) && !diverted[month]) {
        diverted[month] = true;
        more = true;
      }
    }
    return more;
  }

  private static boolean clogged(BedChain<?> chain, int month, SizingCoefficients sizing) {
    for (BedYear<?> year : chain.years()) {
      if (bod5GM2Day(year, month) > sizing.loadRefuse()) {
        return true;
      }
      double flow = year.water().inflow()[month] / Months.days(month);
      if (year.bed().belowSurface() && flow > year.bed().capacityM3Day()) {
        return true;
      }
    }
    return false;
  }

  /** Biochemical oxygen demand that a bed gets in a month, g/(m2.d). */
  static double bod5GM2Day(BedYear<?> year, int month) {
    if (year.bed().design().passedBy(month)) {
      return 0;
    }
    return 1000 * year.inflow().bod5Kg()[month] / (year.bed().areaM2() * Months.days(month));
  }
}
