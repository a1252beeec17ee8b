package org.marshlight.digester;

import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.TiltedYear;

/** A lid under bare soil of the burial depth, or under nothing, that meets sun, wind and sky. */
final class BareTop extends Top {

  private final TiltedYear sun;
  private final WeatheredSurface surface;
  private final double absorptance;
  private final double soilM2KW;

  private double sunW;

  BareTop(ClimateYear year, TankDesign tank, TankGeometry geometry, HeatCoefficients coefficients) {
    sun = year.tilted(0, 180);
    surface = new WeatheredSurface(year, coefficients, geometry.planAreaM2(), 1);
    absorptance = coefficients.bareSurfaceAbsorptance();
    soilM2KW =
        tank.burialDepthM() / year.site().soil().conductivityWMK()
            + coefficients.soilContactResistance();
  }

  @Override
  void prepare(int hour, double lidC) {
    surface.prepare(hour);
    sunW = absorptance * surface.areaM2() * sun.totalWM2(hour);
    double outerM2KW = surface.resistanceM2KW();
    environmentC = surface.environmentC() + sunW * outerM2KW / surface.areaM2();
    conductanceWK = surface.areaM2() / (soilM2KW + outerM2KW);
  }

  @Override
  void settle(double lidC) {
    double upW = conductanceWK * (lidC - environmentC);
    surfaceC = environmentC + upW * surface.resistanceM2KW() / surface.areaM2();
    surface.settle(surfaceC);
  }

  @Override
  void book(double lidC, int month, HeatLedger ledger) {
    ledger.add(ledger.sunOnTop, month, sunW / absorptance);
    ledger.add(ledger.absorbedSun, month, sunW);
    surface.book(month, ledger);
  }
}
