package org.marshlight.digester;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Account;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;
import org.marshlight.feed.Stoichiometry;

/**
 * The gas of a tank, from the liquor's surface to the flame.
 *
 * @param uses what burns the gas, in the order in which it is served
 * @param surplus what becomes of gas that the store cannot hold
 * @param store what the store saw
 * @param capacityNm3 methane that the store holds in each month
 * @param meteredPerNm3 wet gas at the store's state for each Nm3 of methane, by month
 * @param heaterNm3 methane of each month's surplus that warmed the tank, the next day
 * @param letGoNm3 methane of each month's surplus that was flared or vented
 * @param leaked gas lost before the store in a year
 * @param delivered gas that reaches the store in a year
 */
record GasBooks(
    List<GasUse> uses,
    GasSurplus surplus,
    GasStore.GasYear store,
    double[] capacityNm3,
    double[] meteredPerNm3,
    double[] heaterNm3,
    double[] letGoNm3,
    Matter leaked,
    Matter delivered) {

  /** Coldest gas in a store counted with, Cel; colder air is warmed by the ground. */
  private static final double COLDEST_STORE_C = -5;

  static GasBooks of(
      DigesterModel.Inputs inputs,
      HeatYear warmth,
      DigestionYear matter,
      double pressureKPa,
      CoefficientSet set) {
    DigestionCoefficients coefficients = set.bind(DigestionCoefficients.class);
    GasDesign design = inputs.gas() == null ? GasStore.NO_CAPTURE : inputs.gas();
    List<GasUse> uses = design.uses() == null ? List.of() : design.uses();
    double[] metered = meteredPerNm3(inputs.year().site(), coefficients, design, pressureKPa);
    double[] capacity = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      capacity[month] = design.storeM3() / metered[month];
    }
    double kept = 1 - coefficients.leakShare();
    double[] arriving = DigesterModel.methaneNm3(matter.dailyGasMethaneCod);
    for (int day = 0; day < arriving.length; day++) {
      arriving[day] *= kept;
    }
    GasCoefficients use = set.bind(GasCoefficients.class);
    GasStore.GasYear store =
        GasStore.run(
            arriving,
            capacity,
            demandNm3(uses, inputs.people(), use),
            design.monthsOff(),
            use.restartLagDays());
    double[] heater = new double[Months.COUNT];
    double[] letGo = new double[Months.COUNT];
    partSurplus(store.surplusOfDayNm3, warmth, heater, letGo);
    Matter gas = gas(matter);
    return new GasBooks(
        uses,
        design.surplus(),
        store,
        capacity,
        metered,
        heater,
        letGo,
        gas.times(coefficients.leakShare()),
        gas.times(kept));
  }

  /**
   * Parts the surplus of each day into what warms the tank the day after and what is let go. Both
   * are booked in the month in which the surplus was made, so that neither can be negative.
   */
  private static void partSurplus(
      double[] surplusOfDayNm3, HeatYear warmth, double[] heater, double[] letGo) {
    int[] monthOfDay = Months.monthOfDay();
    for (int day = 0; day < surplusOfDayNm3.length; day++) {
      double burned = surplusOfDayNm3[day] * warmth.heaterShare((day + 1) % surplusOfDayNm3.length);
      heater[monthOfDay[day]] += burned;
      letGo[monthOfDay[day]] += surplusOfDayNm3[day] - burned;
    }
  }

  private static double[] meteredPerNm3(
      SiteClimate site, DigestionCoefficients coefficients, GasDesign design, double pressureKPa) {
    double over = design.pressureKPa() == null ? 0 : design.pressureKPa();
    double[] metered = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      double storeC = Math.max(COLDEST_STORE_C, site.airC()[month]);
      metered[month] =
          1
              / (coefficients.methaneFraction()
                  * MethaneKinetics.normalVolumeNm3(1, storeC, pressureKPa + over));
    }
    return metered;
  }

  /** Methane that each use asks for on a day. */
  private static double[] demandNm3(List<GasUse> uses, int people, GasCoefficients coefficients) {
    double perNm3 = MethaneKinetics.methaneEnergyKWh(1);
    double[] demand = new double[uses.size()];
    for (int i = 0; i < demand.length; i++) {
      GasUse use = uses.get(i);
      double hours = use.hoursPerDay() == null ? 0 : use.hoursPerDay();
      double meals = use.mealsPerDay() == null ? 0 : use.mealsPerDay();
      demand[i] =
          (hours * coefficients.powerKW(use.use()) + meals * people * coefficients.mealKWh())
              / perNm3;
    }
    return demand;
  }

  /** All gas that leaves the liquor in a year. */
  private static Matter gas(DigestionYear matter) {
    return Matter.methane(Months.sum(matter.gasMethaneCod))
        .plus(Matter.carbonDioxide(Months.sum(matter.gasCarbonDioxideCarbon)))
        .plus(Matter.oxidised(Months.sum(matter.sulphideGasCod)))
        .plus(Matter.water(matter.vapourWater));
  }

  /** Methane burned in a month, by uses, or for the tank's warmth out of the month's surplus. */
  double burnedNm3(int month) {
    return store.usedNm3(month) + heaterNm3[month];
  }

  private double sum(IntToDoubleFunction month) {
    double sum = 0;
    for (int m = 0; m < Months.COUNT; m++) {
      sum += month.applyAsDouble(m);
    }
    return sum;
  }

  /** Books of the store; everything but the methane passes it. */
  Account account() {
    double burned = sum(this::burnedNm3);
    double letGo = Months.sum(letGoNm3);
    Account.Books books = Account.of(Party.GAS_STORE).received(Party.TANK, delivered);
    if (Months.sum(store.arrivingNm3) <= 0) {
      return books.gave(Party.AIR, delivered).close();
    }
    Matter rest = delivered.minus(Matter.methane(delivered.codKg() - sulphideCod()));
    double burnedShare = burned + letGo > 0 ? burned / (burned + letGo) : 0;
    return books
        .gave(Party.BURNER, methane(burned).plus(rest.times(burnedShare)))
        .gave(
            surplus == GasSurplus.FLARE ? Party.FLARE : Party.AIR,
            methane(letGo).plus(rest.times(1 - burnedShare)))
        .kept(methane(store.storedNm3))
        .close();
  }

  private double sulphideCod() {
    return delivered.codKg() - delivered.volatileSolidsKg() * Stoichiometry.METHANE_COD;
  }

  private static Matter methane(double normalM3) {
    return Matter.methane(normalM3 / Stoichiometry.methaneOfCodNm3(1));
  }

  DigesterOutcome.GasEnergy energy() {
    double kWh = MethaneKinetics.methaneEnergyKWh(1);
    return new DigesterOutcome.GasEnergy(
        Months.sum(store.arrivingNm3) * kWh,
        sum(this::burnedNm3) * kWh,
        Months.sum(letGoNm3) * kWh,
        store.storedNm3 * kWh);
  }

  /** Share of cooking demand met in a month, or NaN where nothing is cooked on gas. */
  double cookingMet(int month) {
    return met(month, month);
  }

  /** Share of cooking demand met in the year, or NaN. */
  double cookingMet() {
    return met(0, Months.COUNT - 1);
  }

  private double met(int from, int to) {
    double asked = 0;
    double used = 0;
    for (int use = 0; use < uses.size(); use++) {
      if (uses.get(use).use() == GasPurpose.COOKING) {
        for (int month = from; month <= to; month++) {
          asked += store.demandNm3[use][month];
          used += store.usedNm3[use][month];
        }
      }
    }
    return asked > 0 ? Math.min(1, used / asked) : Double.NaN;
  }

  /** What the report says of each use. */
  List<DigesterEstimate.Use> useReports() {
    List<DigesterEstimate.Use> reports = new ArrayList<>();
    double kWh = MethaneKinetics.methaneEnergyKWh(1);
    for (int use = 0; use < uses.size(); use++) {
      if (uses.get(use).use() == GasPurpose.TANK_HEATING) {
        continue;
      }
      double[] met = new double[Months.COUNT];
      for (int month = 0; month < Months.COUNT; month++) {
        double asked = store.demandNm3[use][month];
        met[month] = asked > 0 ? Math.min(1, store.usedNm3[use][month] / asked) : Double.NaN;
      }
      reports.add(
          new DigesterEstimate.Use(
              uses.get(use).use(),
              Months.sum(store.demandNm3[use]) * kWh,
              Months.sum(store.usedNm3[use]) * kWh,
              Months.list(met)));
    }
    return List.copyOf(reports);
  }
}
