package org.marshlight.climate;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Months;

/**
 * A site's year of 365 days, hour by hour. Arrays are handed out without copying and must not be
 * changed.
 */
public final class ClimateYear {

  /** Hours of the year. */
  public static final int HOURS = HoursDesign.HOURS;

  private final SiteClimate site;
  private final Horizon horizon;

  final double[] airC = new double[HOURS];
  final double[] skyC = new double[HOURS];
  final double[] windMS = new double[HOURS];
  final double[] beamWM2 = new double[HOURS];
  final double[] diffuseWM2 = new double[HOURS];
  final double[] extraterrestrialWM2 = new double[HOURS];
  final double[] hourAngleRad = new double[HOURS];
  final double[] declinationRad = new double[Months.DAYS_PER_YEAR];
  final double[] dailyAirC = new double[Months.DAYS_PER_YEAR];
  final double[] dailySolarMJM2 = new double[Months.DAYS_PER_YEAR];
  final double[] dayLengthH = new double[Months.DAYS_PER_YEAR];

  ClimateYear(SiteClimate site) {
    this.site = site;
    this.horizon = new Horizon(site.horizonRad());
  }

  /** Makes the year of a site from its monthly climate, in true solar time. */
  public static ClimateYear of(SiteClimate site) {
    return NormalYear.of(site, Orbit.REAL);
  }

  /** Makes the year of a site from hours, in local standard time. */
  public static ClimateYear of(SiteClimate site, HoursDesign hours, double longitudeDeg) {
    return MeasuredYear.of(site, hours, longitudeDeg);
  }

  /**
   * Radiation on a plane through the year, with what stands before the sun.
   *
   * @param tiltDeg slope from the horizontal, 0 to 90
   * @param azimuthDeg way the plane faces, clockwise from true north
   */
  public TiltedYear tilted(double tiltDeg, double azimuthDeg) {
    return TiltedYear.of(
        this, horizon, FastMath.toRadians(tiltDeg), FastMath.toRadians(azimuthDeg - 180));
  }

  /** The monthly climate of the site. */
  public SiteClimate site() {
    return site;
  }

  /** Air temperature of each hour, Cel. */
  public double[] airC() {
    return airC;
  }

  /** Temperature of the sky in each hour, Cel. */
  public double[] skyC() {
    return skyC;
  }

  /** Wind at 10 m in each hour, m/s. */
  public double[] windMS() {
    return windMS;
  }

  /** Beam radiation on the horizontal, W/m2. */
  public double[] beamWM2() {
    return beamWM2;
  }

  /** Sky diffuse radiation on the horizontal, W/m2. */
  public double[] diffuseWM2() {
    return diffuseWM2;
  }

  /** Radiation on the horizontal outside the atmosphere, W/m2; nought at night. */
  public double[] extraterrestrialWM2() {
    return extraterrestrialWM2;
  }

  /** Hour angle in the middle of the sunlit part of each hour, rad. */
  public double[] hourAngleRad() {
    return hourAngleRad;
  }

  /** Declination of each day, rad. */
  public double[] declinationRad() {
    return declinationRad;
  }

  /** Mean air temperature of each day, Cel. */
  public double[] dailyAirC() {
    return dailyAirC;
  }

  /** Global radiation of each day, MJ/m2. */
  public double[] dailySolarMJM2() {
    return dailySolarMJM2;
  }

  /** Hours between sunrise and sunset of each day. */
  public double[] dayLengthH() {
    return dayLengthH;
  }
}
