package org.marshlight.wetland;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;
import org.marshlight.evidence.Step;
import org.marshlight.feed.WaterStream;

/** The steps behind the first bed in the month of its coldest water, to be redone by hand. */
final class WetlandWorking {

  private WetlandWorking() {}

  static List<Step> steps(
      BedYear<?> year, SiteClimate climate, Stand<?> stand, SizingCoefficients sizing) {
    int month = year.warmth().coldestMonth();
    double flow = year.water().inflow()[month] / Months.days(month);
    List<Step> steps = new ArrayList<>();
    water(year, climate, stand, month, flow, steps);
    if (flow > 0) {
      removal(year, month, steps);
      passage(year, month, flow, sizing, climate, steps);
    }
    return List.copyOf(steps);
  }

  private static void water(
      BedYear<?> year,
      SiteClimate climate,
      Stand<?> stand,
      int month,
      double flow,
      List<Step> steps) {
    BedSite bed = year.bed();
    Step full =
        Step.of(
            "wetland.full-crop-coefficient",
            stand.smallStandCropCoefficient(),
            bed.c().fieldCropCoefficient(),
            bed.areaM2(),
            bed.c().smallStandArea(),
            bed.c().fieldArea());
    Step crop =
        Step.of(
            "wetland.crop-coefficient",
            bed.rates().dormantCropCoefficient(),
            full.value(),
            stand.canopy()[month]);
    Step outflow =
        Step.of(
            "wetland.outflow",
            flow,
            climate.rainMm()[month] / Months.days(month),
            crop.value(),
            climate.referenceEtMmDay()[month],
            bed.areaM2());
    steps.add(full);
    steps.add(crop);
    steps.add(outflow);
    if (outflow.value() > 0) {
      steps.add(Step.of("wetland.concentration-factor", flow, outflow.value()));
    }
  }

  private static void removal(BedYear<?> year, int month, List<Step> steps) {
    BedSite bed = year.bed();
    BedKindRates rates = bed.rates();
    WaterStream inflow = year.inflow();
    Step loading =
        Step.of("wetland.hydraulic-loading", year.water().meanM3Day(month), bed.areaM2());
    double bod5 = Strength.mgL(inflow.bod5Kg()[month], inflow, month);
    Step strength =
        Step.of(
            "wetland.rate-at-strength",
            rates.bod5Rate(),
            bod5,
            bed.c().referenceBod5(),
            rates.bod5StrengthExponent());
    Step rate =
        Step.of(
            "wetland.rate-at-temperature",
            strength.value(),
            rates.bod5Theta(),
            year.warmth().waterC()[month]);
    Step background = Step.of("wetland.background", bod5, 0, rates.bod5BackgroundShare(), bod5);
    steps.add(loading);
    steps.add(strength);
    steps.add(rate);
    steps.add(background);
    steps.add(
        Step.of(
            "wetland.pkc-outflow",
            bod5,
            background.value(),
            rate.value(),
            rates.bod5Tanks(),
            loading.value()));
    steps.add(
        Step.of(
            "wetland.phosphorus-rate-at-age",
            rates.phosphorusRateYoung(),
            rates.phosphorusRateOld(),
            bed.c().phosphorusAgeing(),
            BedChain.HEADLINE_YEAR));
    steps.add(
        Step.of(
            "wetland.nitrification-limit", rates.oxygenSupply(), bed.areaM2(), Months.days(month)));
  }

  private static void passage(
      BedYear<?> year,
      int month,
      double flow,
      SizingCoefficients sizing,
      SiteClimate climate,
      List<Step> steps) {
    BedSite bed = year.bed();
    steps.add(
        Step.of(
            "wetland.retention-time", bed.areaM2(), bed.design().depthM(), bed.porosity(), flow));
    if (bed.belowSurface()) {
      steps.add(
          Step.of(
              "wetland.darcy-capacity",
              bed.c().workingConductivity() * bed.medium().conductivityMDay(),
              bed.c().bedSlope(),
              bed.widthM(),
              bed.design().depthM()));
    }
    double load = 1000 * year.inflow().bod5Kg()[month] / Months.days(month);
    steps.add(Step.of("wetland.area-of-load", load, sizing.epaLoadFor30()));
    steps.add(Step.of("wetland.area-of-flow", flow, sizing.tvaArea()));
    if (climate.soil().acceptanceLM2Day() > 0) {
      Step soil = Step.of("wetland.soil-absorption-area", flow, climate.soil().acceptanceLM2Day());
      steps.add(soil);
      steps.add(
          Step.of("wetland.soil-absorption-with-reserve", soil.value(), sizing.reserveShare()));
    }
  }
}
