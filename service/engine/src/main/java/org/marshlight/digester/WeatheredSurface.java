package org.marshlight.digester;

import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.ReferenceEvapotranspiration;

/** A surface that meets wind and sky: what it loses to both, hour by hour. */
final class WeatheredSurface {

  static final double KELVIN = 273.15;

  private final ClimateYear year;
  private final double areaM2;
  private final double skyView;
  private final double emittanceFactor;
  private final double windAtSurface;

  private double airC;
  private double skyC;
  private double toAirWM2K;
  private double toSkyWM2K;
  private double resistanceM2KW;
  private double environmentC;
  private double surfaceC;

  /**
   * A surface.
   *
   * @param skyView share of its view that is sky; the rest is taken to be as warm as the air
   */
  WeatheredSurface(ClimateYear year, HeatCoefficients coefficients, double areaM2, double skyView) {
    this.year = year;
    this.areaM2 = areaM2;
    this.skyView = skyView;
    this.emittanceFactor = CoverHeatTransfer.emittanceFactor(coefficients.glassEmittance(), 1);
    this.windAtSurface = coefficients.windShelter() * ReferenceEvapotranspiration.windAt2M(1, 10);
    this.surfaceC = year.airC()[0];
  }

  void prepare(int hour) {
    airC = year.airC()[hour];
    skyC = year.skyC()[hour];
    double radiation =
        CoverHeatTransfer.longWave(surfaceC + KELVIN, skyC + KELVIN, emittanceFactor);
    toAirWM2K =
        CoverHeatTransfer.windCoefficient(windAtSurface * year.windMS()[hour])
            + radiation * (1 - skyView);
    toSkyWM2K = radiation * skyView;
    resistanceM2KW = 1 / (toAirWM2K + toSkyWM2K);
    environmentC = (toAirWM2K * airC + toSkyWM2K * skyC) * resistanceM2KW;
  }

  /** Resistance to air and sky, m2.K/W. */
  double resistanceM2KW() {
    return resistanceM2KW;
  }

  /** Temperature between air and sky to which the surface loses, Cel. */
  double environmentC() {
    return environmentC;
  }

  double airC() {
    return airC;
  }

  double areaM2() {
    return areaM2;
  }

  double surfaceC() {
    return surfaceC;
  }

  /** Takes its new temperature. */
  void settle(double newSurfaceC) {
    surfaceC = newSurfaceC;
  }

  /** Books what it lost in a step that it has settled. */
  void book(int month, HeatLedger ledger) {
    ledger.add(ledger.topToAir, month, -toAirWM2K * areaM2 * (surfaceC - airC));
    ledger.add(ledger.topToSky, month, -toSkyWM2K * areaM2 * (surfaceC - skyC));
  }
}
