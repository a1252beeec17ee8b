package org.marshlight.digester;

import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.GroundSurface;
import org.marshlight.climate.GroundTemperature;
import org.marshlight.contract.Months;

/**
 * A lid under planted soil of the burial depth. The ground's surface has its own yearly wave, which
 * holds sun, wind and sky already.
 */
final class EarthTop implements Top {

  private final double[] surfaceOfDayC = new double[Months.DAYS_PER_YEAR];
  private final double conductanceWK;

  private int month;
  private double environmentC;

  EarthTop(
      ClimateYear year, TankDesign tank, TankGeometry geometry, HeatCoefficients coefficients) {
    GroundSurface ground = year.site().ground();
    for (int day = 0; day < surfaceOfDayC.length; day++) {
      surfaceOfDayC[day] =
          GroundTemperature.temperatureC(
              0, day + 0.5, ground.meanC(), ground.amplitudeK(), ground.coldestDay(), 1);
    }
    conductanceWK =
        geometry.planAreaM2()
            / (tank.burialDepthM() / year.site().soil().conductivityWMK()
                + coefficients.soilContactResistance());
  }

  @Override
  public void prepare(int hour, int hourMonth, double lidC) {
    month = hourMonth;
    environmentC = surfaceOfDayC[hour / 24];
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
    ledger.add(ledger.coverSoil, month, -conductanceWK * (lidC - environmentC));
  }

  @Override
  public double surfaceC() {
    return environmentC;
  }
}
