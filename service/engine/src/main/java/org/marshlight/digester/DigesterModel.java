package org.marshlight.digester;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.ReferenceEvapotranspiration;
import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;
import org.marshlight.contract.Notice;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Account;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;
import org.marshlight.feed.Stoichiometry;
import org.marshlight.feed.Waste;
import org.marshlight.feed.WaterStream;

/** A year of the tank: its warmth first, then what becomes of matter in it, then its gas. */
public final class DigesterModel {

  private static final int START_UP_YEARS = 3;

  private DigesterModel() {}

  /**
   * What is known of a tank before it is run; designs have their defaults filled.
   *
   * @param year weather of the site
   * @param tank the tank
   * @param cover what lies over its lid
   * @param gas how the gas is kept and used; null if it is not caught
   * @param wastes what enters
   * @param people number of people that cook on the gas
   * @param personDays days that people are at home in a year, summed
   * @param toiletOnly whether only toilet water of the household enters
   * @param effluentTo process or party that receives the outflow
   * @param sludgeTo process or party that receives the pumped sludge
   */
  public record Inputs(
      ClimateYear year,
      TankDesign tank,
      CoverDesign cover,
      GasDesign gas,
      List<Waste> wastes,
      int people,
      double personDays,
      boolean toiletOnly,
      String effluentTo,
      String sludgeTo) {}

  /** Runs a tank to its periodic state. */
  public static DigesterOutcome run(Inputs inputs, CoefficientSet set) {
    List<Notice> notices = new ArrayList<>();
    HeatCoefficients heat = set.bind(HeatCoefficients.class);
    DigestionCoefficients digestion = set.bind(DigestionCoefficients.class);
    SiteClimate site = inputs.year().site();
    TankGeometry geometry = TankGeometry.of(inputs.tank(), heat.gasSpaceHeight());
    CoverDesign cover = inputs.cover().over(geometry.planAreaM2(), site.latitudeRad());
    aperture(cover, geometry, notices);

    TankHeat tankHeat =
        new TankHeat(
            inputs.year(),
            inputs.tank(),
            cover,
            geometry,
            heat,
            new Inflow(inflowKgDay(inputs.wastes()), inflowC(inputs, heat)));
    HeatYear warmth = tankHeat.periodicYear();
    if (warmth.leastLiquorC < 0.5) {
      notices.add(Notice.of("digester.liquor-freezes", "lowestC", warmth.leastLiquorC));
    }

    int years = wholeYears(inputs.tank().desludgingIntervalYears(), notices);
    double pressureKPa = ReferenceEvapotranspiration.atmosphericPressureKPa(site.elevationM());
    DigestionYear matter =
        digestion(inputs, warmth.dailyLiquorC, years, pressureKPa, digestion).periodic();
    if (matter.filledDays > 0) {
      notices.add(
          Notice.of(
              "digester.sludge-full",
              "daysPerYear",
              matter.filledDays,
              "fillPercent",
              100 * digestion.sludgeFill()));
    }

    GasBooks gas = GasBooks.of(inputs, matter, digestion, set, pressureKPa);
    if (inputs.gas() == null) {
      notices.add(Notice.of("digester.gas-not-caught"));
    }
    WaterStream effluent = effluent(matter, warmth, digestion);
    DigesterEstimate estimate =
        DigesterReport.of(
            inputs,
            geometry,
            cover,
            warmth,
            matter,
            gas,
            effluent,
            startUp(inputs, tankHeat, warmth, years, pressureKPa, digestion),
            set,
            notices);
    List<Account> accounts = new ArrayList<>();
    accounts.add(tankAccount(inputs, matter, gas, effluent));
    if (inputs.gas() != null) {
      accounts.add(gas.account());
    }
    return new DigesterOutcome(
        estimate,
        effluent,
        matter.pumpedSludge,
        List.copyOf(accounts),
        cover.kind() == CoverKind.GLAZED ? cover.apertureM2() : 0,
        gas.energy(),
        List.copyOf(notices),
        () -> DigesterWorking.steps(inputs, geometry, cover, warmth, matter, set));
  }

  private static Digestion digestion(
      Inputs inputs,
      double[] liquorC,
      int years,
      double pressureKPa,
      DigestionCoefficients coefficients) {
    return new Digestion(
        inputs.wastes(),
        inputs.tank().liquidVolumeM3(),
        inputs.tank().compartments(),
        liquorC,
        years,
        inputs.tank().desludgingMonth() - 1,
        pressureKPa,
        coefficients);
  }

  /** The first years of a cold tank, where the plan asks for them. */
  private static DigesterEstimate.StartUp startUp(
      Inputs inputs,
      TankHeat tankHeat,
      HeatYear warmth,
      int years,
      double pressureKPa,
      DigestionCoefficients coefficients) {
    if (inputs.tank().startUpMonth() == null) {
      return null;
    }
    int month = inputs.tank().startUpMonth() - 1;
    double[] daily = tankHeat.startUp(month, START_UP_YEARS, warmth.meanLiquorC());
    double[] methaneCod =
        digestion(inputs, warmth.dailyLiquorC, years, pressureKPa, coefficients)
            .startUp(daily, month);
    double[] monthlyC = new double[methaneCod.length];
    int day = 0;
    for (int told = 0; told < monthlyC.length; told++) {
      int days = Months.days((month + told) % Months.COUNT);
      for (int d = 0; d < days; d++) {
        monthlyC[told] += daily[day++] / days;
      }
    }
    return new DigesterEstimate.StartUp(
        month + 1, Months.list(monthlyC), Months.list(methaneNm3(methaneCod)));
  }

  private static void aperture(CoverDesign cover, TankGeometry geometry, List<Notice> notices) {
    if (cover.kind() != CoverKind.GLAZED) {
      return;
    }
    double room =
        geometry.planAreaM2() / Math.max(0.05, FastMath.cos(FastMath.toRadians(cover.tiltDeg())));
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
  private static double[] inflowC(Inputs inputs, HeatCoefficients heat) {
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
    double[] bod5 = new double[Months.COUNT];
    double[] suspended = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      double degradable = matter.effluentDegradableCod[month] + matter.effluentAcidCod[month];
      bod5[month] = coefficients.bod5OfDegradable() * degradable;
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
        bod5,
        suspended,
        Months.constant(coefficients.effluentColiforms()),
        warmth.monthlyLiquorC.clone(),
        true);
  }

  private static Account tankAccount(
      Inputs inputs, DigestionYear matter, GasBooks gas, WaterStream effluent) {
    Account.Books books = Account.of(Party.TANK);
    Map<String, Matter> byParty = new LinkedHashMap<>();
    for (Waste waste : inputs.wastes()) {
      byParty.merge(waste.from(), waste.annual(), Matter::plus);
    }
    byParty.forEach(books::received);
    books.received(Party.WATER_SUPPLY, Matter.water(matter.makeUpWater));
    if (matter.reactionWater >= 0) {
      books.received(Party.REACTION, Matter.water(matter.reactionWater));
    } else {
      books.gave(Party.REACTION, Matter.water(-matter.reactionWater));
    }
    books
        .gave(inputs.effluentTo(), effluent.annual())
        .gave(inputs.sludgeTo(), matter.pumpedSludge)
        .gave(Party.AIR, gas.leaked().plus(Matter.methane(Months.sum(matter.dissolvedMethaneCod))))
        .gave(inputs.gas() == null ? Party.AIR : Party.GAS_STORE, gas.delivered())
        .kept(matter.kept);
    return books.close();
  }

  /** Methane of a COD, Nm3. */
  static double[] methaneNm3(double[] cod) {
    double[] volume = new double[cod.length];
    for (int i = 0; i < cod.length; i++) {
      volume[i] = Stoichiometry.methaneOfCodNm3(cod[i]);
    }
    return volume;
  }
}
