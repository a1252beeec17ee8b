package org.marshlight.climate;

import java.util.Objects;
import org.apache.commons.math3.util.FastMath;

/**
 * A site's year of 365 days, hour by hour. Arrays are handed out without copying and must not be
 * changed.
 */
public final class ClimateYear {

  /** Hours of the year. */
  public static final int HOURS = HoursDesign.HOURS;

  private final SiteClimate site;
  private final HoursDesign hours;
  private final double longitudeDeg;
  private final HourlyWeather weather;

  private ClimateYear(
      SiteClimate site, HoursDesign hours, double longitudeDeg, HourlyWeather weather) {
    this.site = site;
    this.hours = hours;
    this.longitudeDeg = longitudeDeg;
    this.weather = weather;
  }

  /** Makes the year of a site from its monthly climate, in true solar time. */
  public static ClimateYear of(SiteClimate site) {
    return of(site, Orbit.REAL);
  }

  static ClimateYear of(SiteClimate site, Orbit orbit) {
    return new ClimateYear(site, null, Double.NaN, NormalYear.of(site, orbit));
  }

  /** Makes the year of a site from hours, in local standard time. */
  public static ClimateYear of(SiteClimate site, HoursDesign hours, double longitudeDeg) {
    return new ClimateYear(site, hours, longitudeDeg, MeasuredYear.of(site, hours, longitudeDeg));
  }

  /**
   * The year of another site with the weather of this one.
   *
   * @param other the other site
   * @param otherHours its hours; null if it has none
   * @param otherLongitudeDeg its longitude, for its hours
   * @return null if its weather is not the same
   */
  public ClimateYear over(SiteClimate other, HoursDesign otherHours, double otherLongitudeDeg) {
    boolean same =
        site.hasAirAndSunOf(other)
            && Objects.equals(hours, otherHours)
            && Double.compare(longitudeDeg, otherLongitudeDeg) == 0;
    return same ? new ClimateYear(other, otherHours, otherLongitudeDeg, weather) : null;
  }

  /**
   * Radiation on a plane through the year, with what stands before the sun.
   *
   * @param tiltDeg slope from the horizontal, 0 to 90
   * @param azimuthDeg way the plane faces, clockwise from true north
   */
  public TiltedYear tilted(double tiltDeg, double azimuthDeg) {
    return TiltedYear.of(
        site,
        weather,
        new PlaneSun.Plane(
            site.latitudeRad(),
            new Horizon(site.horizonRad()),
            FastMath.toRadians(tiltDeg),
            FastMath.toRadians(azimuthDeg - 180)));
  }

  /** The monthly climate of the site. */
  public SiteClimate site() {
    return site;
  }

  /** Air temperature of each hour, Cel. */
  public double[] airC() {
    return weather.airC;
  }

  /** Temperature of the sky in each hour, Cel. */
  public double[] skyC() {
    return weather.skyC;
  }

  /** Wind at 10 m in each hour, m/s. */
  public double[] windMS() {
    return weather.windMS;
  }

  /** Beam radiation on the horizontal, W/m2. */
  public double[] beamWM2() {
    return weather.beamWM2;
  }

  /** Sky diffuse radiation on the horizontal, W/m2. */
  public double[] diffuseWM2() {
    return weather.diffuseWM2;
  }

  /** Radiation on the horizontal outside the atmosphere, W/m2; nought at night. */
  public double[] extraterrestrialWM2() {
    return weather.extraterrestrialWM2;
  }

  /** Mean air temperature of each day, Cel. */
  public double[] dailyAirC() {
    return weather.dailyAirC;
  }

  /** Global radiation of each day, MJ/m2. */
  public double[] dailySolarMJM2() {
    return weather.dailySolarMJM2;
  }

  /** Hours between sunrise and sunset of each day. */
  public double[] dayLengthH() {
    return weather.dayLengthH;
  }
}
