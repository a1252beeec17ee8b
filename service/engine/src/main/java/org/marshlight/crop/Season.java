package org.marshlight.crop;

import org.marshlight.climate.ClimateYear;
import org.marshlight.contract.Months;

/**
 * The year of a plant at a site, day by day, before anything is lacking. Days run from 1 January;
 * in the south from 2 July, so that winter lies at both ends everywhere.
 */
final class Season {

  private static final int DAYS = Months.DAYS_PER_YEAR;
  private static final double KG_PER_G = 0.001;

  /** Half a year, by which the calendar is turned in the south. */
  private static final int HALF_YEAR = 182;

  /** Month of the calendar, 0 = January, of each day. */
  final int[] month = new int[DAYS];

  /** Growth of a full stand that lacks nothing, kg/(m2.d). */
  final double[] potential = new double[DAYS];

  /** Share of new matter that goes below ground. */
  final double[] organShare = new double[DAYS];

  /** Share of underground matter lost. */
  final double[] storageLoss = new double[DAYS];

  /** Share of underground matter that frost kills. */
  final double[] frostDeath = new double[DAYS];

  /** Share of tops that dies. */
  final double[] topsLoss = new double[DAYS];

  /** Share of what dies of the tops that goes back to storage. */
  final double[] returned = new double[DAYS];

  /** Share of the winter's reserve that moves up. */
  final double[] spring = new double[DAYS];

  /** Mean leaf over full leaf in each month of the calendar. */
  final double[] canopy = new double[Months.COUNT];

  /** Day on which last year's tops are gone and growth begins anew. */
  final int firstDay;

  /** Day of the harvest. */
  final int harvestDay;

  private final int shift;
  private final double[] degreeDays = new double[DAYS];

  private Season(boolean south, int firstDay, Integer harvestMonth, PlantTraits plant) {
    this.shift = south ? HALF_YEAR : 0;
    this.firstDay = firstDay;
    int own = Months.firstDay((int) Math.rint(plant.harvestMonth()) - 1) + 14;
    this.harvestDay =
        harvestMonth == null
            ? own
            : Math.floorMod(Months.firstDay(harvestMonth - 1) + 14 - shift, DAYS);
    int[] months = Months.monthOfDay();
    for (int day = 0; day < DAYS; day++) {
      month[day] = months[calendarDay(day)];
    }
  }

  /**
   * The season of a plant.
   *
   * @param year weather of the site
   * @param plant the plant
   * @param c coefficients of all plants
   * @param coverLight share of sunlight that a cover lets through
   * @param harvestMonth month of the calendar, 1 = January, or null for the plant's own
   * @param cutShare share of the tops cut, which takes leaf for the rest of the season
   */
  static Season of(
      ClimateYear year,
      PlantTraits plant,
      CropCoefficients c,
      double coverLight,
      Integer harvestMonth,
      double cutShare) {
    boolean south = year.site().latitudeRad() < 0;
    Season season = new Season(south, (int) Math.rint(c.seasonDay()), harvestMonth, plant);
    season.sumDegreeDays(year, plant.baseTemperature());
    double springBefore = 0;
    for (int step = 0; step < DAYS; step++) {
      int day = (season.firstDay + step) % DAYS;
      double leaf = season.leaf(day, year, plant, c);
      season.light(day, leaf, year, plant, c, coverLight);
      season.belowGround(day, year.dailyAirC()[season.calendarDay(day)], plant, c);
      double springNow = Math.min(1, season.degreeDays[day] / c.springDegreeDays());
      season.spring[day] = c.springShare() * (springNow - springBefore);
      springBefore = springNow;
      int month = season.month[day];
      season.canopy[month] += (season.isCut(step) ? 1 - cutShare : 1) * leaf / Months.days(month);
    }
    return season;
  }

  private void light(
      int day,
      double leaf,
      ClimateYear year,
      PlantTraits plant,
      CropCoefficients c,
      double coverLight) {
    double warmth =
        GrowthTerms.temperatureFactor(
            year.dailyAirC()[calendarDay(day)],
            plant.baseTemperature(),
            plant.optimumTemperature(),
            plant.declineTemperature(),
            plant.limitTemperature());
    potential[day] =
        KG_PER_G
            * GrowthTerms.potentialGrowthGM2Day(
                plant.radiationUse(),
                c.parShare(),
                year.dailySolarMJM2()[calendarDay(day)],
                coverLight,
                plant.canopyGreatest() * leaf,
                warmth);
  }

  /** Whether the harvest of this season lies behind a day that many days after its first. */
  private boolean isCut(int stepsAfterFirst) {
    int stepsToHarvest = Math.floorMod(harvestDay - firstDay, DAYS);
    return stepsAfterFirst > stepsToHarvest;
  }

  private int calendarDay(int day) {
    return (day + shift) % DAYS;
  }

  private void sumDegreeDays(ClimateYear year, double baseC) {
    double sum = 0;
    for (int step = 0; step < DAYS; step++) {
      int day = (firstDay + step) % DAYS;
      sum += Math.max(0, year.dailyAirC()[calendarDay(day)] - baseC);
      degreeDays[day] = sum;
    }
  }

  /** Leaf over full leaf; also sets how tops die on the day. */
  private double leaf(int day, ClimateYear year, PlantTraits plant, CropCoefficients c) {
    double leaf = GrowthTerms.canopy(1, degreeDays[day], plant.canopyDegreeDays());
    topsLoss[day] = isAfter(day, c.mortalityDay()) ? plant.topsLoss() : c.earlyMortality();
    if (isAfter(day, c.photoperiodDay())) {
      double kept =
          GrowthTerms.photoperiodFactor(
              year.dayLengthH()[calendarDay(day)], c.photoperiodEnd(), c.photoperiodSpan());
      leaf *= kept;
      if (kept < c.senescenceLeaf()) {
        topsLoss[day] = Math.max(topsLoss[day], c.senescenceRate());
        returned[day] = returnShare(plant, c);
      }
    }
    return leaf;
  }

  /** Never more than the nutrients of dying tops suffice for. */
  private static double returnShare(PlantTraits plant, CropCoefficients c) {
    double share = c.senescenceReturn();
    share = Math.min(share, plant.topsNitrogen() / plant.organNitrogen());
    share = Math.min(share, plant.topsPhosphorus() / plant.organPhosphorus());
    return Math.min(share, plant.topsPotassium() / plant.organPotassium());
  }

  private void belowGround(int day, double temperatureC, PlantTraits plant, CropCoefficients c) {
    organShare[day] =
        day < firstDay
            ? plant.organShareLate()
            : GrowthTerms.organShare(
                plant.organShareEarly(),
                plant.organShareLate(),
                day + 1,
                c.allocationDay(),
                c.allocationSpan());
    storageLoss[day] =
        Math.min(
            1,
            GrowthTerms.storageLossRate(
                plant.storageLoss(), c.storageWarmFactor(), c.storageQ10(), temperatureC));
    frostDeath[day] = temperatureC < plant.hardiness() ? c.frostDeath() : 0;
  }

  /** Whether a day lies late in the season: after a day of the year, or in the winter behind it. */
  private boolean isAfter(int day, double dayOfYear) {
    return day + 1 > dayOfYear || day < firstDay;
  }

  /** Starch in storage organs at the harvest over that of autumn. */
  double starchAtHarvest(CropCoefficients c) {
    return GrowthTerms.starchCourse(
        harvestDay + 1,
        c.starchSpringDay(),
        c.starchLowestDay(),
        c.starchFullDay(),
        c.starchLowest());
  }

  /** Degree-days of the season up to a day of the calendar, 0 = 1 January. */
  double degreeDaysOn(int calendarDay) {
    return degreeDays[Math.floorMod(calendarDay - shift, DAYS)];
  }
}
