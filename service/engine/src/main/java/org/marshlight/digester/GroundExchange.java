package org.marshlight.digester;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;

/**
 * Heat that a tank loses to the ground, as a function of the liquor's temperature and its mean over
 * the year.
 *
 * @param steadyWK loss for each kelvin between the year's means of liquor and ground surface
 * @param internalWK loss for each kelvin that the liquor is above its own mean
 * @param externalW swing of the loss that follows the ground surface
 * @param surfaceMeanC mean temperature of the ground's surface
 * @param coldestDay day of the greatest loss to the swinging surface
 */
record GroundExchange(
    double steadyWK, double internalWK, double externalW, double surfaceMeanC, double coldestDay) {

  private static final double DAYS_PER_MONTH = 365.0 / 12;

  static GroundExchange of(
      TankDesign tank, TankGeometry geometry, SiteClimate site, HeatCoefficients coefficients) {
    double conductivity = site.soil().conductivityWMK();
    double resistance = tank.wallResistanceM2KW() + coefficients.soilContactResistance();
    double thickness =
        GroundCoupling.equivalentThicknessM(coefficients.wallThickness(), conductivity, resistance);
    double wallThickness = conductivity * resistance;
    double depth = geometry.floorDepthM();
    double dimension =
        GroundCoupling.characteristicDimensionM(geometry.planAreaM2(), geometry.perimeterM());
    double wallArea = geometry.perimeterM() * geometry.liquidDepthM();
    double steady =
        geometry.planAreaM2()
                * GroundCoupling.floorTransmittance(conductivity, dimension, thickness, depth)
            + wallArea
                * GroundCoupling.wallTransmittance(conductivity, depth, thickness, wallThickness);
    double penetration =
        GroundCoupling.penetrationDepthM(conductivity, site.soil().heatCapacityMJM3K() * 1e6);
    double internal =
        GroundCoupling.internalPeriodic(geometry.planAreaM2(), conductivity, thickness, penetration)
            + GroundCoupling.internalPeriodic(wallArea, conductivity, wallThickness, penetration);
    double external =
        GroundCoupling.externalPeriodic(
            geometry.perimeterM(), conductivity, depth, thickness, wallThickness, penetration);
    double lag = GroundCoupling.timeLagMonths(penetration, thickness) * DAYS_PER_MONTH;
    return new GroundExchange(
        steady,
        internal,
        external * site.ground().amplitudeK(),
        site.ground().meanC(),
        site.ground().coldestDay() + lag);
  }

  /** The part of the loss that does not hang on the liquor's present temperature, W. */
  double baseLossW(double liquorMeanC, double day) {
    return steadyWK * (liquorMeanC - surfaceMeanC)
        - internalWK * liquorMeanC
        + externalW * FastMath.cos(2 * FastMath.PI * (day - coldestDay) / Months.DAYS_PER_YEAR);
  }
}
