package org.marshlight.wetland;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;
import org.marshlight.feed.Account;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;
import org.marshlight.feed.WaterStream;

/**
 * Beds in the order of the flow, each run on what the one before it gives.
 *
 * @param inflow what reaches the first bed
 * @param years the year of each bed
 * @param <G> what stands tell of their growth
 */
record BedChain<G extends StandGrowth>(WaterStream inflow, List<BedYear<G>> years) {

  /** Age of the beds for which the headline figures hold. */
  static final int HEADLINE_YEAR = 5;

  static <G extends StandGrowth> BedChain<G> of(
      List<BedSite> beds,
      WaterStream inflow,
      List<? extends Stand<G>> stands,
      SiteClimate climate) {
    double[] floor = coliformFloor(inflow, beds.get(0).c().coliformLogRemoval());
    List<BedYear<G>> years = new ArrayList<>();
    WaterStream flow = inflow;
    for (BedSite bed : beds) {
      BedYear<G> year =
          new BedRun<G>(bed, flow, floor, stands.get(bed.index()), climate, HEADLINE_YEAR).year();
      years.add(year);
      flow = year.outflow();
      floor = year.coliformFloor();
    }
    return new BedChain<>(inflow, List.copyOf(years));
  }

  /** Least coliforms, density times m3, that the cap leaves of what enters the first bed. */
  private static double[] coliformFloor(WaterStream inflow, double logRemoval) {
    double left = FastMath.pow(10, -logRemoval);
    double[] floor = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      floor[month] = inflow.faecalColiformsPer100ML()[month] * inflow.volumeM3(month) * left;
    }
    return floor;
  }

  WaterStream outflow() {
    return years.get(years.size() - 1).outflow();
  }

  /**
   * The books of each bed.
   *
   * @param received what the first bed receives, by party
   * @param destinations where what leaves goes
   */
  List<Account> accounts(Map<String, Matter> received, Destinations destinations) {
    List<Account> accounts = new ArrayList<>();
    Map<String, Matter> from = received;
    for (BedYear<G> year : years) {
      int index = year.bed().index();
      boolean last = index == years.size() - 1;
      String next = last ? destinations.water() : Party.bed(index + 1);
      accounts.add(BedBooks.of(year, from, next, destinations));
      from = new LinkedHashMap<>();
      from.put(Party.bed(index), year.outflow().annual());
    }
    return accounts;
  }

  /** Sum over beds of a monthly figure. */
  double[] sum(java.util.function.Function<BedWater, double[]> figure) {
    double[] sum = new double[Months.COUNT];
    for (BedYear<G> year : years) {
      double[] values = figure.apply(year.water());
      for (int month = 0; month < Months.COUNT; month++) {
        sum[month] += values[month];
      }
    }
    return sum;
  }
}
