package org.marshlight.digester;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;
import org.marshlight.contract.Notice;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Stoichiometry;
import org.marshlight.feed.Waste;
import org.marshlight.feed.WaterStream;

/** Puts the results of a tank's year into the words and units of its estimate. */
final class DigesterReport {

  private static final double GRAMS = 1000;

  private static final String SULPHATE = "digester.sulphate-sulphur";
  private static final String ACIDITY = "digester.liquor-ph";

  private DigesterReport() {}

  static DigesterEstimate of(
      DigesterModel.Inputs inputs,
      TankYear year,
      GasBooks gas,
      DigesterEstimate.StartUp startUp,
      DigesterEstimate.TankHeating tankHeating,
      CoefficientSet set,
      List<Notice> notices) {
    TankGeometry geometry = year.geometry();
    HeatYear warmth = year.warmth();
    DigestionYear matter = year.matter();
    DigestionCoefficients coefficients = set.bind(DigestionCoefficients.class);
    Matter fed = Matter.sum(inputs.wastes().stream().map(Waste::annual).toList());
    return new DigesterEstimate(
        monthly(inputs.year().site(), warmth, matter, gas, coefficients),
        annual(inputs, year, gas, fed, set, notices),
        flows(warmth.ledger),
        Months.list(warmth.ledger.stored),
        load(inputs.wastes(), fed),
        gas(gas, warmth.meanLiquorC(), set),
        effluent(year.effluent(), coefficients),
        sludge(inputs, geometry, matter, set, notices),
        Stability.checks(inputs.wastes(), geometry.liquidM3(), warmth, matter, set),
        cycle(matter),
        SecondOpinions.of(inputs, geometry.liquidM3(), warmth, fed, set),
        startUp,
        tankHeating);
  }

  private static double[] months(IntToDoubleFunction value) {
    double[] months = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      months[month] = value.applyAsDouble(month);
    }
    return months;
  }

  private static DigesterEstimate.Monthly monthly(
      SiteClimate site,
      HeatYear warmth,
      DigestionYear matter,
      GasBooks gas,
      DigestionCoefficients coefficients) {
    double kWh = MethaneKinetics.methaneEnergyKWh(1);
    double[] produced =
        DigesterModel.methaneNm3(
            months(m -> matter.methaneCodPeople[m] + matter.methaneCodOther[m]));
    double[] dissolved = DigesterModel.methaneNm3(matter.dissolvedMethaneCod);
    double[] gasPhase = DigesterModel.methaneNm3(matter.gasMethaneCod);
    double[] leaked = months(m -> gasPhase[m] * coefficients.leakShare());
    double[] arriving = gas.store().arrivingNm3;
    return new DigesterEstimate.Monthly(
        Months.list(warmth.monthlyLiquorC),
        Months.list(site.airC()),
        Months.list(warmth.monthlyLidC),
        Months.list(warmth.monthlySurfaceC),
        Months.list(warmth.ledger.sunOnTop),
        Months.list(warmth.ledger.lidToLiquor),
        Months.list(produced),
        Months.list(dissolved),
        Months.list(leaked),
        Months.list(arriving),
        Months.list(months(m -> arriving[m] * gas.meteredPerNm3()[m])),
        Months.list(months(m -> arriving[m] * kWh)),
        Months.list(months(m -> gas.burnedNm3(m) * kWh)),
        Months.list(months(m -> gas.letGoNm3()[m] * kWh)),
        Months.list(
            months(m -> Math.max(0, gas.store().demandNm3(m) - gas.store().usedNm3(m)) * kWh)),
        Months.list(months(gas::cookingMet)));
  }

  private static DigesterEstimate.Annual annual(
      DigesterModel.Inputs inputs,
      TankYear year,
      GasBooks gas,
      Matter fed,
      CoefficientSet set,
      List<Notice> notices) {
    TankGeometry geometry = year.geometry();
    HeatYear warmth = year.warmth();
    DigestionYear matter = year.matter();
    double people = Months.sum(matter.methaneCodPeople);
    double produced = people + Months.sum(matter.methaneCodOther);
    double dissolved = Months.sum(matter.dissolvedMethaneCod);
    double gasPhase = Months.sum(matter.gasMethaneCod);
    double leak = set.bind(DigestionCoefficients.class).leakShare();
    double arrivingNm3 = Months.sum(gas.store().arrivingNm3);
    double arrivingKWh = MethaneKinetics.methaneEnergyKWh(arrivingNm3);
    double personDays = inputs.personDays();
    double inflowM3Day = fed.waterKg() / 1000 / Months.DAYS_PER_YEAR;
    Double met = orNull(gas.cookingMet());
    if (met == null) {
      notices.add(Notice.of("digester.no-cooking"));
    }
    if (personDays <= 0) {
      notices.add(Notice.of("digester.no-people"));
    }
    return new DigesterEstimate.Annual(
        warmth.meanLiquorC(),
        warmth.leastLiquorC,
        warmth.greatestLiquorC,
        warmth.greatestLidC,
        warmth.leastSurfaceC,
        warmth.greatestSurfaceC,
        warmth.lidHoursAboveScald,
        utilisedSun(warmth.ledger),
        stagnation(year.cover(), geometry.planAreaM2(), set),
        warmth.groundLossWK,
        warmth.standardGroundLossWK,
        Stoichiometry.methaneOfCodNm3(produced),
        Stoichiometry.methaneOfCodNm3(dissolved),
        Stoichiometry.methaneOfCodNm3(gasPhase * leak),
        arrivingNm3,
        Stoichiometry.methaneOfCodNm3(fed.codKg()),
        arrivingKWh,
        gas.energy().usedKWh(),
        personDays > 0
            ? methaneKg(produced > 0 ? people * gasPhase / produced : 0) * GRAMS / personDays
            : null,
        personDays > 0 ? methaneKg(gasPhase) * GRAMS / personDays : null,
        met,
        arrivingKWh / Months.DAYS_PER_YEAR / set.bind(GasCoefficients.class).cookingKW(),
        gas.store().longestDaysWithout,
        inflowM3Day > 0 ? geometry.liquidM3() / inflowM3Day : null,
        fed.volatileSolidsKg() / Months.DAYS_PER_YEAR / geometry.liquidM3());
  }

  private static Double utilisedSun(HeatLedger ledger) {
    double sun = Months.sum(ledger.sunOnTop);
    return sun > 0
        ? Double.valueOf(Math.max(0, Math.min(1, Months.sum(ledger.lidToLiquor) / sun)))
        : null;
  }

  private static double methaneKg(double cod) {
    return cod / Stoichiometry.METHANE_COD;
  }

  private static Double orNull(double value) {
    return Double.isNaN(value) ? null : value;
  }

  private static Double stagnation(CoverDesign cover, double lidM2, CoefficientSet set) {
    if (cover.kind() != CoverKind.GLAZED) {
      return null;
    }
    return Stagnation.ofCoverC(
        cover, lidM2, set.bind(StagnationCoefficients.class), set.bind(HeatCoefficients.class));
  }

  private static DigesterEstimate.HeatFlows flows(HeatLedger ledger) {
    return new DigesterEstimate.HeatFlows(
        Months.list(ledger.absorbedSun),
        Months.list(ledger.topToAir),
        Months.list(ledger.topToSky),
        Months.list(ledger.enclosure),
        Months.list(ledger.coverSoil),
        Months.list(ledger.ground),
        Months.list(ledger.inflow),
        Months.list(ledger.burnedGas));
  }

  private static DigesterEstimate.Load load(List<Waste> wastes, Matter fed) {
    double perDay = 1.0 / Months.DAYS_PER_YEAR;
    double bod5 = 0;
    double peopleCod = 0;
    for (Waste waste : wastes) {
      double cod = waste.annual().codKg();
      bod5 += cod * waste.digestibility().bod5PerCod();
      peopleCod += waste.human() ? cod : 0;
    }
    return new DigesterEstimate.Load(
        fed.waterKg() * perDay,
        fed.totalSolidsKg() * perDay,
        fed.volatileSolidsKg() * perDay,
        fed.codKg() * perDay,
        bod5 * perDay,
        fed.nitrogenKg() * perDay,
        fed.phosphorusKg() * perDay,
        fed.potassiumKg() * perDay,
        fed.codKg() > 0 ? peopleCod / fed.codKg() : null);
  }

  private static DigesterEstimate.Gas gas(GasBooks gas, double liquorC, CoefficientSet set) {
    double methane = gas.delivered().volatileSolidsKg() / Stoichiometry.METHANE;
    double carbonDioxide = gas.delivered().inorganicCarbonKg() / Stoichiometry.CARBON;
    double sulphide =
        (gas.delivered().codKg() - gas.delivered().volatileSolidsKg() * Stoichiometry.METHANE_COD)
            / 2
            / Stoichiometry.SULFUR;
    double all = methane + carbonDioxide;
    Double ppm = all > 0 ? Double.valueOf(Math.max(0, sulphide / all * 1e6)) : null;
    return new DigesterEstimate.Gas(
        all > 0 ? methane / all : null,
        ppm,
        ppm == null
            ? null
            : ppm * sulphideSpread(set, CoefficientRow::low, CoefficientRow::high, liquorC),
        ppm == null
            ? null
            : ppm * sulphideSpread(set, CoefficientRow::high, CoefficientRow::low, liquorC),
        Months.mean(gas.capacityNm3()),
        gas.surplus(),
        gas.useReports());
  }

  /** Sulphate and acidity at one end of their ranges each over their values in this run. */
  private static double sulphideSpread(
      CoefficientSet set,
      ToDoubleFunction<CoefficientRow> sulphateEnd,
      ToDoubleFunction<CoefficientRow> acidityEnd,
      double temperatureC) {
    double sulphate = set.value(SULPHATE);
    double share = Sulphide.hydrogenSulphideShare(temperatureC, set.value(ACIDITY));
    double end =
        Sulphide.hydrogenSulphideShare(
            temperatureC, acidityEnd.applyAsDouble(set.book().find(ACIDITY).orElseThrow()));
    return (sulphate > 0
            ? sulphateEnd.applyAsDouble(set.book().find(SULPHATE).orElseThrow()) / sulphate
            : 1)
        * end
        / share;
  }

  private static DigesterEstimate.Effluent effluent(
      WaterStream effluent, DigestionCoefficients coefficients) {
    return new DigesterEstimate.Effluent(
        Months.list(months(effluent::volumeM3)),
        Months.list(effluent.temperatureC()),
        concentrations(effluent, m -> effluent.bod5Kg()[m]),
        concentrations(effluent, m -> effluent.monthly().get(m).codKg()),
        concentrations(effluent, m -> effluent.suspendedSolidsKg()[m]),
        concentrations(effluent, m -> effluent.monthly().get(m).nitrogenKg()),
        concentrations(effluent, m -> effluent.monthly().get(m).ammoniumNitrogenKg()),
        concentrations(effluent, m -> effluent.monthly().get(m).phosphorusKg()),
        concentrations(effluent, m -> effluent.monthly().get(m).potassiumKg()),
        coefficients.effluentColiforms());
  }

  private static List<Double> concentrations(WaterStream stream, IntToDoubleFunction kg) {
    return Months.list(
        months(
            m ->
                stream.volumeM3(m) > 1e-9
                    ? kg.applyAsDouble(m) / stream.volumeM3(m) * GRAMS
                    : Double.NaN));
  }

  private static DigesterEstimate.Sludge sludge(
      DigesterModel.Inputs inputs,
      TankGeometry geometry,
      DigestionYear matter,
      CoefficientSet set,
      List<Notice> notices) {
    Matter pumped = matter.pumpedSludge;
    Double byRule = volumeByRule(inputs, matter.years, set);
    if (byRule != null && geometry.liquidM3() < byRule) {
      notices.add(
          Notice.of("digester.below-rule", "volumeM3", geometry.liquidM3(), "ruleM3", byRule));
    }
    return new DigesterEstimate.Sludge(
        matter.years,
        matter.greatestSludgeM3,
        matter.greatestSludgeM3 / geometry.liquidM3(),
        matter.filledDays,
        pumped.totalSolidsKg(),
        pumped.freshKg() / 1000,
        pumped.nitrogenKg(),
        pumped.phosphorusKg(),
        pumped.potassiumKg(),
        inputs.people() > 0
            ? inputs.people() * SepticSizing.sludgeGatheredL(matter.years) / 1000
            : null,
        byRule);
  }

  private static Double volumeByRule(DigesterModel.Inputs inputs, int years, CoefficientSet set) {
    if (inputs.people() == 0 || inputs.personDays() <= 0) {
      return null;
    }
    double waterL =
        inputs.wastes().stream()
            .filter(Waste::human)
            .mapToDouble(waste -> waste.annual().waterKg())
            .sum();
    return set.bind(SepticRule.class)
        .volumeM3(inputs.people(), waterL / inputs.personDays(), years, inputs.toiletOnly());
  }

  private static List<DigesterEstimate.CycleYear> cycle(DigestionYear matter) {
    List<DigesterEstimate.CycleYear> cycle = new ArrayList<>();
    for (int year = 0; year < matter.years; year++) {
      cycle.add(
          new DigesterEstimate.CycleYear(
              year + 1,
              Stoichiometry.methaneOfCodNm3(matter.yearMethaneCod[year]),
              matter.yearSludgeM3[year]));
    }
    return List.copyOf(cycle);
  }
}
