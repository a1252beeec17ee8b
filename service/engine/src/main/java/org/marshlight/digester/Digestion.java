package org.marshlight.digester;

import java.util.List;
import org.marshlight.contract.Months;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Stoichiometry;
import org.marshlight.feed.Waste;

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
  private static final double WATER_KG_M3 = 1000;

  /** Dry mass of acid for each kg of its COD: acetic acid. */
  private static final double ACID_SOLIDS = 60.052 / (4 * Stoichiometry.OXYGEN);

  /** Carbon of methane for each kg of its COD. */
  private static final double METHANE_CARBON_PER_COD =
      Stoichiometry.METHANE_CARBON / Stoichiometry.METHANE_COD;

  /** Molar mass of water, kg/kmol. */
  private static final double WATER_KG_KMOL = Stoichiometry.OXYGEN + 2 * Stoichiometry.HYDROGEN;

  private static final double SULPHIDE_COD_PER_SULPHUR = 2;

  /** COD of a kilomole of sulphide, kg, which is that of a kilomole of methane. */
  private static final double SULPHIDE_COD_KG_KMOL = 4 * Stoichiometry.OXYGEN;

  private final Lumps lumps;
  private final DigestionCoefficients coefficients;
  private final double volumeM3;
  private final int compartments;
  private final int years;
  private final int desludgingDay;
  private final double pressurePa;
  private final double[] liquorC;
  private final int[] monthOfDay = Months.monthOfDay();

  private final double[] waterKgDay = new double[Months.COUNT];
  private final double[] fixedSettledKgDay = new double[Months.COUNT];
  private final double[] settlingSolidsKgDay = new double[Months.COUNT];
  private final double[] fixedDissolvedKgDay = new double[Months.COUNT];
  private final double[] ammoniumKgDay = new double[Months.COUNT];
  private final double[] freePhosphorusKgDay = new double[Months.COUNT];
  private final double[] potassiumKgDay = new double[Months.COUNT];
  private final double[] inorganicCarbonKgDay = new double[Months.COUNT];

  /** Water set free when a lump is turned to acid, kg for each kg of its COD. */
  private final double[] waterToAcid;

  private final double[][] hydrolysed;
  private final double[] acidTurned = new double[Months.DAYS_PER_YEAR];
  private final double[] capacityFactor = new double[Months.DAYS_PER_YEAR];
  private final double[] saturationKgM3 = new double[Months.DAYS_PER_YEAR];
  private final double[] vapourPerMethaneCod = new double[Months.DAYS_PER_YEAR];
  private final double[] sulphidePerMethaneCod = new double[Months.DAYS_PER_YEAR];

  private final double[] sludgeDegradable;
  private final double[] sludgeInert;
  private final double[][] liquorDegradable;
  private final double[] liquorInert;
  private final Acid sludgeAcid = new Acid();
  private final Acid[] liquorAcid;
  private final Dissolved dissolved = new Dissolved();
  private final Dissolved leaving = new Dissolved();
  private final double waterKg;
  private final Today today = new Today();
  private double sludgeFixed;
  private double reactionWaterToday;

  /** Acid: its COD from people's load and from the rest, and its carbon. */
  private static final class Acid {
    double people;
    double other;
    double carbon;

    double cod() {
      return people + other;
    }

    /** Takes a share out. */
    void keep(double share) {
      people *= share;
      other *= share;
      carbon *= share;
    }

    void add(Acid from, double share) {
      people += from.people * share;
      other += from.other * share;
      carbon += from.carbon * share;
    }
  }

  /** What a day has turned to methane, COD, and how far acid outran what could turn it. */
  private static final class Today {
    double people;
    double other;
    double carbonDioxide;
    double crowding;

    void clear() {
      people = 0;
      other = 0;
      carbonDioxide = 0;
      crowding = 0;
    }

    double methane() {
      return people + other;
    }
  }

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
    this.liquorC = liquorC;
    this.years = years;
    this.desludgingDay = Months.firstDay(desludgingMonth) + Months.days(desludgingMonth) - 1;
    this.pressurePa = pressureKPa * 1000;
    sludgeDegradable = new double[lumps.count];
    sludgeInert = new double[lumps.count];
    liquorDegradable = new double[compartments][lumps.count];
    liquorInert = new double[lumps.count];
    liquorAcid = new Acid[compartments];
    for (int c = 0; c < compartments; c++) {
      liquorAcid[c] = new Acid();
    }
    hydrolysed = new double[Months.DAYS_PER_YEAR][lumps.count];
    waterToAcid = new double[lumps.count];
    for (int lump = 0; lump < lumps.count; lump++) {
      waterToAcid[lump] =
          lumps.boundWater[lump]
              - Stoichiometry.waterOfOxidationKg(ACID_SOLIDS, 1, lumps.carbon[lump], 0);
    }
    waterKg = volumeM3 * WATER_KG_M3;
    inflows(wastes);
    rates();
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

  private void rates() {
    for (int day = 0; day < Months.DAYS_PER_YEAR; day++) {
      rate(day, liquorC[day], 1);
    }
  }

  /**
   * Sets what hangs on a day's temperature.
   *
   * @param adapted how far the sludge is used to its temperatures, 0 to 1
   */
  private void rate(int day, double temperatureC, double adapted) {
    double arrhenius =
        MethaneKinetics.arrheniusFactor(temperatureC, coefficients.hydrolysisActivation());
    double cold =
        MethaneKinetics.coldCapacity(
            temperatureC, coefficients.coldZero(), coefficients.coldCapacityAtTen());
    if (adapted < 1) {
      double young =
          MethaneKinetics.unadaptedCapacity(
              temperatureC,
              coefficients.unadaptedZero(),
              coefficients.unadaptedCapacityAtTen(),
              coefficients.unadaptedCapacityAtFifteen());
      cold = adapted * cold + (1 - adapted) * young;
    }
    double alive =
        cold
            * MethaneKinetics.overheatedCapacity(
                temperatureC, coefficients.overheatingStarts(), coefficients.overheatingEnds());
    for (int lump = 0; lump < lumps.count; lump++) {
      hydrolysed[day][lump] = MethaneKinetics.plugFlowConversion(lumps.rate35[lump] * arrhenius, 1);
    }
    acidTurned[day] =
        MethaneKinetics.plugFlowConversion(coefficients.acidRate35() * arrhenius * alive, 1);
    capacityFactor[day] = arrhenius * alive;
    saturationKgM3[day] =
        MethaneKinetics.dissolvedMethaneMgL(
                temperatureC, pressurePa * coefficients.methaneFraction())
            * coefficients.oversaturation()
            / 1000;
    double sulphideMolM3 =
        Sulphide.hydrogenSulphideShare(temperatureC, coefficients.liquorPh())
            * 1000
            / SULPHIDE_COD_KG_KMOL;
    sulphidePerMethaneCod[day] =
        Sulphide.partialPressurePa(temperatureC, sulphideMolM3)
            / pressurePa
            / coefficients.methaneFraction();
    double vapourPa =
        1000 * MethaneKinetics.vapourPressureKPa(Math.max(-40, Math.min(59, temperatureC)));
    vapourPerMethaneCod[day] =
        vapourPa
            / (pressurePa - vapourPa)
            * WATER_KG_KMOL
            / Stoichiometry.METHANE
            / Stoichiometry.METHANE_COD
            / coefficients.methaneFraction();
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
      rate(dayOfYear, daily[day], Math.min(1, (double) day / Months.DAYS_PER_YEAR));
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
   * Runs periods until one ends as it began, and returns the last. What solids are left from one
   * desludging to the next comes near its limit as a geometric series: after every two periods it
   * is put where the series leads (Aitken).
   */
  DigestionYear periodic() {
    DigestionYear result = null;
    PeriodicLimit limit = new PeriodicLimit(2 * lumps.count + 1);
    for (int cycle = 1; cycle <= MOST_CYCLES; cycle++) {
      takeSolids(limit.next(solids()));
      double before = heldCod();
      Matter start = held();
      result = new DigestionYear(years);
      for (int year = 0; year < years; year++) {
        runYear(year, result);
      }
      result.kept = held().minus(start).times(1.0 / years);
      result.cyclesRun = cycle;
      double scale = Math.max(before, 1e-12);
      if (Math.abs(heldCod() - before) <= PERIODIC * scale) {
        break;
      }
    }
    average(result);
    return result;
  }

  private double[] solids() {
    double[] state = new double[2 * lumps.count + 1];
    System.arraycopy(sludgeDegradable, 0, state, 0, lumps.count);
    System.arraycopy(sludgeInert, 0, state, lumps.count, lumps.count);
    state[2 * lumps.count] = sludgeFixed;
    return state;
  }

  private void takeSolids(double[] state) {
    System.arraycopy(state, 0, sludgeDegradable, 0, lumps.count);
    System.arraycopy(state, lumps.count, sludgeInert, 0, lumps.count);
    sludgeFixed = state[2 * lumps.count];
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
    result.yearSludgeM3[year] = sludgeM3();
  }

  private double runDay(int year, int day, int month, DigestionYear result) {
    double sludge = sludgeM3();
    result.greatestSludgeM3 = Math.max(result.greatestSludgeM3, sludge);
    double settling = settlingShare(month, sludge);
    if (settling < 1) {
      result.filledDays++;
      result.workableDays = Math.min(result.workableDays, daysSinceDesludging(year, day));
    }
    double liquorM3 = Math.max((1 - coefficients.sludgeFill()) * volumeM3, volumeM3 - sludge);
    feed(month, settling);

    today.clear();
    digestSludge(day);
    turnToMethane(
        sludgeAcid,
        coefficients.sludgeActivity35() * sludgeVolatileSolids() * capacityFactor[day],
        acidTurned[day]);
    double exchange = coefficients.sludgeAcidExchange();
    liquorAcid[0].add(sludgeAcid, exchange);
    sludgeAcid.keep(1 - exchange);

    double outM3 = Math.max(0, waterKgDay[month]) / WATER_KG_M3;
    double compartmentM3 = liquorM3 / compartments;
    passLiquor(compartmentM3 / (compartmentM3 + outM3), day, result, month);
    reduceSulphate(month);
    for (Acid acid : liquorAcid) {
      turnToMethane(
          acid,
          coefficients.liquorActivity35() * compartmentM3 * capacityFactor[day],
          acidTurned[day]);
    }
    dissolved.inorganicCarbon += today.carbonDioxide;
    double gasMethane = giveGas(day, month, liquorM3, outM3, result);
    result.dailyGasMethaneCod[year * Months.DAYS_PER_YEAR + day] = gasMethane;
    washOut(liquorM3 / (liquorM3 + outM3), month, result);
    bookWater(month, gasMethane * vapourPerMethaneCod[day], result);
    result.acidCodKgM3[month] += liquorAcidCod() / liquorM3 / Months.days(month);
    result.ammoniumKgM3[month] += dissolved.ammoniumNitrogen / liquorM3 / Months.days(month);
    result.acidOverCapacity[month] = Math.max(result.acidOverCapacity[month], today.crowding);
    return today.methane();
  }

  /**
   * Turns a day's share of an acid to methane.
   *
   * @param ableKg COD that can be turned in the day at the most
   * @param share share of the acid that is turned where there is no such limit
   */
  private void turnToMethane(Acid acid, double ableKg, double share) {
    double cod = acid.cod();
    double turned = Math.min(cod * share, ableKg);
    if (ableKg > 0) {
      today.crowding = Math.max(today.crowding, cod * share / ableKg);
    }
    if (turned > 0) {
      today.people += acid.people * (turned / cod);
      today.other += acid.other * (turned / cod);
      today.carbonDioxide += methanise(acid, turned / cod);
    }
  }

  /** Parts the day's methane between liquor and gas, and returns the COD of what is gas. */
  private double giveGas(int day, int month, double liquorM3, double outM3, DigestionYear result) {
    double dissolvedMethane =
        Math.min(today.methane(), saturationKgM3[day] * outM3 * Stoichiometry.METHANE_COD);
    double gasMethane = today.methane() - dissolvedMethane;
    double gasCarbon = gasCarbonDioxide(gasMethane);
    double gasSulphide =
        Math.min(
            dissolved.sulphideCod,
            gasMethane * sulphidePerMethaneCod[day] * dissolved.sulphideCod / liquorM3);
    dissolved.inorganicCarbon -= gasCarbon;
    dissolved.sulphideCod -= gasSulphide;
    result.methaneCodPeople[month] += today.people;
    result.methaneCodOther[month] += today.other;
    result.dissolvedMethaneCod[month] += dissolvedMethane;
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

  /** Share of what would settle today that finds room below the greatest fill. */
  private double settlingShare(int month, double sludgeM3) {
    double roomM3 = coefficients.sludgeFill() * volumeM3 - sludgeM3;
    double settlingM3 = settlingSolidsKgDay[month] / (WATER_KG_M3 * coefficients.sludgeSolids());
    return settlingM3 <= roomM3 ? 1 : Math.max(0, roomM3 / settlingM3);
  }

  private void feed(int month, double settling) {
    for (int lump = 0; lump < lumps.count; lump++) {
      double cod = lumps.codKgDay[lump][month];
      double settled = settling * cod * lumps.settledShare[lump];
      double degradable = lumps.degradableShare[lump];
      sludgeDegradable[lump] += settled * degradable;
      sludgeInert[lump] += settled * (1 - degradable);
      liquorDegradable[0][lump] += (cod - settled) * degradable;
      liquorInert[lump] += (cod - settled) * (1 - degradable);
    }
    sludgeFixed += settling * fixedSettledKgDay[month];
    dissolved.fixedSolids += (1 - settling) * fixedSettledKgDay[month] + fixedDissolvedKgDay[month];
    dissolved.ammoniumNitrogen += ammoniumKgDay[month];
    dissolved.phosphorus += freePhosphorusKgDay[month];
    dissolved.potassium += potassiumKgDay[month];
    dissolved.inorganicCarbon += inorganicCarbonKgDay[month];
  }

  private void digestSludge(int day) {
    for (int lump = 0; lump < lumps.count; lump++) {
      double cod = sludgeDegradable[lump] * hydrolysed[day][lump];
      sludgeDegradable[lump] -= cod;
      release(lump, cod, sludgeAcid);
    }
  }

  /** Moves hydrolysed COD to acid and sets free what was bound with it. */
  private void release(int lump, double cod, Acid acid) {
    if (lumps.human[lump]) {
      acid.people += cod;
    } else {
      acid.other += cod;
    }
    double carbon = cod * lumps.carbon[lump];
    acid.carbon += carbon;
    dissolved.ammoniumNitrogen += cod * lumps.nitrogen[lump];
    dissolved.phosphorus += cod * lumps.phosphorus[lump];
    reactionWaterToday += cod * waterToAcid[lump];
  }

  /** Turns a share of an acid to methane and returns the carbon that becomes carbon dioxide. */
  private double methanise(Acid acid, double share) {
    double cod = acid.cod() * share;
    double carbon = acid.carbon * share;
    double methaneCarbon = cod * METHANE_CARBON_PER_COD;
    acid.keep(1 - share);
    reactionWaterToday +=
        Stoichiometry.waterOfOxidationKg(cod * ACID_SOLIDS, cod, carbon, 0)
            - Stoichiometry.waterOfOxidationKg(
                cod / Stoichiometry.METHANE_COD, cod, methaneCarbon, 0);
    return carbon - methaneCarbon;
  }

  /** Moves liquor through the compartments for a day and books what leaves the last. */
  private void passLiquor(double stays, int day, DigestionYear result, int month) {
    passOrganics(stays, hydrolysed[day], result, month);
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
    result.effluentCarbon[month] += carbon;
    result.effluentVolatileSolids[month] += (people + other) * ACID_SOLIDS;
  }

  private void passOrganics(
      double stays, double[] hydrolysedToday, DigestionYear result, int month) {
    double degradableOut = 0;
    double inertOut = 0;
    double carbon = 0;
    double solids = 0;
    double nitrogen = 0;
    double phosphorus = 0;
    for (int lump = 0; lump < lumps.count; lump++) {
      double arriving = 0;
      for (int c = 0; c < compartments; c++) {
        double mixed = liquorDegradable[c][lump] + arriving;
        arriving = mixed * (1 - stays);
        double left = mixed * stays;
        double cod = left * hydrolysedToday[lump];
        liquorDegradable[c][lump] = left - cod;
        release(lump, cod, liquorAcid[c]);
      }
      double inert = liquorInert[lump] * (1 - stays);
      liquorInert[lump] -= inert;
      double out = arriving + inert;
      degradableOut += arriving;
      inertOut += inert;
      carbon += out * lumps.carbon[lump];
      solids += out * lumps.volatileSolids[lump];
      nitrogen += out * lumps.nitrogen[lump];
      phosphorus += out * lumps.phosphorus[lump];
    }
    result.effluentDegradableCod[month] += degradableOut;
    result.effluentInertCod[month] += inertOut;
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
    reactionWaterToday +=
        Stoichiometry.waterOfOxidationKg(cod * share * ACID_SOLIDS, cod * share, carbon, 0);
  }

  /** Carbon dioxide that goes with the methane at the measured composition, if there is enough. */
  private double gasCarbonDioxide(double gasMethaneCod) {
    double carbon =
        gasMethaneCod
            * METHANE_CARBON_PER_COD
            * (1 - coefficients.methaneFraction())
            / coefficients.methaneFraction();
    return Math.min(carbon, dissolved.inorganicCarbon);
  }

  /**
   * Books the day's water: a full tank gives what it gets, and is topped up if it gets too little.
   */
  private void bookWater(int month, double vapour, DigestionYear result) {
    double over = waterKgDay[month] + reactionWaterToday - vapour;
    result.reactionWater += reactionWaterToday;
    result.vapourWater += vapour;
    result.effluentWater[month] += Math.max(0, over);
    result.makeUpWater += Math.max(0, -over);
    reactionWaterToday = 0;
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
    double water = sludgeWaterKg() * pumped;
    Matter solids = sludgeMatter().times(pumped);
    dissolved.wash(1 - water / waterKg, leaving);
    result.pumpedSludge =
        solids.plus(Matter.water(water)).plus(leaving.matter()).times(1.0 / years);
    for (int lump = 0; lump < lumps.count; lump++) {
      sludgeDegradable[lump] *= 1 - pumped;
      sludgeInert[lump] *= 1 - pumped;
    }
    sludgeAcid.keep(1 - pumped);
    sludgeFixed *= 1 - pumped;
    result.makeUpWater += water;
  }

  private double sludgeVolatileSolids() {
    double sum = sludgeAcid.cod() * ACID_SOLIDS;
    for (int lump = 0; lump < lumps.count; lump++) {
      sum += (sludgeDegradable[lump] + sludgeInert[lump]) * lumps.volatileSolids[lump];
    }
    return sum;
  }

  private double sludgeM3() {
    return (sludgeVolatileSolids() + sludgeFixed) / (WATER_KG_M3 * coefficients.sludgeSolids());
  }

  private double sludgeWaterKg() {
    return (sludgeVolatileSolids() + sludgeFixed) * (1 / coefficients.sludgeSolids() - 1);
  }

  private Matter sludgeMatter() {
    double cod = sludgeAcid.cod();
    double carbon = sludgeAcid.carbon;
    double nitrogen = 0;
    double phosphorus = 0;
    for (int lump = 0; lump < lumps.count; lump++) {
      double own = sludgeDegradable[lump] + sludgeInert[lump];
      cod += own;
      carbon += own * lumps.carbon[lump];
      nitrogen += own * lumps.nitrogen[lump];
      phosphorus += own * lumps.phosphorus[lump];
    }
    return new Matter(
        0, sludgeVolatileSolids(), sludgeFixed, cod, carbon, 0, nitrogen, 0, 0, phosphorus, 0);
  }

  private double liquorAcidCod() {
    double sum = 0;
    for (Acid acid : liquorAcid) {
      sum += acid.cod();
    }
    return sum;
  }

  private double heldCod() {
    return held().codKg();
  }

  /** Everything in the tank. */
  private Matter held() {
    Matter sludge = sludgeMatter();
    double cod = liquorAcidCod() + dissolved.sulphideCod;
    double volatileSolids = liquorAcidCod() * ACID_SOLIDS;
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
    return sludge.plus(
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
      result.gasCarbonDioxideCarbon,
      result.sulphideGasCod,
      result.effluentWater,
      result.effluentDegradableCod,
      result.effluentInertCod,
      result.effluentAcidCod,
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
