package org.marshlight.digester;

import org.marshlight.contract.Months;
import org.marshlight.feed.Matter;

/**
 * What has settled in a tank: lumps that are hydrolysed day by day, what cannot be, the acid
 * between them, and ash. It waits until it is pumped, and hangs on nothing in the liquor above it.
 */
final class Sludge {

  private static final double WATER_KG_M3 = 1000;

  private final Lumps lumps;
  private final DigestionCoefficients coefficients;
  private final DigestionRates rates;
  private final double mostM3;
  private final double m3PerKg;

  /** What settles on a day where all finds room, kg COD by month and lump. */
  private final double[][] degradableKgDay;

  private final double[][] inertKgDay;

  /** The same for ash, kg, and for all solids, m3 of sludge, by month. */
  private final double[] fixedKgDay;

  private final double[] settlingM3Day = new double[Months.COUNT];

  private final double[] degradable;
  private final double[] inert;
  private final double[] turned;
  private double fixed;

  /** Volatile solids in the lumps, kg. */
  private double lumpSolidsKg;

  /** Acid in it. */
  final Acid acid = new Acid();

  /**
   * An empty tank's.
   *
   * @param mostM3 volume at which nothing more finds room
   * @param fixedKgDay ash that settles on a day of each month
   * @param solidsKgDay all solids that settle on a day of each month
   */
  Sludge(
      Lumps lumps,
      DigestionCoefficients coefficients,
      DigestionRates rates,
      double mostM3,
      double[] fixedKgDay,
      double[] solidsKgDay) {
    this.lumps = lumps;
    this.coefficients = coefficients;
    this.rates = rates;
    this.mostM3 = mostM3;
    this.fixedKgDay = fixedKgDay;
    m3PerKg = 1 / (WATER_KG_M3 * coefficients.sludgeSolids());
    degradable = new double[lumps.count];
    inert = new double[lumps.count];
    turned = new double[lumps.count];
    degradableKgDay = new double[Months.COUNT][lumps.count];
    inertKgDay = new double[Months.COUNT][lumps.count];
    for (int month = 0; month < Months.COUNT; month++) {
      settlingM3Day[month] = solidsKgDay[month] * m3PerKg;
      for (int lump = 0; lump < lumps.count; lump++) {
        double settled = lumps.codKgDay[lump][month] * lumps.settledShare[lump];
        degradableKgDay[month][lump] = settled * lumps.degradableShare[lump];
        inertKgDay[month][lump] = settled * (1 - lumps.degradableShare[lump]);
      }
    }
  }

  /**
   * Share of what would settle on a day that finds room.
   *
   * @param volumeM3 its volume before the day
   */
  double settlingShare(int month, double volumeM3) {
    double roomM3 = mostM3 - volumeM3;
    double settlingM3 = settlingM3Day[month];
    return settlingM3 <= roomM3 ? 1 : Math.max(0, roomM3 / settlingM3);
  }

  /**
   * Goes on by a day: a share of the day's solids settles, lumps are hydrolysed, and acid is turned
   * to methane.
   *
   * @param settling share that settles
   * @param dissolved receives what was bound in lumps
   * @param today receives the methane
   */
  void goOn(int day, int month, double settling, Dissolved dissolved, MethaneOfDay today) {
    double[] degradableToday = degradableKgDay[month];
    double[] inertToday = inertKgDay[month];
    double[] taken = rates.hydrolysed[day];
    double solidsKg = 0;
    for (int lump = 0; lump < lumps.count; lump++) {
      double there = degradable[lump] + settling * degradableToday[lump];
      double cod = there * taken[lump];
      double left = there - cod;
      double rest = inert[lump] + settling * inertToday[lump];
      turned[lump] = cod;
      degradable[lump] = left;
      inert[lump] = rest;
      solidsKg += (left + rest) * lumps.volatileSolids[lump];
    }
    lumpSolidsKg = solidsKg;
    fixed += settling * fixedKgDay[month];
    today.water += lumps.turnToAcid(turned, acid, dissolved);
    today.turn(
        acid,
        coefficients.sludgeActivity35() * volatileSolidsKg() * rates.capacityFactor[day],
        rates.acidTurned[day]);
  }

  /** Leaves a share of everything. */
  void keep(double share) {
    for (int lump = 0; lump < lumps.count; lump++) {
      degradable[lump] *= share;
      inert[lump] *= share;
    }
    acid.keep(share);
    fixed *= share;
    lumpSolidsKg *= share;
  }

  /**
   * Begins as at the start of the last year of a period that ends as it began, in a tank that never
   * fills, and without acid; scaled down where that is more than finds room.
   *
   * @param periodic the period
   */
  void begin(PeriodicSolids periodic) {
    double[] comes = new double[Months.COUNT];
    for (int lump = 0; lump < lumps.count; lump++) {
      degradable[lump] =
          periodic.atStartOfLastYear(ofLump(degradableKgDay, lump, comes), rates.hydrolysed, lump);
      inert[lump] = periodic.atStartOfLastYear(ofLump(inertKgDay, lump, comes), null, lump);
    }
    fixed = periodic.atStartOfLastYear(fixedKgDay, null, 0);
    sumSolids();
    double volumeM3 = m3();
    if (volumeM3 > mostM3) {
      keep(mostM3 / volumeM3);
    }
  }

  private static double[] ofLump(double[][] byMonth, int lump, double[] into) {
    for (int month = 0; month < Months.COUNT; month++) {
      into[month] = byMonth[month][lump];
    }
    return into;
  }

  /** Its solids as numbers that a search may move. */
  double[] solids() {
    double[] state = new double[2 * lumps.count + 1];
    System.arraycopy(degradable, 0, state, 0, lumps.count);
    System.arraycopy(inert, 0, state, lumps.count, lumps.count);
    state[2 * lumps.count] = fixed;
    return state;
  }

  /** Takes solids from such numbers. */
  void takeSolids(double[] state) {
    System.arraycopy(state, 0, degradable, 0, lumps.count);
    System.arraycopy(state, lumps.count, inert, 0, lumps.count);
    fixed = state[2 * lumps.count];
    sumSolids();
  }

  private void sumSolids() {
    lumpSolidsKg = 0;
    for (int lump = 0; lump < lumps.count; lump++) {
      lumpSolidsKg += (degradable[lump] + inert[lump]) * lumps.volatileSolids[lump];
    }
  }

  double volatileSolidsKg() {
    return acid.cod() * MethaneOfDay.ACID_SOLIDS + lumpSolidsKg;
  }

  double codKg() {
    double cod = acid.cod();
    for (int lump = 0; lump < lumps.count; lump++) {
      cod += degradable[lump] + inert[lump];
    }
    return cod;
  }

  double m3() {
    return (volatileSolidsKg() + fixed) * m3PerKg;
  }

  /** Water between its solids. */
  double waterKg() {
    return (volatileSolidsKg() + fixed) * (1 / coefficients.sludgeSolids() - 1);
  }

  /** Its solids as matter, without water. */
  Matter matter() {
    double cod = acid.cod();
    double carbon = acid.carbon;
    double nitrogen = 0;
    double phosphorus = 0;
    for (int lump = 0; lump < lumps.count; lump++) {
      double own = degradable[lump] + inert[lump];
      cod += own;
      carbon += own * lumps.carbon[lump];
      nitrogen += own * lumps.nitrogen[lump];
      phosphorus += own * lumps.phosphorus[lump];
    }
    return new Matter(0, volatileSolidsKg(), fixed, cod, carbon, 0, nitrogen, 0, 0, phosphorus, 0);
  }
}
