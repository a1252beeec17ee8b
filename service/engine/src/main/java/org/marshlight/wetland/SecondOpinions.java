package org.marshlight.wetland;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.marshlight.contract.Months;
import org.marshlight.feed.Matter;
import org.marshlight.feed.WaterStream;

/** What other published models say of a bed's outflow, for the water that enters it. */
final class SecondOpinions {

  private static final String REED = "Reed, first order with detention";
  private static final String PKC = "P-k-C* for the sum, not the chain";
  private static final double CM_PER_M = 100;

  private SecondOpinions() {}

  static List<WetlandEstimate.SecondOpinion> of(BedYear<?> year) {
    int cold = year.warmth().coldestMonth();
    int warm = year.warmth().warmestMonth();
    if (year.water().inflow()[cold] <= 0 || year.water().inflow()[warm] <= 0) {
      return List.of();
    }
    List<WetlandEstimate.SecondOpinion> opinions = new ArrayList<>();
    add(opinions, REED, "bod5", cold, warm, "reed-1995", m -> reedBod5(year, m));
    add(opinions, REED, "suspended solids", cold, warm, "reed-1995", m -> reedSolids(year, m));
    add(opinions, REED, "ammonium nitrogen", cold, warm, "reed-1995", m -> reedAmmonium(year, m));
    add(opinions, REED, "phosphorus", cold, warm, "reed-1995", m -> reedPhosphorus(year, m));
    add(
        opinions,
        PKC,
        "total nitrogen",
        cold,
        warm,
        "kadlec-wallace-2009",
        m -> totalNitrogen(year, m));
    add(
        opinions,
        PKC,
        "ammonium nitrogen",
        cold,
        warm,
        "kadlec-wallace-2009",
        m -> ammonium(year, m));
    return List.copyOf(opinions);
  }

  private static void add(
      List<WetlandEstimate.SecondOpinion> opinions,
      String method,
      String quantity,
      int cold,
      int warm,
      String source,
      IntToDoubleFunction value) {
    opinions.add(
        new WetlandEstimate.SecondOpinion(
            method,
            quantity,
            "mg/L",
            value.applyAsDouble(cold),
            value.applyAsDouble(warm),
            source));
  }

  private static double flowM3Day(BedYear<?> year, int month) {
    return year.water().inflow()[month] / Months.days(month);
  }

  private static double retentionDays(BedYear<?> year, int month) {
    BedSite bed = year.bed();
    return FirstOrderDetention.retentionDays(
        bed.areaM2(), bed.design().depthM(), bed.porosity(), flowM3Day(year, month));
  }

  private static double loadingCmDay(BedYear<?> year, int month) {
    return CM_PER_M * flowM3Day(year, month) / year.bed().areaM2();
  }

  private static double inflowMgL(BedYear<?> year, int month, double kg) {
    WaterStream stream = year.inflow();
    return Strength.mgL(kg, stream, month);
  }

  private static Matter inflow(BedYear<?> year, int month) {
    return year.inflow().monthly().get(month);
  }

  private static double reedBod5(BedYear<?> year, int month) {
    BedKindRates rates = year.bed().rates();
    double rate =
        TanksInSeries.rateAtTemperature(
            rates.reedBod5Rate(), rates.reedBod5Theta(), year.warmth().waterC()[month]);
    return FirstOrderDetention.outflowMgL(
        inflowMgL(year, month, year.inflow().bod5Kg()[month]), rate, retentionDays(year, month));
  }

  private static double reedSolids(BedYear<?> year, int month) {
    BedKindRates rates = year.bed().rates();
    return FirstOrderDetention.solidsMgL(
        inflowMgL(year, month, year.inflow().suspendedSolidsKg()[month]),
        rates.reedSolidsIntercept(),
        rates.reedSolidsSlope(),
        loadingCmDay(year, month));
  }

  private static double reedAmmonium(BedYear<?> year, int month) {
    WetlandCoefficients c = year.bed().c();
    double at20 =
        year.bed().belowSurface()
            ? FirstOrderDetention.ammoniumRatePerDay(c.rootedDepthShare())
            : c.reedAmmoniumOpenRate();
    double rate =
        TanksInSeries.rateAtTemperature(at20, c.reedAmmoniumTheta(), year.warmth().waterC()[month]);
    return FirstOrderDetention.outflowMgL(
        inflowMgL(year, month, inflow(year, month).ammoniumNitrogenKg()),
        rate,
        retentionDays(year, month));
  }

  private static double reedPhosphorus(BedYear<?> year, int month) {
    return FirstOrderDetention.phosphorusMgL(
        inflowMgL(year, month, inflow(year, month).phosphorusKg()), loadingCmDay(year, month));
  }

  private static double totalNitrogen(BedYear<?> year, int month) {
    BedKindRates rates = year.bed().rates();
    double inflow = inflowMgL(year, month, inflow(year, month).nitrogenKg());
    return pkc(
        year,
        month,
        inflow,
        Math.min(inflow, rates.totalNitrogenBackground()),
        rates.totalNitrogenRate(),
        rates.totalNitrogenTheta());
  }

  private static double ammonium(BedYear<?> year, int month) {
    BedKindRates rates = year.bed().rates();
    double inflow = inflowMgL(year, month, inflow(year, month).ammoniumNitrogenKg());
    return pkc(year, month, inflow, 0, rates.ammoniumRate(), rates.ammoniumTheta());
  }

  private static double pkc(
      BedYear<?> year, int month, double inflow, double background, double at20, double theta) {
    double rate = TanksInSeries.rateAtTemperature(at20, theta, year.warmth().waterC()[month]);
    return TanksInSeries.outflowMgL(
        inflow,
        background,
        rate,
        year.bed().rates().nitrogenTanks(),
        TanksInSeries.hydraulicLoadingMYear(flowM3Day(year, month), year.bed().areaM2()));
  }
}
