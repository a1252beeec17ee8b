package org.marshlight.digester;

import java.util.Arrays;
import java.util.List;
import org.marshlight.contract.Months;

/**
 * The gas store, day by day: what comes in, what each use takes in its turn, and what is left over.
 * All amounts are dry methane at 0 Cel and 101.325 kPa.
 */
final class GasStore {

  private GasStore() {}

  /** A gas that nobody keeps or burns. */
  static final GasDesign NO_CAPTURE = new GasDesign(0.0, List.of(), GasSurplus.VENT, null, null);

  /**
   * Runs the store over a period twice and returns the second run, which starts where the first
   * ended.
   *
   * @param arrivingNm3 methane that reaches the store on each day of the period
   * @param capacityNm3 methane that the store holds in each month
   * @param demandNm3 methane that each use asks for on a day
   * @param monthsOff months in which the tank is out of use; null for none
   * @param restartLagDays days after such a month before gas burns again
   */
  static GasYear run(
      double[] arrivingNm3,
      double[] capacityNm3,
      double[] demandNm3,
      List<Integer> monthsOff,
      double restartLagDays) {
    boolean[] off = daysOff(monthsOff, restartLagDays);
    double level = 0;
    GasYear result = null;
    for (int run = 0; run < 2; run++) {
      result = new GasYear(demandNm3.length);
      result.startLevelNm3 = level;
      level = period(arrivingNm3, capacityNm3, demandNm3, off, level, result);
    }
    result.endLevelNm3 = level;
    result.average(arrivingNm3.length / Months.DAYS_PER_YEAR);
    return result;
  }

  /** Days of the year on which no gas is taken: months off, and the lag after them. */
  private static boolean[] daysOff(List<Integer> monthsOff, double restartLagDays) {
    boolean[] off = new boolean[Months.DAYS_PER_YEAR];
    if (monthsOff == null || monthsOff.isEmpty()) {
      return off;
    }
    int[] monthOfDay = Months.monthOfDay();
    for (int day = 0; day < off.length; day++) {
      off[day] = monthsOff.contains(monthOfDay[day] + 1);
    }
    boolean[] withLag = off.clone();
    int lag = (int) Math.rint(restartLagDays);
    for (int day = 0; day < off.length; day++) {
      for (int after = 1; off[day] && after <= lag; after++) {
        withLag[(day + after) % off.length] = true;
      }
    }
    return withLag;
  }

  private static double period(
      double[] arriving,
      double[] capacity,
      double[] demand,
      boolean[] daysOff,
      double startLevel,
      GasYear result) {
    int[] monthOfDay = Months.monthOfDay();
    double level = startLevel;
    int without = 0;
    for (int day = 0; day < arriving.length; day++) {
      int month = monthOfDay[day % Months.DAYS_PER_YEAR];
      int dayOfYear = day % Months.DAYS_PER_YEAR;
      boolean off = daysOff[dayOfYear];
      level += arriving[day];
      result.arrivingNm3[month] += arriving[day];
      boolean served = true;
      for (int use = 0; use < demand.length; use++) {
        double taken = off ? 0 : Math.min(level, demand[use]);
        level -= taken;
        result.demandNm3[use][month] += demand[use];
        result.usedNm3[use][month] += taken;
        served &= taken > 0 || demand[use] <= 0;
      }
      without = served || demand.length == 0 ? 0 : without + 1;
      result.longestDaysWithout = Math.max(result.longestDaysWithout, without);
      double surplus = Math.max(0, level - capacity[month]);
      level -= surplus;
      result.surplusOfDayNm3[dayOfYear] += surplus;
    }
    return level;
  }

  /** What a store saw in a year, as means over the years of the period. */
  static final class GasYear {

    final double[] arrivingNm3 = new double[Months.COUNT];
    final double[] surplusOfDayNm3 = new double[Months.DAYS_PER_YEAR];
    final double[][] demandNm3;
    final double[][] usedNm3;
    double startLevelNm3;
    double endLevelNm3;
    double storedNm3;
    int longestDaysWithout;

    GasYear(int uses) {
      demandNm3 = new double[uses][Months.COUNT];
      usedNm3 = new double[uses][Months.COUNT];
    }

    void average(int years) {
      storedNm3 = (endLevelNm3 - startLevelNm3) / years;
      scale(arrivingNm3, years);
      scale(surplusOfDayNm3, years);
      for (double[] line : demandNm3) {
        scale(line, years);
      }
      for (double[] line : usedNm3) {
        scale(line, years);
      }
    }

    private static void scale(double[] line, int years) {
      Arrays.setAll(line, month -> line[month] / years);
    }

    /** Methane burned by all uses in a month. */
    double usedNm3(int month) {
      double sum = 0;
      for (double[] use : usedNm3) {
        sum += use[month];
      }
      return sum;
    }

    /** Methane asked for by all uses in a month. */
    double demandNm3(int month) {
      double sum = 0;
      for (double[] use : demandNm3) {
        sum += use[month];
      }
      return sum;
    }
  }
}
