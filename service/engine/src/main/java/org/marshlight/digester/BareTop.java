package org.marshlight.digester;

import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.TiltedYear;

/** A lid under bare soil of the burial depth, or under nothing, that meets sun, wind and sky. */
final class BareTop implements Top {

  private final TiltedYear sun;
  private final WeatheredSurface surface;
  private final double absorptance;
  private final double soilM2KW;

  private int month;
  private double sunW;
  private double conductanceWK;
  private double environmentC;

  BareTop(ClimateYear year, TankDesign tank, TankGeometry geometry, HeatCoefficients coefficients) {
    sun = year.tilted(0, 180);
    surface = new WeatheredSurface(year, coefficients, geometry.planAreaM2(), 1);
    absorptance = coefficients.bareSurfaceAbsorptance();
    soilM2KW =
        tank.burialDepthM() / year.site().soil().conductivityWMK()
            + coefficients.soilContactResistance();
  }

  @Override
  public void prepare(int hour, int hourMonth, double lidC) {
    month = hourMonth;
    surface.prepare(hour, month);
    sunW = absorptance * surface.areaM2() * sun.totalWM2(hour);
    double outer = surface.coefficientWM2K();
    environmentC = surface.environmentC() + sunW / (outer * surface.areaM2());
    conductanceWK = surface.areaM2() / (soilM2KW + 1 / outer);
  }

  @Override
  public double conductanceWK() {
    return conductanceWK;
  }

  @Override
  public double environmentC() {
    return environmentC;
  }

  @Override
  public double sideConductanceWK() {
    return 0;
  }

  @Override
  public double lidSunW() {
    return 0;
  }

  @Override
  public void book(double lidC, HeatLedger ledger) {
    double upW = conductanceWK * (lidC - environmentC);
    ledger.add(ledger.sunOnTop, month, sunW / absorptance);
    ledger.add(ledger.absorbedSun, month, sunW);
    surface.book(environmentC + upW / (surface.coefficientWM2K() * surface.areaM2()), ledger);
  }

  @Override
  public double surfaceC() {
    return surface.surfaceC();
  }
}
