package org.marshlight.wetland;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;
import org.marshlight.contract.Params;
import org.marshlight.contract.Sentences;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Stoichiometry;
import org.marshlight.feed.WaterStream;

/**
 * Makes the figures of the beds from their year.
 *
 * @param chain the beds, run
 * @param climate the site
 * @param fitness limits of the outflow's use
 * @param whole all that comes, diverted water included
 * @param diverted what goes past the beds; null where no valve is planned
 * @param divertedMonths months in which it does
 * @param set the coefficients
 */
record WetlandReport(
    BedChain<?> chain,
    SiteClimate climate,
    UseFitness fitness,
    WaterStream whole,
    WaterStream diverted,
    boolean[] divertedMonths,
    CoefficientSet set) {

  private static final String NO_OUTFLOW = "wetland.no-outflow-in-month";
  private static final int[] PHOSPHORUS_YEARS = {1, BedChain.HEADLINE_YEAR, 20};

  WetlandEstimate estimate() {
    SizingCoefficients sizing = set.bind(SizingCoefficients.class);
    double area = chain.years().stream().mapToDouble(year -> year.bed().areaM2()).sum();
    SizingReport sizes = SizingReport.of(whole, chain.years().get(0), area, sizing);
    return new WetlandEstimate(
        monthly(),
        annual(),
        withoutOutflow(),
        beds(sizing),
        phosphorusYears(),
        fitness.fitness(Outflow.of(chain)),
        sizes.rules(),
        sizes.spread(),
        sizes.soil(climate.soil().acceptanceLM2Day()),
        diversion());
  }

  private WetlandEstimate.Monthly monthly() {
    WaterStream out = chain.outflow();
    double[] inflow = volumes(chain.inflow());
    double[] outflow = volumes(out);
    double[] factor = new double[Months.COUNT];
    double[] coliforms = new double[Months.COUNT];
    double[] dissolved = Outflow.of(chain).dissolvedSolidsKg();
    for (int month = 0; month < Months.COUNT; month++) {
      boolean flows = outflow[month] > 0;
      factor[month] =
          flows ? WaterBalance.concentrationFactor(inflow[month], outflow[month]) : Double.NaN;
      coliforms[month] = flows ? out.faecalColiformsPer100ML()[month] : Double.NaN;
    }
    return new WetlandEstimate.Monthly(
        Months.list(inflow),
        Months.list(chain.sum(BedWater::rain)),
        Months.list(chain.sum(BedWater::evaporated)),
        Months.list(outflow),
        Months.list(diverted == null ? new double[Months.COUNT] : volumes(diverted)),
        Months.list(factor),
        Strength.mgL(out, m -> out.bod5Kg()[m]),
        Strength.mgL(out, m -> matter(out, m).codKg()),
        Strength.mgL(out, m -> out.suspendedSolidsKg()[m]),
        Strength.mgL(out, m -> matter(out, m).nitrogenKg()),
        Strength.mgL(out, m -> matter(out, m).ammoniumNitrogenKg()),
        Strength.mgL(out, m -> matter(out, m).nitrateNitrogenKg()),
        Strength.mgL(out, m -> matter(out, m).phosphorusKg()),
        Strength.mgL(out, m -> matter(out, m).potassiumKg()),
        Strength.mgL(out, m -> dissolved[m]),
        conductivity(dissolved),
        Months.list(coliforms),
        Months.list(out.temperatureC()));
  }

  /** Conductivity of the outflow in each month; null in one without. */
  private List<Double> conductivity(double[] dissolvedSolidsKg) {
    double perConductivity = chain.years().get(0).bed().c().solidsPerConductivity();
    double[] values = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      double strength = Strength.mgL(dissolvedSolidsKg[month], chain.outflow(), month);
      values[month] = Salinity.conductivityDSM(strength, perConductivity);
    }
    return Months.list(values);
  }

  private WetlandEstimate.Annual annual() {
    WaterStream in = chain.inflow();
    WaterStream out = chain.outflow();
    double volume = out.annualVolumeM3();
    double organismsIn = organisms(in);
    double organismsOut = organisms(out);
    double methaneCod = 0;
    for (BedYear<?> year : chain.years()) {
      methaneCod += BedBooks.Totals.of(year).methaneCodKg;
    }
    return new WetlandEstimate.Annual(
        in.annualVolumeM3(),
        Months.sum(chain.sum(BedWater::rain)),
        Months.sum(chain.sum(BedWater::evaporated)),
        volume,
        Strength.meanMgL(out, m -> out.bod5Kg()[m]),
        Strength.meanMgL(out, m -> out.suspendedSolidsKg()[m]),
        Strength.meanMgL(out, m -> matter(out, m).nitrogenKg()),
        Strength.meanMgL(out, m -> matter(out, m).phosphorusKg()),
        Strength.meanMgL(out, m -> matter(out, m).potassiumKg()),
        volume > 0 ? organismsOut / volume : null,
        Strength.removed(m -> in.bod5Kg()[m], m -> out.bod5Kg()[m]),
        Strength.removed(m -> in.suspendedSolidsKg()[m], m -> out.suspendedSolidsKg()[m]),
        Strength.removed(m -> matter(in, m).nitrogenKg(), m -> matter(out, m).nitrogenKg()),
        Strength.removed(m -> matter(in, m).phosphorusKg(), m -> matter(out, m).phosphorusKg()),
        organismsIn > 0 && organismsOut > 0 ? FastMath.log10(organismsIn / organismsOut) : null,
        methaneCod / Stoichiometry.METHANE_COD);
  }

  private List<WetlandEstimate.NoOutflow> withoutOutflow() {
    List<WetlandEstimate.NoOutflow> months = new ArrayList<>();
    for (int month = 0; month < Months.COUNT; month++) {
      if (chain.outflow().volumeM3(month) <= 0) {
        months.add(
            new WetlandEstimate.NoOutflow(
                month + 1, NO_OUTFLOW, Sentences.text(NO_OUTFLOW, Params.of("month", month + 1))));
      }
    }
    return List.copyOf(months);
  }

  private List<WetlandEstimate.Bed> beds(SizingCoefficients sizing) {
    List<WetlandEstimate.Bed> beds = new ArrayList<>();
    for (BedYear<?> year : chain.years()) {
      beds.add(BedReport.of(year, sizing));
    }
    return List.copyOf(beds);
  }

  private List<WetlandEstimate.PhosphorusYear> phosphorusYears() {
    double in = Strength.sum(m -> matter(chain.inflow(), m).phosphorusKg());
    double volume = chain.outflow().annualVolumeM3();
    List<WetlandEstimate.PhosphorusYear> years = new ArrayList<>();
    for (int age : PHOSPHORUS_YEARS) {
      double out = Months.sum(PhosphorusPath.outflowKg(chain.years(), age));
      years.add(
          new WetlandEstimate.PhosphorusYear(
              age, volume > 0 ? 1000 * out / volume : null, in > 0 ? 1 - out / in : null));
    }
    return List.copyOf(years);
  }

  private WetlandEstimate.Diversion diversion() {
    if (diverted == null) {
      return null;
    }
    Matter year = diverted.annual();
    return new WetlandEstimate.Diversion(
        WetlandModel.months(divertedMonths),
        diverted.annualVolumeM3(),
        year.nitrogenKg(),
        year.phosphorusKg(),
        year.potassiumKg());
  }

  private static double organisms(WaterStream stream) {
    return Strength.sum(m -> stream.faecalColiformsPer100ML()[m] * stream.volumeM3(m));
  }

  private static Matter matter(WaterStream stream, int month) {
    return stream.monthly().get(month);
  }

  private static double[] volumes(WaterStream stream) {
    double[] volumes = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      volumes[month] = stream.volumeM3(month);
    }
    return volumes;
  }
}
