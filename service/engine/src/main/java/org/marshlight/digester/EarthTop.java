package org.marshlight.digester;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.GroundSurface;
import org.marshlight.contract.Months;

/**
 * A lid under planted soil of the burial depth. The ground's surface has its own yearly wave, which
 * holds sun, wind and sky already.
 */
final class EarthTop implements Top {

  private final GroundSurface ground;
  private final double conductanceWK;

  private int month;
  private double environmentC;

  EarthTop(
      ClimateYear year, TankDesign tank, TankGeometry geometry, HeatCoefficients coefficients) {
    ground = year.site().ground();
    conductanceWK =
        geometry.planAreaM2()
            / (tank.burialDepthM() / year.site().soil().conductivityWMK()
                + coefficients.soilContactResistance());
  }

  @Override
  public void prepare(int hour, int hourMonth, double lidC) {
    month = hourMonth;
    double day = hour / 24 + 0.5;
    environmentC =
        ground.meanC()
            - ground.amplitudeK()
                * FastMath.cos(
                    2 * FastMath.PI * (day - ground.coldestDay()) / Months.DAYS_PER_YEAR);
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
    HeatLedger.add(ledger.coverSoil, month, -conductanceWK * (lidC - environmentC));
  }

  @Override
  public double surfaceC() {
    return environmentC;
  }
}
