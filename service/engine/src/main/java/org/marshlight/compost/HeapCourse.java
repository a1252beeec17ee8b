package org.marshlight.compost;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Months;
import org.marshlight.statistics.EvenTable;

/**
 * The temperature in the middle of a heap through its first months.
 *
 * @param peakC highest temperature
 * @param above40Days time at 40 Cel or more
 * @param above55Days time at 55 Cel or more
 * @param heatLawFraction time at 50 Cel or more over the time that the rule for solids asks for at
 *     each temperature, summed
 */
record HeapCourse(double peakC, double above40Days, double above55Days, double heatLawFraction) {

  private static final double STEP_DAYS = 1.0 / 12;
  private static final int STEPS_PER_DAY = 12;
  private static final int LONGEST_DAYS = 150;

  /** The course ends when this share of what decays is left. */
  private static final double SPENT = 0.05;

  /** No heap passes this; steam takes all further heat. */
  private static final double HOTTEST_C = 90;

  private static final double COLDEST_C = -60;

  /**
   * Speed of decay over that at 20 Cel: within 4e-5 of the formula up to 75 Cel, and within 0.6
   * percent of the greatest speed beyond, where decay ceases.
   */
  static final EvenTable WARMING =
      EvenTable.of(t -> HeapHeat.decayRatePerDay(t, 1), COLDEST_C, HOTTEST_C, 0.1);

  /** Water of saturated air, within 4e-5 of the formula. */
  static final EvenTable HUMIDITY =
      EvenTable.of(HeapHeat::saturatedHumidity, COLDEST_C, HOTTEST_C, 0.1);

  private static final double MJ_PER_WATT_DAY = 0.0864;
  private static final double MJ_PER_KJ = 1e-3;

  /**
   * Steps a heap through its heat balance: heat of the oxygen taken up, less what the air carries
   * off and what passes through the outside.
   *
   * @param batch what heats together
   * @param site the air around it
   * @param c numbers of the heat
   */
  static HeapCourse of(Batch batch, CompostSite site, HeatCoefficients c) {
    double loss = lossMJDayK(batch, c);
    double decline = FastMath.exp(-loss * STEP_DAYS / capacityMJK(batch, c));
    int[] months = monthOfDay(batch.startMonth());
    double[] air = Months.array(site.airTemperatureC());
    double[] humidity = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      humidity[month] = HeapHeat.saturatedHumidity(air[month]);
    }
    double temperature = air[months[0]];
    double pool = batch.oxygenDemandKg();
    double peak = temperature;
    double above40 = 0;
    double above55 = 0;
    double law = 0;
    for (int step = 0; step < LONGEST_DAYS * STEPS_PER_DAY; step++) {
      int month = months[step / STEPS_PER_DAY];
      double airC = air[month];
      double uptake = pool * c.rateAt20PerDay() * WARMING.at(temperature);
      double gain =
          uptake
              * (c.heatOfOxygenMJKg()
                  - HeapHeat.heatOfAirMJKg(
                      temperature,
                      airC,
                      HUMIDITY.at(temperature) - humidity[month],
                      c.airExcess(),
                      c.evaporationMJKg()));
      double settled = airC + gain / loss;
      temperature = Math.min(HOTTEST_C, settled + (temperature - settled) * decline);
      pool -= uptake * STEP_DAYS;
      peak = Math.max(peak, temperature);
      above40 += temperature >= 40 ? STEP_DAYS : 0;
      above55 += temperature >= 55 ? STEP_DAYS : 0;
      law += temperature >= 50 ? STEP_DAYS / Sanitation.daysOfSolids(temperature) : 0;
      if (pool < SPENT * batch.oxygenDemandKg()) {
        break;
      }
    }
    return new HeapCourse(peak, above40, above55, law);
  }

  private static double capacityMJK(Batch batch, HeatCoefficients c) {
    return MJ_PER_KJ
        * (batch.waterKg() * c.heatCapacityOfWater() + batch.dryKg() * c.heatCapacityOfSolids());
  }

  /** Heat lost through the outside in a day for each kelvin over the air. */
  private static double lossMJDayK(Batch batch, HeatCoefficients c) {
    double surface = HeapHeat.surfaceM2(batch.volumeM3(), batch.greatestHeightM());
    return MJ_PER_WATT_DAY
        * surface
        * HeapHeat.surfaceConductanceWM2K(
            batch.volumeM3() / surface, c.conductivityWMK(), c.filmM2KW());
  }

  private static int[] monthOfDay(int startMonth) {
    int[] months = new int[LONGEST_DAYS];
    int month = startMonth;
    int left = Months.days(month);
    for (int day = 0; day < LONGEST_DAYS; day++) {
      if (left == 0) {
        month = (month + 1) % Months.COUNT;
        left = Months.days(month);
      }
      months[day] = month;
      left--;
    }
    return months;
  }

  /**
   * What heats together.
   *
   * @param waterKg its water
   * @param dryKg its dry mass
   * @param volumeM3 its volume
   * @param oxygenDemandKg oxygen that it takes up in all
   * @param greatestHeightM height that it may stand
   * @param startMonth month in which it is put together, 0 = January
   */
  record Batch(
      double waterKg,
      double dryKg,
      double volumeM3,
      double oxygenDemandKg,
      double greatestHeightM,
      int startMonth) {}
}
