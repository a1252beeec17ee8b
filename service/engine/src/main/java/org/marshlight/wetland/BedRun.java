package org.marshlight.wetland;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Stoichiometry;
import org.marshlight.feed.WaterStream;

/**
 * Runs a bed through its year.
 *
 * @param <G> what its stand tells of its growth
 */
final class BedRun<G extends StandGrowth> {

  private static final double WATER_KG_M3 = 1000;

  /** Most years run until what a bed keeps from month to month is that of every year. */
  private static final int MOST_ROUNDS = 400;

  /** Years run of a bed that nothing ever leaves, in which there is no such state. */
  private static final int ROUNDS_OF_CLOSED = 2;

  /** Change from year to year, as a share of what is kept, below which it stands still. */
  private static final double STILL = 1e-9;

  private final BedSite bed;
  private final WaterStream inflow;
  private final double[] coliformFloor;
  private final BedWater water;
  private final BedWarmth warmth;
  private final G growth;
  private final UptakeFromWater uptake;
  private final double[] methaneCodKg;
  private final double phosphorusRate;

  /**
   * Prepares a bed's year: its water first, then its warmth, then what grows on what comes.
   *
   * @param bed the bed
   * @param inflow what reaches its inlet
   * @param coliformFloor least coliforms that the cap of the whole chain leaves
   * @param stand what grows on it
   * @param climate the site
   * @param yearOfLife age at which phosphorus is followed
   */
  BedRun(
      BedSite bed,
      WaterStream inflow,
      double[] coliformFloor,
      Stand<G> stand,
      SiteClimate climate,
      int yearOfLife) {
    this.bed = bed;
    this.inflow = inflow;
    this.coliformFloor = coliformFloor;
    this.water = BedWater.of(bed, inflow, stand, climate);
    this.warmth = BedWarmth.of(bed, inflow, water, climate);
    this.growth = stand.grow(supply());
    this.uptake = UptakeFromWater.of(bed, growth);
    this.methaneCodKg = methaneCodKg(stand);
    this.phosphorusRate = PhosphorusPath.rate(bed, yearOfLife);
  }

  /**
   * The year in its steady state. A month's leftovers reach the next, and December's January. Where
   * no month flushes the bed, the books show what has gathered in the second year.
   */
  BedYear<G> year() {
    List<BedMonth> months = new ArrayList<>();
    Carried kept = Carried.NONE;
    Carried atStart = Carried.NONE;
    int most = water.isEverFlushed() ? MOST_ROUNDS : ROUNDS_OF_CLOSED;
    int rounds = 0;
    do {
      months.clear();
      atStart = kept;
      for (int month = 0; month < Months.COUNT; month++) {
        BedMonth result = BedMonth.of(bed, setting(month, kept));
        months.add(result);
        kept = result.left().times(1 - water.flushed()[month]);
      }
      rounds++;
    } while (rounds < most && !kept.isLike(atStart, STILL));
    return new BedYear<>(
        bed,
        inflow,
        water,
        warmth,
        growth,
        List.copyOf(months),
        outflow(months),
        kept.matter().minus(atStart.matter()),
        rounds,
        floorLeft());
  }

  private StandSupply supply() {
    double[] nitrogen = new double[Months.COUNT];
    double[] phosphorus = new double[Months.COUNT];
    double[] potassium = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      if (!bed.design().passedBy(month)) {
        Matter matter = inflow.monthly().get(month);
        nitrogen[month] = matter.nitrogenKg();
        phosphorus[month] = matter.phosphorusKg();
        potassium[month] = matter.potassiumKg();
      }
    }
    return new StandSupply(nitrogen, phosphorus, potassium, water.waterShare());
  }

  private BedMonth.Setting setting(int month, Carried kept) {
    Carried load = kept;
    double coliforms = 0;
    if (!bed.design().passedBy(month)) {
      load = load.plus(carried(month));
      coliforms = inflow.faecalColiformsPer100ML()[month] * inflow.volumeM3(month);
    }
    return new BedMonth.Setting(
        load,
        coliforms,
        coliformFloor[month],
        BedYear.decayingLitter(bed, growth, month),
        uptake.in(month),
        water.standingM3(bed, month),
        TanksInSeries.hydraulicLoadingMYear(water.meanM3Day(month), bed.areaM2()),
        warmth.along()[month],
        Months.days(month),
        methaneCodKg[month],
        phosphorusRate);
  }

  /** What the stream carries in a month beside water. */
  private Carried carried(int month) {
    Matter matter = inflow.monthly().get(month);
    return new Carried(
        matter.minus(Matter.water(matter.waterKg())),
        inflow.bod5Kg()[month],
        inflow.suspendedSolidsKg()[month]);
  }

  /** COD of the stand's methane, shared among months by warmth of the water. */
  private double[] methaneCodKg(Stand<?> stand) {
    double[] weight = new double[Months.COUNT];
    double sum = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      weight[month] = Math.max(0, warmth.waterC()[month]) * Months.days(month);
      sum += weight[month];
    }
    double year = stand.methaneKgM2Year() * bed.areaM2() * Stoichiometry.METHANE_COD;
    for (int month = 0; month < Months.COUNT; month++) {
      weight[month] = sum > 0 ? weight[month] / sum * year : 0;
    }
    return weight;
  }

  /** What the cap on coliforms leaves for the beds that follow. */
  private double[] floorLeft() {
    double[] left = coliformFloor.clone();
    for (int month = 0; month < Months.COUNT; month++) {
      if (!bed.design().passedBy(month)) {
        left[month] *= water.flushed()[month];
      }
    }
    return left;
  }

  private WaterStream outflow(List<BedMonth> months) {
    List<Matter> matter = new ArrayList<>(Months.COUNT);
    double[] bod5 = new double[Months.COUNT];
    double[] solids = new double[Months.COUNT];
    double[] coliforms = new double[Months.COUNT];
    double[] temperature = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      double flushed = water.flushed()[month];
      Carried out = months.get(month).left().times(flushed);
      double organisms = months.get(month).coliforms() * flushed;
      double volume = water.outflow()[month];
      double passing = water.passing()[month];
      if (bed.design().passedBy(month)) {
        out = out.plus(carried(month));
        organisms += inflow.faecalColiformsPer100ML()[month] * passing;
      }
      double all = volume + passing;
      matter.add(out.matter().plus(Matter.water(WATER_KG_M3 * all)));
      bod5[month] = out.bod5Kg();
      solids[month] = out.solidsKg();
      coliforms[month] = all > 0 ? organisms / all : 0;
      temperature[month] =
          all > 0
              ? (warmth.outflowC()[month] * volume + inflow.temperatureC()[month] * passing) / all
              : warmth.outflowC()[month];
    }
    return new WaterStream(
        List.copyOf(matter), bod5, solids, coliforms, temperature, inflow.humanOrigin());
  }
}
