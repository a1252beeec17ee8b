package org.marshlight.crop;

import java.util.Arrays;
import org.marshlight.contract.Months;
import org.marshlight.statistics.PeriodicLimit;

/**
 * The years of one square metre of a stand, run until each is like the one before. Growth of a day
 * is what light and warmth allow, held down by the scarcest of nitrogen, phosphorus and potassium;
 * leaf depends on the reserves that the last harvest left. All masses are dry, kg/m2.
 */
final class StandYears {

  private static final int MOST_YEARS = 200;

  /** Change from year to year, as a share of what stands, below which a stand is steady. */
  private static final double STEADY = 1e-9;

  /** Factor by which a stand may be put nearer to its limit: thin ones have a limit that repels. */
  private static final double FARTHEST = 1.5;

  /** A stand that makes less than this in a year, kg/m2, cannot live. */
  private static final double BARE = 1e-12;

  private final Season season;
  private final PlantTraits plant;
  private final CropCoefficients c;
  private final double liftedShare;
  private final double cutShare;

  /** Supply within reach on each day of a month, kg/(m2.d). */
  private final double[] nitrogenDay;

  private final double[] phosphorusDay;
  private final double[] potassiumDay;
  private final double[] waterShare;

  /** What stands: tops, underground matter, and what of it there was when the season began. */
  private double tops;

  private double underground;
  private double reserve;
  private double vigour = 1;
  private double uncut = 1;

  /** Sums of the year run last. */
  final double[] topsGrowth = new double[Months.COUNT];

  final double[] organGrowth = new double[Months.COUNT];
  final double[] nitrogenUptake = new double[Months.COUNT];
  final double[] phosphorusUptake = new double[Months.COUNT];
  final double[] potassiumUptake = new double[Months.COUNT];
  final double[] meanTops = new double[Months.COUNT];
  final double[] meanUnderground = new double[Months.COUNT];
  double movedUp;
  double topsDied;
  double topsReturned;
  double storageLost;
  double frostKilled;
  double lifted;
  double topsCut;
  double topsLeft;
  double leachedNitrogen;
  double leachedPhosphorus;
  double leachedPotassium;
  double peakTops;
  double undergroundBeforeHarvest;
  double lostToNitrogen;
  double lostToPhosphorus;
  double lostToPotassium;
  double lostToWater;
  double lostToHarvest;
  double changeOfTops;
  double changeOfUnderground;

  StandYears(
      Season season,
      PlantTraits plant,
      CropCoefficients c,
      double liftedShare,
      double cutShare,
      double[] nitrogenDay,
      double[] phosphorusDay,
      double[] potassiumDay,
      double[] waterShare) {
    this.season = season;
    this.plant = plant;
    this.c = c;
    this.liftedShare = liftedShare;
    this.cutShare = cutShare;
    this.nitrogenDay = nitrogenDay;
    this.phosphorusDay = phosphorusDay;
    this.potassiumDay = potassiumDay;
    this.waterShare = waterShare;
    this.underground = plant.fullCanopyReserve();
    this.reserve = underground;
  }

  /**
   * Runs years until the stand is steady; the sums are those of the last. What stands comes near
   * its limit as a geometric series: after every two years it is put where the series leads, though
   * never far towards nothing, where few reserves would still raise a stand again.
   */
  StandYears run() {
    PeriodicLimit limit = new PeriodicLimit(2, FARTHEST);
    for (int year = 0; year < MOST_YEARS; year++) {
      double[] led = limit.next(new double[] {tops, underground});
      tops = led[0];
      underground = led[1];
      double topsBefore = tops;
      double undergroundBefore = underground;
      clear();
      for (int day = 0; day < Months.DAYS_PER_YEAR; day++) {
        if (day == season.firstDay) {
          begin();
        }
        day(day);
        if (day == season.harvestDay) {
          harvest();
        }
      }
      changeOfTops = tops - topsBefore;
      changeOfUnderground = underground - undergroundBefore;
      double change = Math.abs(changeOfTops) + Math.abs(changeOfUnderground);
      if (Months.sum(topsGrowth) + Months.sum(organGrowth) < BARE) {
        perish();
        break;
      }
      if (change <= STEADY * (tops + underground)) {
        break;
      }
    }
    return this;
  }

  /** What is left of a stand that cannot live is nothing, not a trace that fades for ever. */
  private void perish() {
    clear();
    tops = 0;
    underground = 0;
    undergroundBeforeHarvest = 0;
    changeOfTops = 0;
    changeOfUnderground = 0;
  }

  /** Last year's tops fall; reserves decide how much leaf comes. */
  private void begin() {
    topsLeft += tops;
    tops = 0;
    uncut = 1;
    reserve = underground;
    vigour = GrowthTerms.regrowthVigour(reserve, plant.fullCanopyReserve(), c.vigourExponent());
  }

  private void day(int day) {
    int month = season.month[day];
    double full = season.potential[day];
    double dry = full * vigour * uncut;
    double wet = dry * waterShare[month];
    lostToHarvest += full - dry;
    lostToWater += dry - wet;
    double share = season.organShare[day];
    double moving = Math.min(underground, season.spring[day] * reserve);
    double raised = c.springEfficiency() * moving;
    double allowed = allowed(month, wet, share, moving, raised);
    double growth = allowed * wet;
    moving *= allowed;
    raised *= allowed;

    double toTops = (1 - share) * growth;
    double toOrgans = share * growth;
    double died = season.topsLoss[day] * tops;
    double back = season.returned[day] * died;
    double left = underground - moving;
    double lost = season.storageLoss[day] * left;
    double killed = season.frostDeath[day] * (left - lost);
    tops += toTops + raised - died;
    underground = left - lost - killed + toOrgans + back;

    topsGrowth[month] += toTops;
    organGrowth[month] += toOrgans;
    movedUp += moving;
    topsDied += died;
    topsReturned += back;
    storageLost += lost;
    frostKilled += killed;
    meanTops[month] += tops;
    meanUnderground[month] += underground;
    peakTops = Math.max(peakTops, tops);
  }

  /**
   * Share of growth that the scarcest nutrient allows. Reserves that move up bring nutrients; what
   * the new tops need beyond them is demand, and what they bring beyond need leaches.
   */
  private double allowed(int month, double growth, double share, double moving, double raised) {
    double nitrogen = growth * content(share, plant.topsNitrogen(), plant.organNitrogen());
    double phosphorus = growth * content(share, plant.topsPhosphorus(), plant.organPhosphorus());
    double potassium = growth * content(share, plant.topsPotassium(), plant.organPotassium());
    double nitrogenGap = raised * plant.topsNitrogen() - moving * plant.organNitrogen();
    double phosphorusGap = raised * plant.topsPhosphorus() - moving * plant.organPhosphorus();
    double potassiumGap = raised * plant.topsPotassium() - moving * plant.organPotassium();
    nitrogen += Math.max(0, nitrogenGap);
    phosphorus += Math.max(0, phosphorusGap);
    potassium += Math.max(0, potassiumGap);
    double byNitrogen = GrowthTerms.scarcity(nitrogenDay[month], nitrogen);
    double byPhosphorus = GrowthTerms.scarcity(phosphorusDay[month], phosphorus);
    double byPotassium = GrowthTerms.scarcity(potassiumDay[month], potassium);
    double allowed = Math.min(byNitrogen, Math.min(byPhosphorus, byPotassium));
    nitrogenUptake[month] += allowed * nitrogen;
    phosphorusUptake[month] += allowed * phosphorus;
    potassiumUptake[month] += allowed * potassium;
    leachedNitrogen += allowed * Math.max(0, -nitrogenGap);
    leachedPhosphorus += allowed * Math.max(0, -phosphorusGap);
    leachedPotassium += allowed * Math.max(0, -potassiumGap);
    double loss = (1 - allowed) * growth;
    if (loss > 0) {
      blame(loss, allowed, byNitrogen, byPhosphorus);
    }
    return allowed;
  }

  private void blame(double loss, double allowed, double byNitrogen, double byPhosphorus) {
    if (allowed == byNitrogen) {
      lostToNitrogen += loss;
    } else if (allowed == byPhosphorus) {
      lostToPhosphorus += loss;
    } else {
      lostToPotassium += loss;
    }
  }

  private static double content(double organShare, double tops, double organs) {
    return (1 - organShare) * tops + organShare * organs;
  }

  private void harvest() {
    undergroundBeforeHarvest = underground;
    lifted = liftedShare * underground;
    topsCut = cutShare * tops;
    underground -= lifted;
    tops -= topsCut;
    uncut = 1 - cutShare;
  }

  private void clear() {
    Arrays.fill(topsGrowth, 0);
    Arrays.fill(organGrowth, 0);
    Arrays.fill(nitrogenUptake, 0);
    Arrays.fill(phosphorusUptake, 0);
    Arrays.fill(potassiumUptake, 0);
    Arrays.fill(meanTops, 0);
    Arrays.fill(meanUnderground, 0);
    movedUp = 0;
    topsDied = 0;
    topsReturned = 0;
    storageLost = 0;
    frostKilled = 0;
    lifted = 0;
    topsCut = 0;
    topsLeft = 0;
    leachedNitrogen = 0;
    leachedPhosphorus = 0;
    leachedPotassium = 0;
    peakTops = 0;
    lostToNitrogen = 0;
    lostToPhosphorus = 0;
    lostToPotassium = 0;
    lostToWater = 0;
    lostToHarvest = 0;
  }
}
