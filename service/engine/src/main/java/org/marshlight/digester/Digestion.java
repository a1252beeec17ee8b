package org.marshlight.digester;

import java.util.Arrays;
import java.util.List;
import org.marshlight.contract.Months;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Stoichiometry;
import org.marshlight.feed.Waste;
import org.marshlight.statistics.PeriodicLimit;

/**
 * What becomes of matter in a tank, day by day over the years between two desludgings, repeated
 * until a period ends as it began.
 *
 * <p>Settled solids wait in the sludge until it is pumped; dissolved and suspended matter passes
 * with the liquor, through the compartments in series. Both are hydrolysed at first order to acid,
 * and acid is turned to methane at first order up to what sludge and liquor can do at their
 * temperature. Acid that is not turned to methane waits, or leaves with the liquor.
 */
final class Digestion {

  private static final int MOST_CYCLES = 200;
  private static final double PERIODIC = 1e-6;

  /** Factor by which sludge may be put nearer to its limit. */
  private static final double FARTHEST = 1.5;

  private static final double WATER_KG_M3 = 1000;
  private static final double SULPHIDE_COD_PER_SULPHUR = 2;

  private final Lumps lumps;
  private final DigestionCoefficients coefficients;
  private final DigestionRates rates;
  private final double volumeM3;
  private final int compartments;
  private final int years;
  private final int desludgingDay;
  private final int[] monthOfDay = Months.monthOfDay();

  private final double[] waterKgDay = new double[Months.COUNT];
  private final double[] fixedSettledKgDay = new double[Months.COUNT];
  private final double[] settlingSolidsKgDay = new double[Months.COUNT];
  private final double[] fixedDissolvedKgDay = new double[Months.COUNT];
  private final double[] ammoniumKgDay = new double[Months.COUNT];
  private final double[] freePhosphorusKgDay = new double[Months.COUNT];
  private final double[] potassiumKgDay = new double[Months.COUNT];
  private final double[] inorganicCarbonKgDay = new double[Months.COUNT];

  private final Sludge sludge;
  private final double[][] liquorDegradable;
  private final double[] liquorInert;
  private final Acid[] liquorAcid;
  private final Dissolved dissolved = new Dissolved();
  private final Dissolved leaving = new Dissolved();
  private final double waterKg;
  private final MethaneOfDay today = new MethaneOfDay();

  /** Scratch by lump: COD turned to acid, and COD that comes from the compartment before. */
  private final double[] turned;

  private final double[] arriving;

  /**
   * A tank ready to be run.
   *
   * @param liquorC temperature of the liquor on each day of the year
   * @param years whole years between two desludgings
   * @param desludgingMonth month at whose end the sludge is pumped, 0 = January
   */
  Digestion(
      List<Waste> wastes,
      double volumeM3,
      int compartments,
      double[] liquorC,
      int years,
      int desludgingMonth,
      double pressureKPa,
      DigestionCoefficients coefficients) {
    this.lumps = Lumps.of(wastes, coefficients);
    this.coefficients = coefficients;
    this.volumeM3 = volumeM3;
    this.compartments = compartments;
    this.years = years;
    this.desludgingDay = Months.firstDay(desludgingMonth) + Months.days(desludgingMonth) - 1;
    rates = new DigestionRates(lumps, coefficients, pressureKPa * 1000, liquorC);
    liquorDegradable = new double[compartments][lumps.count];
    liquorInert = new double[lumps.count];
    turned = new double[lumps.count];
    arriving = new double[lumps.count];
    liquorAcid = new Acid[compartments];
    for (int c = 0; c < compartments; c++) {
      liquorAcid[c] = new Acid();
    }
    waterKg = volumeM3 * WATER_KG_M3;
    inflows(wastes);
    sludge =
        new Sludge(
            lumps,
            coefficients,
            rates,
            coefficients.sludgeFill() * volumeM3,
            fixedSettledKgDay,
            settlingSolidsKgDay);
  }

  private void inflows(List<Waste> wastes) {
    for (Waste waste : wastes) {
      double settled = waste.digestibility().settledShare();
      for (int month = 0; month < Months.COUNT; month++) {
        Matter day = waste.perDay().get(month);
        waterKgDay[month] += day.waterKg();
        fixedSettledKgDay[month] += day.fixedSolidsKg() * settled;
        settlingSolidsKgDay[month] += day.totalSolidsKg() * settled;
        fixedDissolvedKgDay[month] += day.fixedSolidsKg() * (1 - settled);
        ammoniumKgDay[month] += day.ammoniumNitrogenKg() + day.nitrateNitrogenKg();
        double bound = day.codKg() > 0 ? coefficients.phosphorusInSolids() : 0;
        freePhosphorusKgDay[month] += day.phosphorusKg() * (1 - bound);
        potassiumKgDay[month] += day.potassiumKg();
        inorganicCarbonKgDay[month] += day.inorganicCarbonKg();
      }
    }
  }

  /**
   * The first years of a tank that starts with water alone and sludge that is not used to the cold.
   *
   * @param daily temperature of the liquor on each day from the start on
   * @param firstMonth month of the start, 0 = January
   * @return COD turned to methane in each month from the start on
   */
  double[] startUp(double[] daily, int firstMonth) {
    double[] monthly = new double[daily.length / Months.DAYS_PER_YEAR * Months.COUNT];
    DigestionYear books = new DigestionYear(1);
    int dayOfYear = Months.firstDay(firstMonth);
    int told = -1;
    int month = -1;
    for (int day = 0; day < daily.length; day++) {
      rates.set(dayOfYear, daily[day], Math.min(1, (double) day / Months.DAYS_PER_YEAR));
      if (monthOfDay[dayOfYear] != month) {
        month = monthOfDay[dayOfYear];
        told++;
      }
      monthly[told] += runDay(0, dayOfYear, month, books);
      if (dayOfYear == desludgingDay && day >= years * Months.DAYS_PER_YEAR) {
        desludge(books);
      }
      dayOfYear = (dayOfYear + 1) % Months.DAYS_PER_YEAR;
    }
    return monthly;
  }

  /**
   * Runs periods until one ends as it began, and returns the last. What settles hangs on nothing in
   * the liquor, so the sludge is brought there first and alone; a last year that is not told then
   * fills the liquor. Where little water passes, what is dissolved takes long to come to its limit;
   * each period then begins where those before it lead.
   */
  DigestionYear periodic() {
    bringSludge();
    runYear(years - 1, new DigestionYear(years));
    PeriodicLimit limit = new PeriodicLimit(dissolved.state().length, Double.POSITIVE_INFINITY);
    DigestionYear result = null;
    for (int cycle = 0; cycle < MOST_CYCLES; cycle++) {
      dissolved.take(limit.next(dissolved.state()));
      Matter start = held();
      result = new DigestionYear(years);
      for (int year = 0; year < years; year++) {
        runYear(year, result);
      }
      Matter kept = held().minus(start);
      result.kept = kept.times(1.0 / years);
      if (stands(kept, start)) {
        break;
      }
    }
    average(result);
    return result;
  }

  private static boolean stands(Matter change, Matter before) {
    return stands(change.codKg(), before.codKg())
        && stands(change.nitrogenKg(), before.nitrogenKg())
        && stands(change.phosphorusKg(), before.phosphorusKg())
        && stands(change.potassiumKg(), before.potassiumKg())
        && stands(change.fixedSolidsKg(), before.fixedSolidsKg());
  }

  private static boolean stands(double change, double before) {
    return Math.abs(change) <= PERIODIC * Math.max(before, 1e-12);
  }

  /**
   * Brings the sludge to the start of the last year of a period that ends as it began. In a tank
   * that never fills it begins there; in one that does, each period begins where those before it
   * lead.
   */
  private void bringSludge() {
    sludge.begin(new PeriodicSolids(years, desludgingDay, coefficients.seedShare()));
    PeriodicLimit limit = new PeriodicLimit(2 * lumps.count + 1, FARTHEST);
    for (int cycle = 0; cycle < MOST_CYCLES; cycle++) {
      sludge.takeSolids(limit.next(sludge.solids()));
      double before = sludge.codKg();
      runSludge(true);
      for (int year = 1; year < years; year++) {
        runSludge(false);
      }
      if (stands(sludge.codKg() - before, before)) {
        break;
      }
    }
    dissolved.wash(0, leaving);
    liquorAcid[0].keep(0);
  }

  /** A year of the sludge alone; what it gives to the liquor is of no account. */
  private void runSludge(boolean desludged) {
    for (int day = 0; day < Months.DAYS_PER_YEAR; day++) {
      int month = monthOfDay[day];
      today.clear();
      digestSludge(day, month, sludge.settlingShare(month, sludge.m3()));
      if (desludged && day == desludgingDay) {
        sludge.keep(coefficients.seedShare());
      }
    }
  }

  private void digestSludge(int day, int month, double settling) {
    sludge.goOn(day, month, settling, dissolved, today);
    double exchange = coefficients.sludgeAcidExchange();
    liquorAcid[0].add(sludge.acid, exchange);
    sludge.acid.keep(1 - exchange);
  }

  private void runYear(int year, DigestionYear result) {
    double methane = 0;
    for (int day = 0; day < Months.DAYS_PER_YEAR; day++) {
      int month = monthOfDay[day];
      methane += runDay(year, day, month, result);
      if (year == years - 1 && day == desludgingDay) {
        desludge(result);
      }
    }
    result.yearMethaneCod[year] = methane;
    result.yearSludgeM3[year] = sludge.m3();
  }

  private double runDay(int year, int day, int month, DigestionYear result) {
    double sludgeM3 = sludge.m3();
    result.greatestSludgeM3 = Math.max(result.greatestSludgeM3, sludgeM3);
    double settling = sludge.settlingShare(month, sludgeM3);
    if (settling < 1) {
      result.filledDays++;
      result.workableDays = Math.min(result.workableDays, daysSinceDesludging(year, day));
    }
    double liquorM3 = Math.max((1 - coefficients.sludgeFill()) * volumeM3, volumeM3 - sludgeM3);
    today.clear();
    feedLiquor(month, settling);
    digestSludge(day, month, settling);

    double outM3 = Math.max(0, waterKgDay[month]) / WATER_KG_M3;
    double compartmentM3 = liquorM3 / compartments;
    passLiquor(compartmentM3 / (compartmentM3 + outM3), day, result, month);
    reduceSulphate(month);
    double able = coefficients.liquorActivity35() * compartmentM3 * rates.capacityFactor[day];
    for (Acid acid : liquorAcid) {
      today.turn(acid, able, rates.acidTurned[day]);
    }
    dissolved.inorganicCarbon += today.carbonDioxide;
    double gasMethane = giveGas(day, month, liquorM3, outM3, result);
    result.dailyGasMethaneCod[year * Months.DAYS_PER_YEAR + day] = gasMethane;
    washOut(liquorM3 / (liquorM3 + outM3), month, result);
    bookWater(month, gasMethane * rates.vapourPerMethaneCod[day], result);
    double shareOfMonth = 1 / (liquorM3 * Months.days(month));
    result.acidCodKgM3[month] += liquorAcidCod() * shareOfMonth;
    result.ammoniumKgM3[month] += dissolved.ammoniumNitrogen * shareOfMonth;
    result.acidOverCapacity[month] = Math.max(result.acidOverCapacity[month], today.crowding);
    return today.cod();
  }

  /** Parts the day's methane between liquor and gas, and returns the COD of what is gas. */
  private double giveGas(int day, int month, double liquorM3, double outM3, DigestionYear result) {
    double dissolvedMethane =
        Math.min(today.cod(), rates.saturationKgM3[day] * outM3 * Stoichiometry.METHANE_COD);
    double gasMethane = today.cod() - dissolvedMethane;
    double gasCarbon = gasCarbonDioxide(gasMethane);
    double gasSulphide =
        Math.min(
            dissolved.sulphideCod,
            gasMethane * rates.sulphidePerMethaneCod[day] * dissolved.sulphideCod / liquorM3);
    dissolved.inorganicCarbon -= gasCarbon;
    dissolved.sulphideCod -= gasSulphide;
    result.methaneCodPeople[month] += today.people;
    result.methaneCodOther[month] += today.other;
    result.dissolvedMethaneCod[month] += dissolvedMethane;
    result.gasMethaneCod[month] += gasMethane;
    result.gasCarbonDioxideCarbon[month] += gasCarbon;
    result.sulphideGasCod[month] += gasSulphide;
    return gasMethane;
  }

  private int daysSinceDesludging(int year, int day) {
    int period = years * Months.DAYS_PER_YEAR;
    int today = year * Months.DAYS_PER_YEAR + day;
    int last = (years - 1) * Months.DAYS_PER_YEAR + desludgingDay;
    return Math.floorMod(today - last - 1, period) + 1;
  }

  private void feedLiquor(int month, double settling) {
    for (int lump = 0; lump < lumps.count; lump++) {
      double stays = lumps.codKgDay[lump][month] * (1 - settling * lumps.settledShare[lump]);
      double degradable = stays * lumps.degradableShare[lump];
      liquorDegradable[0][lump] += degradable;
      liquorInert[lump] += stays - degradable;
    }
    dissolved.fixedSolids += (1 - settling) * fixedSettledKgDay[month] + fixedDissolvedKgDay[month];
    dissolved.ammoniumNitrogen += ammoniumKgDay[month];
    dissolved.phosphorus += freePhosphorusKgDay[month];
    dissolved.potassium += potassiumKgDay[month];
    dissolved.inorganicCarbon += inorganicCarbonKgDay[month];
  }

  /** Moves liquor through the compartments for a day and books what leaves the last. */
  private void passLiquor(double stays, int day, DigestionYear result, int month) {
    passOrganics(stays, rates.hydrolysed[day], result, month);
    double people = 0;
    double other = 0;
    double carbon = 0;
    for (int c = 0; c < compartments; c++) {
      Acid acid = liquorAcid[c];
      acid.people += people;
      acid.other += other;
      acid.carbon += carbon;
      people = acid.people * (1 - stays);
      other = acid.other * (1 - stays);
      carbon = acid.carbon * (1 - stays);
      acid.keep(stays);
    }
    result.effluentAcidCod[month] += people + other;
    result.effluentBod5[month] += coefficients.bod5OfAcid() * (people + other);
    result.effluentCarbon[month] += carbon;
    result.effluentVolatileSolids[month] += (people + other) * MethaneOfDay.ACID_SOLIDS;
  }

  private void passOrganics(
      double stays, double[] hydrolysedToday, DigestionYear result, int month) {
    Arrays.fill(arriving, 0);
    for (int c = 0; c < compartments; c++) {
      double[] degradable = liquorDegradable[c];
      for (int lump = 0; lump < lumps.count; lump++) {
        double mixed = degradable[lump] + arriving[lump];
        arriving[lump] = mixed * (1 - stays);
        double left = mixed * stays;
        double cod = left * hydrolysedToday[lump];
        degradable[lump] = left - cod;
        turned[lump] = cod;
      }
      today.water += lumps.turnToAcid(turned, liquorAcid[c], dissolved);
    }
    double degradableOut = 0;
    double inertOut = 0;
    double bod5 = 0;
    double carbon = 0;
    double solids = 0;
    double nitrogen = 0;
    double phosphorus = 0;
    for (int lump = 0; lump < lumps.count; lump++) {
      double inert = liquorInert[lump] * (1 - stays);
      liquorInert[lump] -= inert;
      double out = arriving[lump] + inert;
      degradableOut += arriving[lump];
      inertOut += inert;
      bod5 += arriving[lump] * lumps.degradableBod5[lump] + inert * lumps.inertBod5[lump];
      carbon += out * lumps.carbon[lump];
      solids += out * lumps.volatileSolids[lump];
      nitrogen += out * lumps.nitrogen[lump];
      phosphorus += out * lumps.phosphorus[lump];
    }
    result.effluentDegradableCod[month] += degradableOut;
    result.effluentInertCod[month] += inertOut;
    result.effluentBod5[month] += bod5;
    result.effluentCarbon[month] += carbon;
    result.effluentVolatileSolids[month] += solids;
    result.effluentParticleSolids[month] += solids * coefficients.suspendedShare();
    result.effluentOrganicNitrogen[month] += nitrogen;
    result.effluentPhosphorus[month] += phosphorus;
  }

  /** Sulphate of the water takes acid's electrons before methane can. */
  private void reduceSulphate(int month) {
    Acid acid = liquorAcid[0];
    double cod = acid.cod();
    double wanted =
        SULPHIDE_COD_PER_SULPHUR
            * coefficients.sulphateReduced()
            * coefficients.sulphateSulphur()
            * waterKgDay[month];
    if (cod <= 0 || wanted <= 0) {
      return;
    }
    double share = Math.min(1, wanted / cod);
    double carbon = acid.carbon * share;
    dissolved.sulphideCod += cod * share;
    dissolved.inorganicCarbon += carbon;
    acid.keep(1 - share);
    // sulphate brings the oxygen that takes the acid apart; its electrons stay with the sulphide
    today.water +=
        Stoichiometry.waterOfOxidationKg(
            cod * share * MethaneOfDay.ACID_SOLIDS, cod * share, carbon, 0);
  }

  /** Carbon dioxide that goes with the methane at the measured composition, if there is enough. */
  private double gasCarbonDioxide(double gasMethaneCod) {
    double carbon =
        gasMethaneCod
            * MethaneOfDay.CARBON_PER_COD
            * (1 - coefficients.methaneFraction())
            / coefficients.methaneFraction();
    return Math.min(carbon, dissolved.inorganicCarbon);
  }

  /**
   * Books the day's water: a full tank gives what it gets, and is topped up if it gets too little.
   */
  private void bookWater(int month, double vapour, DigestionYear result) {
    double over = waterKgDay[month] + today.water - vapour;
    result.reactionWater += today.water;
    result.vapourWater += vapour;
    result.effluentWater[month] += Math.max(0, over);
    result.makeUpWater += Math.max(0, -over);
  }

  private void washOut(double stays, int month, DigestionYear result) {
    dissolved.wash(stays, leaving);
    result.effluentAmmonium[month] += leaving.ammoniumNitrogen;
    result.effluentPhosphorus[month] += leaving.phosphorus;
    result.effluentPotassium[month] += leaving.potassium;
    result.effluentInorganicCarbon[month] += leaving.inorganicCarbon;
    result.effluentFixedSolids[month] += leaving.fixedSolids;
    result.effluentSulphideCod[month] += leaving.sulphideCod;
  }

  /** Pumps all sludge but the seed, with what is dissolved in its water as in the whole tank's. */
  private void desludge(DigestionYear result) {
    double pumped = 1 - coefficients.seedShare();
    double water = sludge.waterKg() * pumped;
    Matter solids = sludge.matter().times(pumped);
    dissolved.wash(1 - water / waterKg, leaving);
    result.pumpedSludge =
        solids.plus(Matter.water(water)).plus(leaving.matter()).times(1.0 / years);
    sludge.keep(coefficients.seedShare());
    result.makeUpWater += water;
  }

  private double liquorAcidCod() {
    double sum = 0;
    for (Acid acid : liquorAcid) {
      sum += acid.cod();
    }
    return sum;
  }

  /** Everything in the tank. */
  private Matter held() {
    double cod = liquorAcidCod() + dissolved.sulphideCod;
    double volatileSolids = liquorAcidCod() * MethaneOfDay.ACID_SOLIDS;
    double carbon = 0;
    double nitrogen = 0;
    double phosphorus = dissolved.phosphorus;
    for (Acid acid : liquorAcid) {
      carbon += acid.carbon;
    }
    for (int lump = 0; lump < lumps.count; lump++) {
      double own = liquorInert[lump];
      for (int c = 0; c < compartments; c++) {
        own += liquorDegradable[c][lump];
      }
      cod += own;
      volatileSolids += own * lumps.volatileSolids[lump];
      carbon += own * lumps.carbon[lump];
      nitrogen += own * lumps.nitrogen[lump];
      phosphorus += own * lumps.phosphorus[lump];
    }
    return sludge
        .matter()
        .plus(
            new Matter(
                waterKg,
                volatileSolids,
                dissolved.fixedSolids,
                cod,
                carbon,
                dissolved.inorganicCarbon,
                nitrogen,
                dissolved.ammoniumNitrogen,
                0,
                phosphorus,
                dissolved.potassium));
  }

  /** Turns sums over the period into means over its years. */
  private static void average(DigestionYear result) {
    double share = 1.0 / result.years;
    double[][] sums = {
      result.methaneCodPeople,
      result.methaneCodOther,
      result.dissolvedMethaneCod,
      result.gasMethaneCod,
      result.gasCarbonDioxideCarbon,
      result.sulphideGasCod,
      result.effluentWater,
      result.effluentDegradableCod,
      result.effluentInertCod,
      result.effluentAcidCod,
      result.effluentBod5,
      result.effluentSulphideCod,
      result.effluentVolatileSolids,
      result.effluentParticleSolids,
      result.effluentFixedSolids,
      result.effluentCarbon,
      result.effluentInorganicCarbon,
      result.effluentOrganicNitrogen,
      result.effluentAmmonium,
      result.effluentPhosphorus,
      result.effluentPotassium,
      result.acidCodKgM3,
      result.ammoniumKgM3
    };
    for (double[] sum : sums) {
      for (int month = 0; month < Months.COUNT; month++) {
        sum[month] *= share;
      }
    }
    result.reactionWater *= share;
    result.vapourWater *= share;
    result.makeUpWater *= share;
    result.filledDays *= share;
  }
}
