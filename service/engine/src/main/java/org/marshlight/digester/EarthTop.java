package org.marshlight.digester;

import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.GroundSurface;
import org.marshlight.climate.GroundTemperature;
import org.marshlight.contract.Months;

/**
 * A lid under planted soil of the burial depth. The ground's surface has its own yearly wave, which
 * holds sun, wind and sky already.
 */
final class EarthTop extends Top {

  private final double[] surfaceOfDayC = new double[Months.DAYS_PER_YEAR];

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
  void prepare(int hour, double lidC) {
    environmentC = surfaceOfDayC[hour / 24];
  }

  @Override
  void settle(double lidC) {
    surfaceC = environmentC;
  }

  @Override
  void book(double lidC, int month, HeatLedger ledger) {
    ledger.add(ledger.coverSoil, month, -conductanceWK * (lidC - environmentC));
  }
}
