package org.marshlight.climate;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Months;

/**
 * Air, sky and sun of a year, hour by hour and day by day. Filled by those that make years; not to
 * be changed afterwards, for years of sites that differ below ground share it.
 */
final class HourlyWeather {

  final double[] airC = new double[ClimateYear.HOURS];
  final double[] skyC = new double[ClimateYear.HOURS];
  final double[] windMS = new double[ClimateYear.HOURS];
  final double[] beamWM2 = new double[ClimateYear.HOURS];
  final double[] diffuseWM2 = new double[ClimateYear.HOURS];
  final double[] extraterrestrialWM2 = new double[ClimateYear.HOURS];
  final double[] hourAngleRad = new double[ClimateYear.HOURS];
  final double[] cosHourAngle = new double[ClimateYear.HOURS];
  final double[] sinHourAngle = new double[ClimateYear.HOURS];
  final double[] declinationRad = new double[Months.DAYS_PER_YEAR];
  final double[] dailyAirC = new double[Months.DAYS_PER_YEAR];
  final double[] dailySolarMJM2 = new double[Months.DAYS_PER_YEAR];
  final double[] dayLengthH = new double[Months.DAYS_PER_YEAR];

  /** Sun on the plane asked for last: runs that share the weather often share the glass. */
  private volatile PlaneSun last;

  /** Beam and sky on a plane. */
  PlaneSun on(PlaneSun.Plane plane) {
    PlaneSun known = last;
    if (known == null || !known.plane().equals(plane)) {
      known = PlaneSun.of(plane, this);
      last = known;
    }
    return known;
  }

  /** Sets where the sun stands in the middle of the lit part of an hour. */
  void sunAt(int hour, double angleRad) {
    hourAngleRad[hour] = angleRad;
    cosHourAngle[hour] = FastMath.cos(angleRad);
    sinHourAngle[hour] = FastMath.sin(angleRad);
  }
}
