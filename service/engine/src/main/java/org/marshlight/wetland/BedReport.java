package org.marshlight.wetland;

import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import org.marshlight.contract.Months;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;
import org.marshlight.feed.Stoichiometry;
import org.marshlight.feed.WaterStream;
import org.marshlight.wetland.WetlandEstimate.Adequacy;

/** Makes the figures of one bed from its year. */
final class BedReport {

  private static final double CM_PER_M = 100;

  private BedReport() {}

  static WetlandEstimate.Bed of(BedYear<?> year, SizingCoefficients sizing) {
    BedSite bed = year.bed();
    BedBooks.Totals totals = BedBooks.Totals.of(year);
    return new WetlandEstimate.Bed(
        Party.bed(bed.index()),
        bed.design().kind(),
        bed.belowSurface() ? bed.design().medium() : null,
        bed.design().plant(),
        bed.areaM2(),
        bed.waterM3(),
        loading(year, sizing),
        bed.belowSurface() ? passage(year) : null,
        bed.belowSurface() ? null : ice(year),
        monthly(year),
        fates(year, Matter::nitrogenKg, totals.gasNitrogenKg, 0, year.growth().nitrogenUptakeKg()),
        fates(
            year,
            Matter::phosphorusKg,
            0,
            totals.sorbedPhosphorusKg,
            year.growth().phosphorusUptakeKg()),
        fates(year, Matter::potassiumKg, 0, 0, year.growth().potassiumUptakeKg()),
        organicMatter(year, totals),
        SecondOpinions.of(year));
  }

  static WetlandEstimate.Loading loading(BedYear<?> year, SizingCoefficients sizing) {
    double heaviest = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      heaviest = Math.max(heaviest, DivertedMonths.bod5GM2Day(year, month));
    }
    double flow = greatestFlowM3Day(year);
    BedSite bed = year.bed();
    return new WetlandEstimate.Loading(
        heaviest,
        sizing.loadUsual(),
        sizing.loadWarn(),
        sizing.loadRefuse(),
        CM_PER_M * flow / bed.areaM2(),
        flow > 0
            ? FirstOrderDetention.retentionDays(
                bed.areaM2(), bed.design().depthM(), bed.porosity(), flow)
            : null,
        adequacy(heaviest, sizing));
  }

  private static Adequacy adequacy(double load, SizingCoefficients sizing) {
    if (load <= sizing.loadUsual()) {
      return Adequacy.AMPLE;
    }
    if (load <= sizing.loadWarn()) {
      return Adequacy.SUFFICIENT;
    }
    return load <= sizing.loadRefuse() ? Adequacy.POOR : Adequacy.INSUFFICIENT;
  }

  static WetlandEstimate.Passage passage(BedYear<?> year) {
    BedSite bed = year.bed();
    double flow = greatestFlowM3Day(year);
    double working = bed.c().workingConductivity() * bed.medium().conductivityMDay();
    double capacity = bed.capacityM3Day();
    double section = BedHydraulics.sectionM2(flow, working, bed.c().bedSlope());
    return new WetlandEstimate.Passage(
        BedHydraulics.lengthM(bed.design()),
        bed.widthM(),
        bed.medium().conductivityMDay(),
        working,
        capacity,
        flow,
        section / bed.design().depthM(),
        passes(capacity, flow));
  }

  /** Ice of a month is that at its end; a month without inflow has nothing to clean. */
  static WetlandEstimate.Ice ice(BedYear<?> year) {
    BedSite bed = year.bed();
    double limit = bed.c().iceDepthShare();
    double greatest = 0;
    boolean[] frozen = new boolean[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      double share = year.warmth().iceM()[month] / bed.design().depthM();
      greatest = Math.max(greatest, share);
      frozen[month] = share >= limit && year.water().inflow()[month] > 0;
    }
    return new WetlandEstimate.Ice(greatest, limit, WetlandModel.months(frozen));
  }

  private static Adequacy passes(double capacity, double flow) {
    if (capacity < flow) {
      return Adequacy.INSUFFICIENT;
    }
    return capacity >= 2 * flow ? Adequacy.AMPLE : Adequacy.SUFFICIENT;
  }

  static double greatestFlowM3Day(BedYear<?> year) {
    double greatest = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      greatest = Math.max(greatest, year.water().inflow()[month] / Months.days(month));
    }
    return greatest;
  }

  private static WetlandEstimate.BedMonthly monthly(BedYear<?> year) {
    WaterStream out = year.outflow();
    BedWater water = year.water();
    double[] outflow = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      outflow[month] = out.volumeM3(month);
    }
    return new WetlandEstimate.BedMonthly(
        Months.list(water.inflow()),
        Months.list(water.passing()),
        Months.list(water.rain()),
        Months.list(water.evaporated()),
        Months.list(outflow),
        Months.list(year.warmth().waterC()),
        Months.list(year.warmth().iceM()),
        Strength.mgL(out, m -> out.bod5Kg()[m]),
        Strength.mgL(out, m -> out.monthly().get(m).nitrogenKg()),
        Strength.mgL(out, m -> out.monthly().get(m).phosphorusKg()));
  }

  private static WetlandEstimate.Fates fates(
      BedYear<?> year,
      ToDoubleFunction<Matter> nutrient,
      double gasKg,
      double sorbedKg,
      double[] uptakeKg) {
    StandGrowth growth = year.growth();
    double returned = nutrient.applyAsDouble(growth.litter());
    double buried = nutrient.applyAsDouble(BedYear.buriedLitter(year.bed(), growth));
    double held = nutrient.applyAsDouble(BedBooks.Totals.of(year).held);
    double in = throughBed(year, m -> nutrient.applyAsDouble(year.inflow().monthly().get(m)));
    double out = outOfBed(year, nutrient);
    double harvested =
        nutrient.applyAsDouble(growth.organs()) + nutrient.applyAsDouble(growth.tops());
    double removed = harvested + gasKg + held + buried;
    return new WetlandEstimate.Fates(
        in,
        Months.sum(uptakeKg),
        harvested,
        returned - buried,
        gasKg,
        sorbedKg,
        held - sorbedKg + buried,
        nutrient.applyAsDouble(growth.standing()) + nutrient.applyAsDouble(year.stored()),
        out,
        removed > 0 ? harvested / removed : null);
  }

  private static WetlandEstimate.OrganicMatter organicMatter(
      BedYear<?> year, BedBooks.Totals totals) {
    StandGrowth growth = year.growth();
    double in = throughBed(year, m -> year.inflow().monthly().get(m).codKg());
    return new WetlandEstimate.OrganicMatter(
        in,
        growth.assimilated().codKg(),
        totals.oxidisedCodKg + growth.respired().codKg(),
        totals.gasNitrogenKg * Stoichiometry.DENITRIFICATION_COD,
        totals.methaneCodKg,
        growth.organs().codKg() + growth.tops().codKg(),
        totals.held.codKg()
            + BedYear.buriedLitter(year.bed(), growth).codKg()
            + growth.standing().codKg()
            + year.stored().codKg(),
        outOfBed(year, Matter::codKg),
        totals.nitrifiedKg * Stoichiometry.NITRIFICATION_OXYGEN);
  }

  /**
   * What leaves with the water that passed the bed. What was led past is taken off month by month:
   * a difference of yearly sums could come out below zero by rounding.
   */
  private static double outOfBed(BedYear<?> year, ToDoubleFunction<Matter> nutrient) {
    return Strength.sum(
        m -> {
          double out = nutrient.applyAsDouble(year.outflow().monthly().get(m));
          return year.bed().design().passedBy(m)
              ? out - nutrient.applyAsDouble(year.inflow().monthly().get(m))
              : out;
        });
  }

  /** Sum over the months in which the stream is not led past the bed. */
  private static double throughBed(BedYear<?> year, IntToDoubleFunction monthly) {
    return Strength.sum(m -> year.bed().design().passedBy(m) ? 0 : monthly.applyAsDouble(m));
  }
}
