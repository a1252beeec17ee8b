package org.marshlight.digester;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;

/**
 * Heat that a tank loses to the ground, as a function of the liquor's temperature and its mean over
 * the year.
 *
 * @param steadyWK loss for each kelvin between the year's means of liquor and ground surface
 * @param standardWK the same by ISO 13370, for comparison
 * @param internalWK loss for each kelvin that the liquor is above its own mean
 * @param externalW swing of the loss that follows the ground surface
 * @param surfaceMeanC mean temperature of the ground's surface
 * @param coldestDay day of the greatest loss to the swinging surface
 */
record GroundExchange(
    double steadyWK,
    double standardWK,
    double internalWK,
    double externalW,
    double surfaceMeanC,
    double coldestDay) {

  static GroundExchange of(
      TankDesign tank, TankGeometry geometry, SiteClimate site, HeatCoefficients coefficients) {
    PitForms forms =
        PitForms.of(
            geometry.planAreaM2(),
            geometry.perimeterM(),
            geometry.liquidDepthM(),
            geometry.floorDepthM() - geometry.liquidDepthM(),
            tank.wallResistanceM2KW(),
            site.soil().conductivityWMK(),
            site.soil().heatCapacityMJM3K() * 1e6);
    double standard =
        GroundCoupling.heatedBasementWK(
            geometry.planAreaM2(),
            geometry.perimeterM(),
            geometry.liquidDepthM(),
            geometry.floorDepthM(),
            coefficients.wallThickness(),
            tank.wallResistanceM2KW() + coefficients.soilContactResistance(),
            site.soil().conductivityWMK());
    return new GroundExchange(
        forms.steadyWK(),
        standard,
        forms.internalWK(),
        forms.externalWK() * site.ground().amplitudeK(),
        site.ground().meanC(),
        site.ground().coldestDay() + forms.externalLagDays());
  }

  /** The part of the loss that does not hang on the liquor's present temperature, W. */
  double baseLossW(double liquorMeanC, double day) {
    return steadyWK * (liquorMeanC - surfaceMeanC)
        - internalWK * liquorMeanC
        + externalW * FastMath.cos(2 * FastMath.PI * (day - coldestDay) / Months.DAYS_PER_YEAR);
  }
}
