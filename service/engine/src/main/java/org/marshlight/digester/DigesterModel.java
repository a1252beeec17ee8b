package org.marshlight.digester;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.marshlight.climate.ClimateYear;
import org.marshlight.contract.Months;
import org.marshlight.contract.Notice;
import org.marshlight.contract.RecordShape;
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
      String sludgeTo) {

    /** The use of the gas that warms the tank; null if there is none. */
    GasUse warming() {
      List<GasUse> uses = gas == null || gas.uses() == null ? List.of() : gas.uses();
      return uses.stream()
          .filter(use -> use.use() == GasPurpose.TANK_HEATING)
          .findFirst()
          .orElse(null);
    }

    /** The same, with the surplus left. */
    Inputs unwarmed() {
      return RecordShape.changed(
          this,
          "gas",
          RecordShape.changed(
              gas,
              "uses",
              gas.uses().stream().filter(use -> use.use() != GasPurpose.TANK_HEATING).toList()));
    }

    /** The same in another tank. */
    Inputs in(TankDesign other) {
      return RecordShape.changed(this, "tank", other);
    }
  }

  /** Runs a tank to its periodic state. */
  public static DigesterOutcome run(Inputs inputs, CoefficientSet set) {
    return run(inputs, set, new TankYears());
  }

  /**
   * Runs a tank to its periodic state, or takes up a year that was run before.
   *
   * @param known years of tanks that share weather with this one
   */
  public static DigesterOutcome run(Inputs inputs, CoefficientSet set, TankYears known) {
    TankYear year = known.of(inputs, set);
    GasBooks gas = GasBooks.of(inputs, year.warmth(), year.matter(), year.pressureKPa(), set);
    List<Notice> notices = new ArrayList<>(year.notices());
    if (inputs.gas() == null) {
      notices.add(Notice.of("digester.gas-not-caught"));
    }
    DigesterEstimate estimate =
        DigesterReport.of(
            inputs,
            year,
            gas,
            startUp(inputs, year, set),
            tankHeating(inputs, year, gas, set, known),
            set,
            notices);
    List<Account> accounts = new ArrayList<>();
    accounts.add(tankAccount(inputs, year.matter(), gas, year.effluent()));
    if (inputs.gas() != null) {
      accounts.add(gas.account());
    }
    return new DigesterOutcome(
        estimate,
        year.effluent(),
        year.matter().pumpedSludge,
        List.copyOf(accounts),
        year.cover().kind() == CoverKind.GLAZED ? year.cover().apertureM2() : 0,
        gas.energy(),
        List.copyOf(notices),
        () -> DigesterWorking.steps(inputs, year, set));
  }

  /** The first years of a cold tank, where the plan asks for them. */
  private static DigesterEstimate.StartUp startUp(
      Inputs inputs, TankYear year, CoefficientSet set) {
    if (inputs.tank().startUpMonth() == null) {
      return null;
    }
    int month = inputs.tank().startUpMonth() - 1;
    double[] daily = year.heat().startUp(month, START_UP_YEARS, year.warmth().meanLiquorC());
    double[] methaneCod = year.digestion(inputs, set).startUp(daily, month);
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

  /** Warming with surplus gas, against leaving the surplus and against insulating instead. */
  private static DigesterEstimate.TankHeating tankHeating(
      Inputs inputs, TankYear warmed, GasBooks gas, CoefficientSet set, TankYears known) {
    if (inputs.warming() == null) {
      return null;
    }
    double more = set.bind(GasCoefficients.class).insulationInsteadM2KW();
    Inputs unwarmed = inputs.unwarmed();
    TankYear left = known.of(unwarmed, set);
    TankYear insulated = known.of(unwarmed.in(inputs.tank().insulated(more)), set);
    double leftNm3 = arrivingNm3(left, set);
    return new DigesterEstimate.TankHeating(
        MethaneKinetics.methaneEnergyKWh(Months.sum(gas.heaterNm3())),
        Months.sum(warmed.warmth().ledger.burnedGas),
        warmed.warmth().meanLiquorC() - left.warmth().meanLiquorC(),
        arrivingNm3(warmed, set) - leftNm3,
        more,
        insulated.warmth().meanLiquorC() - left.warmth().meanLiquorC(),
        arrivingNm3(insulated, set) - leftNm3);
  }

  /** Methane that reaches the store in a year. */
  private static double arrivingNm3(TankYear year, CoefficientSet set) {
    double kept = 1 - set.bind(DigestionCoefficients.class).leakShare();
    return kept
        * Stoichiometry.methaneOfCodNm3(Months.sum(year.matter().dailyGasMethaneCod))
        * Months.DAYS_PER_YEAR
        / year.matter().dailyGasMethaneCod.length;
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
    books
        .reactionWater(matter.reactionWater)
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
