package org.marshlight.digester;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.climate.ReferenceEvapotranspiration;
import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;
import org.marshlight.contract.Notice;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Waste;
import org.marshlight.feed.WaterStream;

/**
 * A tank's warmth and what becomes of matter in it. What burns or keeps the gas acts back on
 * neither, unless surplus gas warms the tank.
 *
 * @param geometry its sizes
 * @param cover what lies over its lid, complete
 * @param years whole years from desludging to desludging
 * @param pressureKPa pressure of the air
 * @param heat its heat balance, for its first years
 * @param warmth its warmth
 * @param matter what becomes of what is fed
 * @param effluent what leaves for the beds
 * @param notices remarks
 */
record TankYear(
    TankGeometry geometry,
    CoverDesign cover,
    int years,
    double pressureKPa,
    TankHeat heat,
    HeatYear warmth,
    DigestionYear matter,
    WaterStream effluent,
    List<Notice> notices) {

  /** Warmth first, then what becomes of matter; once more and again where surplus warms it. */
  static TankYear of(DigesterModel.Inputs inputs, CoefficientSet set) {
    List<Notice> notices = new ArrayList<>();
    HeatCoefficients heat = set.bind(HeatCoefficients.class);
    DigestionCoefficients digestion = set.bind(DigestionCoefficients.class);
    SiteClimate site = inputs.year().site();
    TankGeometry geometry = TankGeometry.of(inputs.tank(), heat.gasSpaceHeight());
    CoverDesign cover = inputs.cover().over(geometry.planAreaM2(), site.latitudeRad());
    aperture(cover, geometry, notices);
    int years = wholeYears(inputs.tank().desludgingIntervalYears(), notices);
    TankHeat tank =
        new TankHeat(
            inputs.year(),
            inputs.tank(),
            cover,
            geometry,
            heat,
            new Inflow(inflowKgDay(inputs.wastes()), inflowC(inputs, heat)));
    double pressureKPa = ReferenceEvapotranspiration.atmosphericPressureKPa(site.elevationM());
    SurplusHeat.Round round = SurplusHeat.settle(inputs, tank, years, pressureKPa, set);
    HeatYear warmth = round.warmth();
    DigestionYear matter = round.matter();
    if (warmth.leastLiquorC < 0.5) {
      notices.add(Notice.of("digester.liquor-freezes", "lowestC", warmth.leastLiquorC));
    }
    if (matter.filledDays > 0) {
      notices.add(
          Notice.of(
              "digester.sludge-full",
              "daysPerYear",
              matter.filledDays,
              "fillPercent",
              100 * digestion.sludgeFill(),
              "workableYears",
              matter.workableDays / Months.DAYS_PER_YEAR));
    }
    return new TankYear(
        geometry,
        cover,
        years,
        pressureKPa,
        tank,
        warmth,
        matter,
        effluent(matter, warmth, digestion),
        List.copyOf(notices));
  }

  /** Its matter, ready to be run from another start. */
  Digestion digestion(DigesterModel.Inputs inputs, CoefficientSet set) {
    return digestion(inputs, warmth.dailyLiquorC, years, pressureKPa, set);
  }

  /** A tank's matter, ready to be run. */
  static Digestion digestion(
      DigesterModel.Inputs inputs,
      double[] liquorC,
      int years,
      double pressureKPa,
      CoefficientSet set) {
    return new Digestion(
        inputs.wastes(),
        inputs.tank().liquidVolumeM3(),
        inputs.tank().compartments(),
        liquorC,
        years,
        inputs.tank().desludgingMonth() - 1,
        pressureKPa,
        set.bind(DigestionCoefficients.class));
  }

  private static void aperture(CoverDesign cover, TankGeometry geometry, List<Notice> notices) {
    if (cover.kind() != CoverKind.GLAZED) {
      return;
    }
    double room = cover.roomM2(geometry.planAreaM2());
    if (cover.apertureM2() > room) {
      notices.add(
          Notice.of("digester.glass-beyond-lid", "apertureM2", cover.apertureM2(), "roomM2", room));
    }
  }

  private static int wholeYears(double interval, List<Notice> notices) {
    int years = (int) Math.max(1, Math.rint(interval));
    if (years != interval) {
      notices.add(
          Notice.of("digester.interval-rounded", "givenYears", interval, "takenYears", years));
    }
    return years;
  }

  private static double[] inflowKgDay(List<Waste> wastes) {
    double[] inflow = new double[Months.COUNT];
    for (Waste waste : wastes) {
      for (int month = 0; month < Months.COUNT; month++) {
        inflow[month] += waste.perDay().get(month).waterKg();
      }
    }
    return inflow;
  }

  /** Household water comes above mains temperature, everything else at the air's. */
  private static double[] inflowC(DigesterModel.Inputs inputs, HeatCoefficients heat) {
    SiteClimate site = inputs.year().site();
    double[] mains = site.ground().monthlyC(heat.mainsDepth(), site.dampingDepthM());
    double above = inputs.toiletOnly() ? heat.toiletInflowAboveMains() : heat.inflowAboveMains();
    double[] inflow = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      double household = Math.max(1, mains[month]) + above;
      double cold = Math.max(1, site.airC()[month]);
      double waterKg = 0;
      double heatKgK = 0;
      for (Waste waste : inputs.wastes()) {
        double kg = waste.perDay().get(month).waterKg();
        waterKg += kg;
        heatKgK += kg * (waste.human() ? household : cold);
      }
      inflow[month] = waterKg > 0 ? heatKgK / waterKg : household;
    }
    return inflow;
  }

  private static WaterStream effluent(
      DigestionYear matter, HeatYear warmth, DigestionCoefficients coefficients) {
    List<Matter> monthly = new ArrayList<>(Months.COUNT);
    double[] suspended = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      double degradable = matter.effluentDegradableCod[month] + matter.effluentAcidCod[month];
      suspended[month] = matter.effluentParticleSolids[month];
      monthly.add(
          new Matter(
              matter.effluentWater[month],
              matter.effluentVolatileSolids[month],
              matter.effluentFixedSolids[month],
              degradable + matter.effluentInertCod[month] + matter.effluentSulphideCod[month],
              matter.effluentCarbon[month],
              matter.effluentInorganicCarbon[month],
              matter.effluentOrganicNitrogen[month],
              matter.effluentAmmonium[month],
              0,
              matter.effluentPhosphorus[month],
              matter.effluentPotassium[month]));
    }
    return new WaterStream(
        List.copyOf(monthly),
        matter.effluentBod5.clone(),
        suspended,
        Months.constant(coefficients.effluentColiforms()),
        warmth.monthlyLiquorC.clone(),
        true);
  }
}
